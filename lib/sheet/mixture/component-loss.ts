import { readingNotations } from "../../colorimetry/reading-notations.ts";
import { drift, TOLD_LOSSES, type Drift } from "../../optics/mixtures/component-loss.ts";
import { ladderModel } from "../../optics/tints/ladder.ts";
import { mixedTint, mixture, type Mixture } from "../../optics/mixtures/mixture.ts";
import type { RecordRoot } from "../../quantities/figure.ts";
import { remembered } from "../../quantities/remembered.ts";
import { isStatement } from "../../quantities/statement.ts";
import type { Colour, Records } from "../../records/records.ts";
import { labFigures, notationFigure, type Origin } from "../notations/lab-figures.ts";
import { colourRecord, drawdownRecords } from "../record-inputs.ts";
import type { MixedInWhite } from "./mixture-white.ts";
import * as d from "../declaration.ts";
import { SCREEN_IF_KNOWN } from "../notations/notation-figures.ts";
import { DAY_LAB, drawnFrom } from "./picture-points.ts";
import { screenFigures } from "../notations/munsell-figures.ts";

const FADED: Origin = {
  inputs: [],
  standing: "estimated",
  method: "K and S of its components' own paints, one of them less by what it lost",
  source: "duncan-1940",
};

const MIXTURE_LOSS = d.section({
  /** Percent of its strength: "30". */
  slug: d.text,
  lab: DAY_LAB,
  deltaE00: d.number({ ...d.ONE_PLACE, word: "driftDeltaE00" }),
  ...SCREEN_IF_KNOWN,
});

export const MIXTURE_DRIFT = d.section({
  /** Of the pigment. */
  slug: d.text,
  name: d.text,
  losses: d.list(MIXTURE_LOSS),
  sentences: d.statements,
  /** For the picture: share of strength lost, a* and b*. */
  path: drawnFrom("loss", "a", "b"),
});
export type MixtureDrift = d.SectionOf<typeof MIXTURE_DRIFT>;

/** Where the tint at L* 50 goes as each component in turn loses strength. */
export function componentDrifts({ mixed, components, drawn }: MixedInWhite): MixtureDrift[] {
  const names = components.map(({ name }) => name);
  return components.flatMap(({ slug, name }, i) => {
    const found = drift(mixed, i, names);
    return isStatement(found) ? [] : [driftFigures(found, mixed, slug, name, drawn)];
  });
}

/** The same of a black that is one pigment: the workshop's reference, else the first that was let down in this white. */
export function singleBlackDrift({
  white,
  colour,
  fits,
  records,
}: MixedInWhite): MixtureDrift | undefined {
  if (colour.record.family !== "black" && colour.record.family !== "grey") return undefined;
  for (const black of singleBlacks(records)) {
    const fit = fits.get(black.slug);
    if (
      fit?.kind !== "fit" ||
      !fit.whites.some(({ slug, ratioKind }) => slug === white && ratioKind === "paint")
    )
      continue;
    const alone = mixture([{ ladder: ladderModel(fit, white), parts: 1 }]);
    const found = isStatement(alone) ? alone : drift(alone, 0, [black.record.name]);
    if (!isStatement(alone) && !isStatement(found))
      return driftFigures(found, alone, black.slug, black.record.name, [
        ...drawdownRecords(black, records),
        ...colourRecord(black, "pigments", "oilIndexGPer100g"),
      ]);
  }
  return undefined;
}

/** Blacks of one pigment, the workshop's reference first. */
const singleBlacks = remembered(({ colours, workshop: { strengthReference } }: Records): Colour[] =>
  [...colours.values()]
    .filter(({ record }) => record.family === "black" && record.pigments.length === 1)
    .toSorted(
      (one, other) =>
        Number(other.slug === strengthReference) - Number(one.slug === strengthReference),
    ),
);

function driftFigures(
  { component, massRatio, path, rulings }: Drift,
  mixed: Mixture,
  slug: string,
  name: string,
  drawn: readonly RecordRoot[],
): MixtureDrift {
  const faded = { ...FADED, inputs: drawn };
  return {
    slug,
    name,
    sentences: rulings,
    losses: TOLD_LOSSES.flatMap((loss) => {
      const step = path.find((one) => Math.abs(one.loss - loss) < 1e-9);
      if (step === undefined) return [];
      const { spectrum } = mixedTint(
        mixed,
        massRatio,
        mixed.parts.map((_, i) => (i === component ? 1 - loss : 1)),
      );
      return {
        slug: String(Math.round(loss * 100)),
        lab: { "D65/10": labFigures(step.lab, faded) },
        deltaE00: notationFigure(step.deltaE00, "1", {
          ...faded,
          method: "\u0394E00 (D65/10) between the tint at L* 50 and the same after the loss",
        }),
        ...screenFigures(readingNotations(spectrum).screen, faded),
      };
    }),
    path: path.map(({ loss, lab: { a, b } }) => ({ loss, a, b })),
  };
}
