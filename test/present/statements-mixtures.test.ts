import { expect, test } from "vitest";
import { driftRuling, type DriftStep } from "../../lib/optics/mixtures/component-loss.ts";
import { ladderModel, type LadderModel } from "../../lib/optics/tints/ladder.ts";
import type { TheoryTint } from "../../lib/optics/theory/mie-tint.ts";
import { particleModel, type RecordedParticle } from "../../lib/optics/theory/particle-model.ts";
import {
  allBluerRuling,
  blueRuling,
  leanRuling,
  type BlueDifference,
} from "../../lib/optics/theory/theory-statements.ts";
import { commonWhites, unknownOilRuling } from "../../lib/optics/tints/common-whites.ts";
import type { MixtureStatement } from "../../lib/optics/statements.ts";
import { worded } from "../../lib/words/by-rule.ts";
import { wordingsIn } from "../../lib/words/rulings/rulings-in-each.ts";
import { MIXTURE_RULINGS } from "../../lib/words/rulings/mixtures.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import { BLUE, fitOf, QUIET_BENCH, syntheticSet, TITANIUM } from "../optics/synthetic-drawdowns.ts";
import { holdSentences } from "./statements-held.ts";

const FRESH = { L: 50, a: 0, b: -2 };
const step = (L: number, a: number, b: number): DriftStep => {
  const deltaEab = Math.hypot(L - FRESH.L, a - FRESH.a, b - FRESH.b);
  return { loss: 0.3, lab: { L, a, b }, deltaE00: deltaEab, deltaEab };
};

function ladder(): LadderModel {
  const fit = fitOf(
    syntheticSet(
      BLUE,
      [{ slug: "titanium-white", white: TITANIUM, massRatios: [0.2, 0.02] }],
      QUIET_BENCH,
    ),
  );
  return ladderModel(fit, "titanium-white");
}

const own = ladder();
const tint = (low: number, high: number, bRuns: readonly number[]): TheoryTint => ({
  white: "titanium-white",
  L: 50,
  aRuns: bRuns,
  bRuns,
  a: { low, middle: 0, high },
  b: { low, middle: (low + high) / 2, high },
});
const difference = (bluerShare: number): BlueDifference => ({
  L: 50,
  bluerShare,
  change: { low: -4, middle: -3, high: -2 },
  runs: 120,
});
const record: RecordedParticle = {
  slug: "a",
  name: "Spinel black",
  colourIndexName: undefined,
  sizeUm: 0.4,
  refractiveIndex: undefined,
  isClear: false,
};

const component = (name: string, fit?: LadderModel["fit"], parts?: number) => ({
  name,
  fit,
  parts,
});
const elsewhere = {
  ...own.fit,
  whites: own.fit.whites.map((white) => ({ ...white, slug: "lead-white" })),
};

const found: unknown[] = [
  commonWhites([component("Ultramarine", own.fit), component("Burnt umber", own.fit, 1)]),
  commonWhites([component("Ultramarine", undefined, 1), component("Burnt umber", own.fit, 1)]),
  commonWhites([component("Ultramarine", own.fit, 1), component("Burnt umber", elsewhere, 1)]),
  unknownOilRuling([{ name: "Ultramarine Blue", pigmentFraction: undefined }]),
  ...[step(50, 0.2, -2), step(54, 0, -2), step(45, 0, -2), step(51, 3, 1)].map((after) =>
    driftRuling("Ultramarine Blue", FRESH, after),
  ),
  ...[40, 60].map((a) => driftRuling("Cochineal", { L: 50, a: 50, b: 0 }, step(50, a, 0))),
  particleModel({ ...record, sizeUm: undefined }),
  particleModel({ ...record, sizeUm: 80 }),
  particleModel(record),
  particleModel({ ...record, isClear: true }),
  ...[1, 0, 0.5].map((share) => blueRuling("Lamp black", "Furnace black", difference(share))),
  allBluerRuling(["Lamp black", "Bone black"], "with", "titanium white", "lead white", [
    difference(0.95),
    difference(0.93),
  ]),
  leanRuling("Lamp black", "Titanium White", tint(-6, -3, [-6, -5, -3])),
  leanRuling("Lamp black", "Lead White", tint(-1, 3, [-1, 1, 3])),
];

holdSentences<MixtureStatement>(
  "sentences of mixtures and theory",
  MIXTURE_RULINGS,
  found.filter((one): one is MixtureStatement => isStatement(one)),
);

test("a drift names the component, the loss and the way it goes", () => {
  const ruling = driftRuling("Ultramarine Blue", FRESH, step(51, 3, 1));
  expect(worded(wordingsIn("en", MIXTURE_RULINGS), ruling)).toMatch(
    /^When Ultramarine Blue has lost 30\u00a0% of its strength, it goes towards \w+ \(\u0394E00\u00a0\d\.\d\)\.$/,
  );
});
