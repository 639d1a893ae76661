/**
 * Carbon blacks by origin: which Colour Index generic name an origin goes with.
 * PBk 6 and PBk 7 share a CAS number, so the origin alone parts them.
 */
import type { Complaint } from "../diagnostics/complaint.ts";

/** A row of `black-origin.csv`. */
export interface BlackOrigin {
  readonly colourIndexName: string;
  readonly called: string;
  /** Words of an origin, lower case, that say so. */
  readonly words: readonly string[];
}

/**
 * @param origin free text of the record.
 * @param blacks rows of the table.
 * @returns a warning when the origin speaks of other carbons than the name and
 *   not of its own; undefined when they agree, when the origin says nothing, or
 *   when the name is no carbon of the table.
 * @example originComplaint("PBk 6", "made from natural gas in a furnace", rows)?.hint // "carbon black is PBk 7"
 */
export function originComplaint(
  colourIndexName: string,
  origin: string,
  blacks: readonly BlackOrigin[],
): Complaint | undefined {
  const named = blacks.find((row) => row.colourIndexName === colourIndexName);
  if (named === undefined) return undefined;
  const spokenOf = blacks.filter(({ words }) => words.some((word) => holdsWord(origin, word)));
  const [other] = spokenOf;
  if (other === undefined || spokenOf.includes(named)) return undefined;
  return {
    severity: "warning",
    rule: "formulation/origin-and-name",
    message: `The origin of ${colourIndexName}, which is ${named.called}, speaks of ${other.called}`,
    actual: origin,
    expected: named.words.slice(0, 2).join(" or "),
    source: "memory-formulation",
    hint: `${other.called} is ${other.colourIndexName}`,
  };
}

/** Whole words alone, so that no "horn" is found in "thorn"; an s may follow. */
function holdsWord(text: string, word: string): boolean {
  return new RegExp(`(?<!\\p{L})${word}s?(?!\\p{L})`, "iu").test(text);
}
