/**
 * Precautionary statements: the hazards each one answers, how strongly it is
 * recommended for them, and its edition. Their table is `precautions.yaml`.
 */
import type { HazardFrame, PaintForm } from "../classify/frame.ts";

/** 3 highly recommended, 2 recommended, 1 optional, 0 assigned to the class but for disposal alone. */
export const RECOMMENDATIONS = [0, 1, 2, 3] as const;
export type Recommendation = (typeof RECOMMENDATIONS)[number];

/** "P280", "P301+P310". */
export type PrecautionaryCode = string;

export interface PrecautionRow {
  readonly code: PrecautionaryCode;
  /** Class families, or single classes, that it answers; "any" is for general statements, which only fill what is left. Left out of a code that is never chosen here. */
  readonly answers?: Readonly<Record<string, Recommendation>> | undefined;
  /** Set when only one kind of buyer meets it on a label. */
  readonly buyer?: "public" | "trade" | undefined;
  /** Set when only some forms make sense of it: nobody breathes in a paste. */
  readonly forms?: readonly PaintForm[] | undefined;
  /** In the frame's current edition this code stands instead. */
  readonly replacedIn?: Readonly<Partial<Record<HazardFrame, PrecautionaryCode>>> | undefined;
  /** Set when only one frame has the code. */
  readonly frame?: HazardFrame | undefined;
}

/** The codes that can be chosen, in the order of a label. */
export function choosablePrecautions(rows: readonly PrecautionRow[]): PrecautionRow[] {
  return rows
    .filter(({ answers }) => answers !== undefined)
    .toSorted((one, other) => (one.code < other.code ? -1 : 1));
}

/** What is known of a code. @returns undefined for one that the table lacks. */
export function precaution(
  code: PrecautionaryCode,
  rows: readonly PrecautionRow[],
): PrecautionRow | undefined {
  return rows.find((row) => row.code === code);
}
