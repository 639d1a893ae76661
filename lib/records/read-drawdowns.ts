import { given } from "../quantities/given.ts";
import type { ReadColour, Reading } from "./records.ts";
import type { RecordPath } from "./yaml-record.ts";

/** A drawdown as it was read, and where its record gives it. */
export interface ReadDrawdown {
  readonly path: RecordPath;
  /** "the film of 50 um over white". */
  readonly as: string;
  readonly reading: Reading;
}

/** Masstone, let-downs and films of a paint, as far as they were read. @param above where in the record they stand. */
export function readDrawdowns(
  { masstone, tints = [], films = [] }: Partial<Pick<ReadColour, "masstone" | "tints" | "films">>,
  above: RecordPath = [],
): ReadDrawdown[] {
  return given([
    masstone && { path: [...above, "masstone"], as: "the masstone", reading: masstone },
    ...tints.map(({ reading, massRatio, white }, i) => ({
      path: [...above, "tints", i],
      as: `the let-down ${massRatio} in ${white}`,
      reading,
    })),
    ...films.map(({ reading, ground, filmThicknessUm }, i) => ({
      path: [...above, "films", i],
      as: `the film of ${filmThicknessUm} um over ${ground}`,
      reading,
    })),
  ]);
}

/** The same at the beginning of a sentence. */
export function capitalised(as: string): string {
  return `${as.charAt(0).toUpperCase()}${as.slice(1)}`;
}
