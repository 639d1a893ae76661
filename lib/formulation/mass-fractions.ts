/** Parts of a colour's pigments, as a record gives them, to shares of the dry pigment by mass. */
import type { Complaint } from "../diagnostics/complaint.ts";
import { requirePositive } from "../quantities/positive.ts";

/** How far written shares may stray from a whole by their own rounding. */
const WRITTEN_SUM_TOLERANCE = 0.005;

/**
 * Mass fractions from parts of any scale ("2 to 1"), in the same order.
 *
 * @param parts by mass; all given or none.
 * @returns undefined when any is missing: the parts of a colour are never invented. One pigment alone is the whole.
 * @throws RangeError when a part is not a finite number above 0.
 */
export function massFractions(parts: readonly (number | undefined)[]): number[] | undefined {
  if (parts.length === 1) return [1];
  const given: number[] = [];
  for (const part of parts) {
    if (part === undefined) return undefined;
    requirePositive("part", part, "");
    given.push(part);
  }
  const whole = given.reduce((total, part) => total + part, 0);
  return given.map((part) => part / whole);
}

/**
 * Fractions, or percent, that were plainly meant to make a whole and do not. Nothing is
 * said of a list in which some are given and some not: that is a fault of the record's form.
 */
export function partsComplaint(parts: readonly (number | undefined)[]): Complaint | undefined {
  const given = parts.filter((part) => part !== undefined);
  if (given.length === 0 || given.length < parts.length) return undefined;
  const sum = given.reduce((total, part) => total + part, 0);
  const whole = given.length > 1 ? wholeMeant(given, sum) : undefined;
  if (whole === undefined || Math.abs(sum / whole - 1) <= WRITTEN_SUM_TOLERANCE) return undefined;
  return {
    severity: "warning",
    rule: "formulation/parts-sum",
    message: `The parts add up to ${Number(sum.toPrecision(6))}, not to ${whole}`,
    actual: String(Number(sum.toPrecision(6))),
    expected: String(whole),
    hint: "they are taken in proportion",
  };
}

/** 1 for fractions, 100 for what lies near it, nothing for free parts such as 2 to 1. */
function wholeMeant(parts: readonly number[], sum: number): number | undefined {
  if (parts.every((part) => part < 1)) return 1;
  return sum > 90 && sum < 110 ? 100 : undefined;
}
