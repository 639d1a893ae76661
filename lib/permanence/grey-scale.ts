/**
 * Grey scale for change in colour, ISO 105-A02: pairs of greys whose difference
 * an eye sets beside a change. 5 is no change, 1 the greatest.
 */
import { domainError } from "../diagnostics/diagnostic.ts";
import type { StatementOf } from "../quantities/statement.ts";

export type GreyGrade = "5" | "4-5" | "4" | "3-4" | "3" | "2-3" | "2" | "1-2" | "1";

export interface GreyScaleRow {
  readonly grade: GreyGrade;
  /** CIELAB difference of the pair [1]. */
  readonly deltaEab: number;
  readonly standing: "read" | "memory";
}

/** Whole grades read, half grades from memory. @source iso-105-a02 */
export const GREY_SCALE: readonly GreyScaleRow[] = [
  { grade: "5", deltaEab: 0, standing: "read" },
  { grade: "4-5", deltaEab: 0.8, standing: "memory" },
  { grade: "4", deltaEab: 1.7, standing: "read" },
  { grade: "3-4", deltaEab: 2.5, standing: "memory" },
  { grade: "3", deltaEab: 3.4, standing: "read" },
  { grade: "2-3", deltaEab: 4.8, standing: "memory" },
  { grade: "2", deltaEab: 6.8, standing: "read" },
  { grade: "1-2", deltaEab: 9.6, standing: "memory" },
  { grade: "1", deltaEab: 13.6, standing: "read" },
];

/** What an eye that saw both halves would say of a change, by its grade: no word of a category. */
export type SeenChange =
  | "unchanged"
  | "hardly changed"
  | "changed slightly"
  | "changed"
  | "changed much"
  | "changed greatly";

/** The workshop's own words. @source practice-permanence */
export const SEEN_CHANGE: Readonly<Record<GreyGrade, SeenChange>> = {
  "5": "unchanged",
  "4-5": "hardly changed",
  "4": "hardly changed",
  "3-4": "changed slightly",
  "3": "changed slightly",
  "2-3": "changed",
  "2": "changed much",
  "1-2": "changed much",
  "1": "changed greatly",
};

/** @throws RangeError as {@link greyScaleRuling}. */
export function seenChange(deltaEab: number): SeenChange {
  return SEEN_CHANGE[greyScaleRuling(deltaEab).grade];
}

export type GreyScaleStatement = StatementOf<
  "change-beside-grey-scale",
  { deltaEab: number; grade: GreyGrade }
>;

export interface GreyScaleRuling {
  readonly grade: GreyGrade;
  readonly row: GreyScaleRow;
  readonly reason: GreyScaleStatement;
}

/**
 * Grade whose pair of greys is nearest a colour change.
 *
 * @param deltaEab Delta-E*ab (CIE 1976) [1], finite and >= 0.
 * @returns the ruling; halfway between two pairs belongs to the better grade.
 * @throws RangeError when negative, NaN or infinite.
 * @validity a comparison for the reader: the scale is meant for the eye, and its instrumental grade (ISO 105-A05) is another formula.
 */
export function greyScaleRuling(deltaEab: number): GreyScaleRuling {
  if (!(deltaEab >= 0 && deltaEab < Infinity))
    throw domainError("colour change Delta-E*ab", deltaEab, "0 <= Delta-E*ab < Infinity");
  const row = GREY_SCALE.reduce((nearest, candidate) =>
    Math.abs(candidate.deltaEab - deltaEab) < Math.abs(nearest.deltaEab - deltaEab)
      ? candidate
      : nearest,
  );
  return {
    grade: row.grade,
    row,
    reason: {
      rule: "change-beside-grey-scale",
      values: { deltaEab, grade: row.grade },
      standing: "derived",
      source: "iso-105-a02",
    },
  };
}
