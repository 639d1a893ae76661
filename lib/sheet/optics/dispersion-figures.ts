import { expectedDispersionRuling, measuredDispersionRuling } from "../../optics/fit/dispersion.ts";
import { isKnown } from "../../quantities/figure.ts";
import { midpoint } from "../../quantities/interval.ts";
import { isStatement, type Statement } from "../../quantities/statement.ts";
import { derivedFigure } from "../../quantities/derived-figure.ts";
import { remembered } from "../../quantities/remembered.ts";
import type { Colour, Records } from "../../records/records.ts";
import { whiteColour } from "../tints/drawdown-set.ts";
import { drawdownRecords } from "../record-inputs.ts";
import * as d from "../declaration.ts";
import type { PigmentPart } from "../pigments/pigment-figures.ts";
import { commonWhite, comparedLadders, type Fits } from "../tints/strength.ts";
import { weighedPaint } from "../tints/paint-conversion.ts";

/** The mulled paint's strength beside the milled one's, in one white. */
export const DISPERSION = d.section({
  /** The paint of the same pigment on the other sheet. */
  other: d.NAMED,
  white: d.NAMED,
  strength: d.listed(d.quantity({ ...d.SHARE, word: "mulledStrength" }), {
    after: "optics.tintingStrengthByVolume",
  }),
  sentence: d.statement,
});
type DispersionFigures = d.SectionOf<typeof DISPERSION>;

/** The same pigment mulled and milled: measured where both were let down in a white, else of a mulled paint what to expect. */
export function dispersionFigures(
  colour: Colour,
  parts: readonly PigmentPart[],
  fits: Fits,
  records: Records,
): { readonly figures?: DispersionFigures; readonly reasons: readonly Statement[] } {
  const figures = measured(colour, fits, records);
  if (figures !== undefined) return { figures, reasons: [] };
  const carbon = parts.some(
    ({ colourIndexName }) => records.knowledge.pigment(colourIndexName).isFineCarbon,
  );
  return {
    reasons: colour.record.dispersion === "mulled" ? [expectedDispersionRuling(carbon)] : [],
  };
}

function measured(colour: Colour, fits: Fits, records: Records): DispersionFigures | undefined {
  const other = dispersedOtherwise(colour, records);
  if (other === undefined) return undefined;
  const [mulled, milled] =
    colour.record.dispersion === "mulled" ? [colour, other] : [other, colour];
  const [sample, reference] = [fits.get(mulled.slug), fits.get(milled.slug)];
  const white =
    sample?.kind === "fit" && reference?.kind === "fit"
      ? commonWhite(sample, reference)
      : undefined;
  if (white === undefined || sample?.kind !== "fit" || reference?.kind !== "fit") return undefined;
  const drawdowns = [...drawdownRecords(colour, records), ...drawdownRecords(other, records)];
  const pair = comparedLadders(sample, reference, white, drawdowns);
  if (isStatement(pair) || pair.sample.white.ratioKind !== pair.reference.white.ratioKind)
    return undefined;
  const name = whiteColour(white, records).name;
  const { atL50 } = pair;
  // Two pastes of one pigment differ in oil: what is held alike is the pigment.
  const fractions = {
    mulledFraction: weighedPaint(mulled.slug, records).pigmentFraction,
    milledFraction: weighedPaint(milled.slug, records).pigmentFraction,
  };
  const byPigment =
    pair.sample.white.ratioKind === "paint" &&
    Object.values(fractions).every((figure) => isKnown(figure));
  const strength = byPigment
    ? derivedFigure(
        {
          name: `K/S of let-downs equal by mass of dry pigment in ${name}, mulled against milled`,
          unit: "1",
          beside: drawdowns,
        },
        { atL50, ...fractions },
        (v) => pair.strength(v.atL50 * (v.milledFraction / v.mulledFraction), v.atL50),
      )
    : derivedFigure(
        {
          name: `K/S of let-downs equal by mass in ${name}, mulled against milled`,
          unit: "1",
          beside: drawdowns,
        },
        { atL50 },
        (v) => pair.strength(v.atL50, v.atL50),
      );
  if (!isKnown(strength)) return undefined;
  const ruling = measuredDispersionRuling(midpoint(strength.value));
  return {
    other: { slug: other.slug, name: other.record.name },
    white: { slug: white, name },
    strength,
    sentence: {
      ...ruling,
      values: {
        ...ruling.values,
        white: name,
        mulled: mulled.record.name,
        milled: milled.record.name,
      },
    },
  };
}

/** The first milled paint of a mulled one's pigments in the same parts, or the first mulled of a milled one's. */
function dispersedOtherwise(colour: Colour, { colours }: Records): Colour | undefined {
  const { dispersion } = colour.record;
  if (dispersion !== "mulled" && dispersion !== "milled") return undefined;
  const wanted = dispersion === "mulled" ? "milled" : "mulled";
  const pigments = pigmentsOf(colour);
  return pigments === undefined ? undefined : firstDispersed(colours).get(`${wanted} ${pigments}`);
}

/** By how it was dispersed and its pigments, the first paint. */
const firstDispersed = remembered((colours: Records["colours"]): Map<string, Colour> => {
  const first = new Map<string, Colour>();
  for (const colour of colours.values()) {
    const { dispersion } = colour.record;
    const pigments = pigmentsOf(colour);
    if (dispersion === undefined || pigments === undefined) continue;
    const key = `${dispersion} ${pigments}`;
    if (!first.has(key)) first.set(key, colour);
  }
  return first;
});

/** Pigments with their shares; undefined of several whose parts are not recorded, which nobody can tell to be alike. */
function pigmentsOf({ record: { pigments } }: Colour): string | undefined {
  const [only, ...others] = pigments;
  if (only !== undefined && others.length === 0) return only.pigment;
  const known = pigments.flatMap(({ pigment, parts }) =>
    parts === undefined ? [] : [{ pigment, parts }],
  );
  if (known.length < pigments.length) return undefined;
  const total = known.reduce((sum, { parts }) => sum + parts, 0);
  return known
    .map(({ pigment, parts }) => `${pigment} ${(parts / total).toFixed(3)}`)
    .sort()
    .join(", ");
}
