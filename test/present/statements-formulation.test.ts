import { densityContradiction } from "../../lib/formulation/measured-density.ts";
import { batchLoss, lossOfLots } from "../../lib/formulation/batch-loss.ts";
import { bodyStatement, oilSeparationStatement } from "../../lib/formulation/paste-body.ts";
import { oilDemandStatements } from "../../lib/formulation/cpvc.ts";
import { dispersionFactorRuling, dispersionRuling } from "../../lib/formulation/dispersion.ts";
import { jarFillStatement } from "../../lib/formulation/container-fill.ts";
import { finishRuling } from "../../lib/formulation/finish.ts";
import { finishDifference, glossRuling } from "../../lib/formulation/gloss.ts";
import { KNOWN } from "../support/known.ts";
import { handbookEstimate } from "../../lib/formulation/handbook-estimate.ts";
import { oilAbsorptionMethodStatement } from "../../lib/formulation/oil-absorption-method.ts";
import { massAndVolumeRuling } from "../../lib/formulation/oil-by-volume.ts";
import { oilHeldBack } from "../../lib/formulation/oil-held-back.ts";
import {
  OIL_RULES,
  PASTE_RULES,
  type OilFacts,
  type PasteFacts,
} from "../../lib/formulation/oil-rules.ts";
import { oilIndexRuling } from "../../lib/formulation/oil-index-class.ts";
import {
  estimatedOilAbsorption,
  estimatedOilIndex,
  workingOilContradiction,
} from "../../lib/formulation/working-oil.ts";
import { FORMULATION_RULINGS } from "../../lib/words/rulings/formulation.ts";
import type { FormulationStatement } from "../../lib/formulation/statements.ts";
import { casesOf, holdSentences, type Stated } from "./statements-held.ts";

const paint = (oilIndexGPer100g: number, densityGPerCm3: number) => ({
  oilIndexGPer100g,
  densityGPerCm3,
});
const soot = { looseGPerMl: 0.15, tappedGPerMl: 0.3 };
const byMassAlone = massAndVolumeRuling(paint(75, 1.8), paint(25, 4.7)).statement;

const statements: Stated<FormulationStatement>[] = [
  ...casesOf<OilFacts, FormulationStatement>(OIL_RULES, (known) => ({
    pigments: [],
    oilIndexGPer100g: undefined,
    cpvc: undefined,
    ...known,
  })),
  ...casesOf<PasteFacts, FormulationStatement>(PASTE_RULES, (known) => ({
    untoldSolvents: [],
    body: undefined,
    oilSeparation: undefined,
    ...known,
  })),
  ...[16, 34, 61, 97, 144, [22, 40] as const].map((oilIndex) => oilIndexRuling(oilIndex).reason),
  // The limit between medium and high is 70: within 5 % of it an index is of both.
  {
    when: "oil-index-class-at-its-limit",
    said: [oilIndexRuling(66.7).reason, oilIndexRuling(73.5).reason],
    unsaid: [oilIndexRuling(66.6).reason, oilIndexRuling(73.6).reason],
  },
  // practice-formulation: classes end at 25, 50, 70 and 110 g; an estimate over three of them tells nothing.
  {
    when: "oil-index-class-not-told",
    said: [oilIndexRuling([25, 50.1]).reason, oilIndexRuling([13, 80]).reason],
    unsaid: [oilIndexRuling([25.1, 70]).reason, oilIndexRuling([25, 50]).reason],
  },
  estimatedOilIndex(20).reason,
  estimatedOilIndex([16, 24]).reason,
  {
    when: "rub-out-takes-less-than-working-paint",
    said: [estimatedOilAbsorption(40).reason],
    unsaid: [estimatedOilIndex(40).reason],
  },
  // church-1915: between .9 and 4.1 times the rub-out figure lie all its pigments.
  {
    when: "oil-index-below-rub-out",
    said: [workingOilContradiction(35.9, 40)],
    unsaid: [workingOilContradiction(36, 40)],
  },
  {
    when: "oil-index-far-above-rub-out",
    said: [workingOilContradiction(164.1, 40)],
    unsaid: [workingOilContradiction(164, 40)],
  },
  ...["ASTM D281", "iso 787-5, by knife", "ASTM D1483", "own rub-out", "an old way", undefined].map(
    oilAbsorptionMethodStatement,
  ),
  handbookEstimate(KNOWN.pigment("PBk 6").densities, { colourIndexName: "PBk 6" })?.reason,
  ...[0.34, 0.5, 0.56, [0.39, 0.43] as const].flatMap(oilDemandStatements),
  byMassAlone,
  {
    ...byMassAlone,
    rule: "oil-differs-by-mass-alone",
    values: { ...byMassAlone.values, more: "Lamp Black", less: "Iron Oxide Black" },
  },
  massAndVolumeRuling(paint(40, 1.8), paint(30, 2)).statement,
  massAndVolumeRuling(paint(40, 5), paint(30, 2)).statement,
  massAndVolumeRuling(paint(90, 3), paint(30, 3)).statement,
  ...[0.8, [0.8, 0.95] as const, 0.93, 0.985, 1.1, [0.6, 1.2] as const].map(
    (reducedPvc) => finishRuling(reducedPvc).reason,
  ),
  finishRuling([1.02, 1.17], 0.82).reason,
  ...[82, 50, 20, 4].map((gloss60) => glossRuling(gloss60).reason),
  finishDifference(finishRuling(1.1), glossRuling(82)),
  finishDifference(finishRuling([0.8, 0.93]), glossRuling(4)),
  ...(["fine carbon", "fine", "coarse"] as const).flatMap((particle) =>
    ([undefined, "mulled", "milled"] as const).map(
      (how) => dispersionFactorRuling(how, particle).reason,
    ),
  ),
  dispersionRuling("mulled", 45, "coarse").reason,
  dispersionRuling("mulled", 12, "fine").reason,
  dispersionRuling(undefined, 12, "fine").reason,
  dispersionRuling("milled", 35, "fine").reason,
  dispersionRuling("mulled", 35, "fine").reason,
  // A word each, as the workshop saw it.
  ...(["short", "long", "stiff", "ropy"] as const).map((body) => ({
    when: `body-${body}` as const,
    said: [bodyStatement(body)],
    unsaid: [bodyStatement(body === "short" ? "long" : "short")],
  })),
  ...(
    [
      ["none", "oil-stays-in"],
      ["slight", "oil-parts-slightly"],
      ["marked", "oil-parts-markedly"],
    ] as const
  ).map(([seen, when]) => ({
    when,
    said: [oilSeparationStatement(seen)],
    unsaid: [oilSeparationStatement(seen === "none" ? "marked" : "none")],
  })),
  oilHeldBack(75).reason,
  oilHeldBack(75, 66).reason,
  oilHeldBack(60, 60).reason,
  ...(["mulled", "milled", undefined] as const).map((how) => batchLoss(how).reason),
  ...[1, 4].map((lots) => lossOfLots([0.04, 0.06], lots).reason),
  densityContradiction(1.34, 1.4, 4, 2),
  densityContradiction(1.34, [1.2, 1.3], 1, 2),
  ...[40, 25, 10].map((massG) => jarFillStatement("Lamp black", massG, 118, soot)),
];

holdSentences("sentences of formulation", FORMULATION_RULINGS, statements);
