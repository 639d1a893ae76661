import { at } from "../quantities/at.ts";
import { faultAt, warningAt, type Fault, type Faults } from "./fault.ts";
import { levelsOf, mean } from "./reading-levels.ts";
import { capitalised, readDrawdowns, type ReadDrawdown } from "./read-drawdowns.ts";
import type { Lot, ReadColour, Reading } from "./records.ts";

/** What light mirrored by a surface of oil adds to a reading [1], at every wavelength alike. @source fresnel : n 1.48 to 1.52 */
const GLOSS_STEP = [0.03, 0.05] as const;
/** So far [1] from its mean such a step lies at any wavelength. Our own limit. */
const STEP_EVEN_WITHIN = 0.006;
/** A reading of a colour spans so much [1]: of a flat one a step may be anything. Our own limit. */
const LEAST_SPAN = 0.1;
/** By so much [1] no let-down falls below its masstone where that is the darker. Our own limit, over noise. */
const BELOW_MASSTONE = 0.02;
/** Of its wavelengths [1]. Our own limit. */
const MANY = 0.2;

type Beside = Omit<ReadDrawdown, "reading"> & { readonly reading: Reading | undefined };

/**
 * A reading with its gloss among others without, or the other way round, where the file does not say so: what
 * can be seen of that. Two drawdowns of one paint that hide alike differ by one step at every wavelength; and
 * a let-down falls below its masstone, where no paint's does.
 */
export function* glossSteps(
  colour: ReadColour,
  whites: (slug: string) => Reading | undefined,
): Faults {
  const alone = drawdownsAlone(colour);
  for (const [i, one] of alone.entries()) {
    const other = alone.slice(0, i).find((before) => isStep(one, before));
    if (other !== undefined) yield faultAt(colour.place(one.path), stepFault(one, other));
  }
  yield* letDownsBelow(colour, whites);
}

/** The same of lots beside their colours. */
export function* lotGlossSteps(lots: readonly Lot[], colours: readonly ReadColour[]): Faults {
  for (const lot of lots) {
    const colour = colours.find(({ slug }) => slug === lot.record.colour);
    const [own, standard] = [
      { reading: lot.masstone, path: ["masstone"], as: "the masstone" },
      { reading: colour?.masstone, path: [], as: `that of ${lot.record.colour}` },
    ];
    if (isStep(own, standard)) yield faultAt(lot.place(own.path), stepFault(own, standard));
  }
}

function drawdownsAlone({ masstone, masstoneOverBlack, films }: ReadColour): Beside[] {
  return [
    { reading: masstone, path: ["masstone"], as: "the masstone" },
    { reading: masstoneOverBlack, path: ["masstone", "overBlack"], as: "the masstone over black" },
    ...readDrawdowns({ films }),
  ];
}

/** Whether two readings of one paint, which change over the spectrum, lie one step apart throughout. */
function isStep(one: Beside, other: Beside): boolean {
  const [values, others] = spectra(one.reading, other.reading) ?? [];
  if (values === undefined || others === undefined || span(values) < LEAST_SPAN) return false;
  const apart = values.map((value, i) => value - at(others, i));
  const step = mean(apart);
  const [least, most] = GLOSS_STEP;
  return (
    Math.abs(step) >= least &&
    Math.abs(step) <= most &&
    apart.every((value) => Math.abs(value - step) <= STEP_EVEN_WITHIN)
  );
}

function* letDownsBelow(
  { masstone, tints, place }: ReadColour,
  whites: (slug: string) => Reading | undefined,
): Faults {
  for (const [i, { reading, white, massRatio }] of tints.entries()) {
    const [values, dark] = spectra(reading, masstone) ?? [];
    const [pale] = spectra(whites(white), masstone) ?? [];
    if (values === undefined || dark === undefined || pale === undefined) continue;
    const below = values.filter(
      (value, nth) => at(dark, nth) < at(pale, nth) && value < at(dark, nth) - BELOW_MASSTONE,
    );
    if (mean(values) < mean(dark) || below.length < MANY * values.length) continue;
    yield warningAt(place(["tints", i]), "records/gloss-step", {
      message: `The let-down ${massRatio} in ${white} is darker than the masstone at ${below.length} of ${values.length} wavelengths, though lighter on the whole, which no paint is`,
      actual: "darker than the masstone where that is darkest",
      expected: "at least as light as the masstone",
      hint: "is gloss in the masstone's reading, and not in this one?",
    });
  }
}

/** The numbers of two spectra that compare; undefined of what does not. */
function spectra(
  one: Reading | undefined,
  other: Reading | undefined,
): readonly [readonly number[], readonly number[]] | undefined {
  const [levels, others] = [levelsOf(one), levelsOf(other)];
  return levels?.isSpectral === true && levels.scale === others?.scale
    ? [levels.values, others.values]
    : undefined;
}

function stepFault(one: Beside, other: Beside): Fault {
  return {
    severity: "warning",
    rule: "records/gloss-step",
    message: `${capitalised(one.as)} and ${other.as} differ by one step at every wavelength, as readings with gloss do from those without`,
    actual: "one step throughout",
    expected: "readings of one geometry",
    hint: "gloss included in one of them, and its geometry not told?",
    source: "fresnel",
  };
}

function span(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}
