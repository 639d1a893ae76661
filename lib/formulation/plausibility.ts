/**
 * Whether a figure of a record can be a pigment's at all, with the slip most
 * likely made. Reaches are the trade's, from memory: an error lies outside what
 * any pigment reaches, a warning outside what all but a few do.
 *
 * @source memory-formulation
 */
import type { Complaint } from "../diagnostics/complaint.ts";
import { certain } from "../quantities/at.ts";
import type { Interval } from "../quantities/interval.ts";
import type { SourceKey } from "../sources/source.ts";

export const REACHED_FIGURES = [
  "densityGPerCm3",
  "oilAbsorptionGPer100g",
  "oilIndexGPer100g",
  "bulkDensityGPerMl",
  "gloss60",
  "finenessOfGrindUm",
] as const;
export type ReachedFigure = (typeof REACHED_FIGURES)[number];

/** A row of `reaches.csv`; the table has one for each figure. */
export interface ReachRow {
  readonly figure: ReachedFigure;
  readonly subject: string;
  readonly unit: string;
  readonly rule: `formulation/${string}`;
  /** Outside this no pigment lies. */
  readonly possible: Interval;
  /** Outside this only a few lie. */
  readonly usual: Interval;
  /** Wrong units that the figure may have been given in: what to multiply it by to mend it. */
  readonly slips?: readonly { readonly givenIn: string; readonly times: number }[] | undefined;
  readonly source: SourceKey;
}

/**
 * @param rows of `reaches.csv`.
 * @returns an error outside the possible, a warning outside the usual, undefined within; ends belong to it.
 * @example reachComplaint("densityGPerCm3", 4700, rows)?.hint // "4.7 g/cm3 if it was given in kg/m3"
 */
export function reachComplaint(
  figure: ReachedFigure,
  value: number,
  rows: readonly ReachRow[],
): Complaint | undefined {
  const row = certain(rows.find((one) => one.figure === figure));
  const { subject, unit, rule, possible, usual, slips = [], source } = row;
  if (within(value, usual)) return undefined;
  const severity = within(value, possible) ? "warning" : "error";
  const [least, most] = severity === "error" ? possible : usual;
  const slip = slips.find(({ times }) => within(value * times, usual));
  return {
    severity,
    rule,
    message: `The ${subject} is ${value} ${unit}, ${severity === "error" ? "beyond all that occurs" : "outside the usual"}, ${least} to ${most} ${unit}`,
    actual: String(value),
    expected: `${least} to ${most} ${unit}`,
    source,
    ...(slip !== undefined && {
      hint: `${Number((value * slip.times).toPrecision(6))} ${unit} if it was given in ${slip.givenIn}`,
    }),
  };
}

/** How far beyond a handbook's range [1] a record's figure may lie, either way, before it is remarked on. */
const HANDBOOK_TOLERANCE = { density: 0.1, oilAbsorption: 0.5 } as const;

/**
 * A record's figure against the handbook's range for that pigment.
 * @returns a warning when it lies beyond the range by more than the tolerance, else undefined.
 */
export function handbookComplaint(
  figure: "density" | "oilAbsorption",
  value: number,
  handbook: Interval,
  colourIndexName: string,
): Complaint | undefined {
  const tolerance = HANDBOOK_TOLERANCE[figure];
  const [lower, upper] = handbook;
  if (value >= lower / (1 + tolerance) && value <= upper * (1 + tolerance)) return undefined;
  const [subject, unit] =
    figure === "density"
      ? (["density", "g/cm3"] as const)
      : (["oil absorption", "g/100 g"] as const);
  return {
    severity: "warning",
    rule: `formulation/${figure === "density" ? "density" : "oil-absorption"}-against-handbook`,
    message: `The ${subject} of ${colourIndexName} is ${value} ${unit} here, and about ${Number(lower.toPrecision(3))} to ${Number(upper.toPrecision(3))} ${unit} in handbooks`,
    actual: String(value),
    expected: `about ${Number(lower.toPrecision(3))} to ${Number(upper.toPrecision(3))} ${unit}`,
    source: "memory-formulation",
  };
}

/** A complaint with the figure that it is about. */
export interface BulkDensityComplaint extends Complaint {
  readonly about: "loose bulk density" | "bulk density";
}

/**
 * Bulk densities against each other and against the grain: poured powder is
 * lighter than settled, and settled powder lighter than the grain itself.
 */
export function bulkDensityComplaints({
  looseGPerMl,
  tappedGPerMl,
  densityGPerCm3,
}: {
  readonly looseGPerMl?: number | undefined;
  readonly tappedGPerMl?: number | undefined;
  readonly densityGPerCm3?: number | undefined;
}): BulkDensityComplaint[] {
  const fault = (
    about: BulkDensityComplaint["about"],
    actual: number,
    expected: string,
  ): BulkDensityComplaint => ({
    about,
    severity: "error",
    rule: "formulation/bulk-density-order",
    message: `The ${about} is ${actual} g/ml, and must be ${expected}`,
    actual: String(actual),
    expected,
  });
  const complaints: BulkDensityComplaint[] = [];
  if (looseGPerMl !== undefined && tappedGPerMl !== undefined && looseGPerMl > tappedGPerMl) {
    complaints.push(
      fault("loose bulk density", looseGPerMl, `at most the tapped one, ${tappedGPerMl} g/ml`),
    );
  }
  const settled = tappedGPerMl ?? looseGPerMl;
  if (settled !== undefined && densityGPerCm3 !== undefined && settled >= densityGPerCm3) {
    complaints.push(
      fault("bulk density", settled, `below the density of the grain, ${densityGPerCm3} g/cm3`),
    );
  }
  return complaints;
}

function within(value: number, [lower, upper]: Interval): boolean {
  return value >= lower && value <= upper;
}
