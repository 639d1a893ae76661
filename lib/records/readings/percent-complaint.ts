import type { Complaint } from "../../diagnostics/complaint.ts";
import type { ReadingColumn } from "./reading-column.ts";

/** The largest reflectance factor that a sound reading has [1]: what passes it is in percent. */
export const LARGEST_FACTOR = 1.2;
/** Reflectance [%] that no film of oil paint stays below, its gloss shut out. Our own limit. */
const DARKEST_PERCENT = 0.05;
/** Times [1] its least value that the largest of a black can be, in one column and in a file of several. Our own limits. */
const BLACK_SPANS = { column: 8, file: 20 } as const;

/**
 * What speaks against a file that a record calls percent: no value passes what a factor can be. Only a file of
 * nothing but blacks reads so; where its values lie too far apart for that, or too low, it holds factors.
 * @returns undefined of a file with a value above 1.2, or with no value.
 */
export function percentComplaint(
  columns: readonly ReadingColumn[],
  file: string,
): Complaint | undefined {
  const all = columns.flatMap(({ values }) => values.filter(Number.isFinite));
  const highest = Math.max(...all);
  if (all.length === 0 || highest > LARGEST_FACTOR) return undefined;
  const spanOf = (values: readonly number[]): number => {
    const above = values.filter((value) => value > 0);
    return above.length === 0 ? 1 : Math.max(...above) / Math.min(...above);
  };
  const lowest = Math.min(...all.filter((value) => value > 0));
  const holdsFactors =
    lowest < DARKEST_PERCENT ||
    spanOf(all) > BLACK_SPANS.file ||
    columns.some(({ values }) => spanOf(values.filter(Number.isFinite)) > BLACK_SPANS.column);
  return {
    severity: holdsFactors ? "error" : "warning",
    rule: "records/scale",
    message: holdsFactors
      ? `The record says scale: percent, and ${file} holds factors: in percent no paint reads ${lowest === highest ? highest : `${lowest} to ${highest}`}`
      : `The record says scale: percent, and no value in ${file} passes ${highest}`,
    actual: `at most ${highest} in ${file}`,
    expected: `readings in percent, of which some pass ${LARGEST_FACTOR}`,
    hint: "a reading in factors says scale: factor",
  };
}

/** Values above what a factor can be, as a part [1] of a column's, from which it is in percent and no slip. Our own limit. */
const MANY = 0.5;
/** The largest percentage that a sound reading has. */
const LARGEST_PERCENT = 120;
/** The largest value that a channel of eight bits holds. */
const LARGEST_BYTE = 255;

/**
 * What speaks against a file that a record takes for factors: all of it is as a picture has it; or half of a column is larger than any factor, and all of it a percentage.
 * @returns undefined of a file with a few such values, which are slips, each at its place.
 */
export function factorComplaint(
  columns: readonly ReadingColumn[],
  file: string,
): Complaint | undefined {
  const isInPercent = ({ values }: ReadingColumn): boolean =>
    values.length > 0 &&
    values.every((value) => !(value > LARGEST_PERCENT)) &&
    values.filter((value) => value > LARGEST_FACTOR).length >= MANY * values.length;
  const all = columns.flatMap(({ values }) => values.filter(Number.isFinite));
  const highest = Math.max(...all);
  const isOfPicture =
    highest > LARGEST_PERCENT && highest <= LARGEST_BYTE && all.every(Number.isInteger);
  if (isOfPicture)
    return {
      severity: "error",
      rule: "records/scale",
      message: `The reading is taken in factors, and ${file} holds whole numbers up to ${highest}: those are neither factors nor percent, but most likely a picture's values of 0 to ${LARGEST_BYTE}`,
      actual: `whole numbers up to ${highest} in ${file}`,
      expected: "reflectances that a spectrophotometer read",
      hint: "a picture's values are no spectrum",
    };
  if (!columns.some(isInPercent)) return undefined;
  return {
    severity: "error",
    rule: "records/scale",
    message: `The reading is taken in factors, and ${file} holds percent: its values go up to ${highest}`,
    actual: `up to ${highest} in ${file}`,
    expected: `readings in factors, none above ${LARGEST_FACTOR}`,
    hint: "a reading in percent says scale: percent, here or under readings in workshop.yaml",
  };
}
