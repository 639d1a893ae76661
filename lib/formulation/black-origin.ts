/**
 * Carbon blacks by origin: which Colour Index generic name an origin goes with.
 * PBk 6 and PBk 7 share a CAS number, so the origin alone parts them.
 *
 * @source memory-formulation
 */
import type { Complaint } from "../diagnostics/complaint.ts";

export interface BlackOrigin {
  readonly colourIndexName: string;
  readonly called: string;
  /** Words of an origin, lower case, that say so. */
  readonly words: readonly string[];
}

export const BLACK_ORIGINS: readonly BlackOrigin[] = [
  {
    colourIndexName: "PBk 6",
    called: "lamp black",
    words: ["lamp", "burnt oil", "burned oil", "burning oil", "oil flame", "soot of oil"],
  },
  {
    colourIndexName: "PBk 7",
    called: "carbon black",
    words: [
      "furnace",
      "thermal black",
      "thermal process",
      "natural gas",
      "channel black",
      "acetylene",
    ],
  },
  {
    colourIndexName: "PBk 8",
    called: "vine or wood black",
    words: ["vine", "charcoal", "charred wood", "fruit stone", "peach stone"],
  },
  { colourIndexName: "PBk 9", called: "bone black", words: ["bone", "ivory", "horn"] },
  { colourIndexName: "PBk 10", called: "graphite", words: ["graphite", "plumbago"] },
];

/**
 * @param origin free text of the record.
 * @returns a warning when the origin speaks of other carbons than the name and
 *   not of its own; undefined when they agree, when the origin says nothing, or
 *   when the name is no carbon of the table.
 * @example originComplaint("PBk 6", "made from natural gas in a furnace")?.hint // "carbon black is PBk 7"
 */
export function originComplaint(colourIndexName: string, origin: string): Complaint | undefined {
  const named = BLACK_ORIGINS.find((row) => row.colourIndexName === colourIndexName);
  if (named === undefined) return undefined;
  const spokenOf = BLACK_ORIGINS.filter(({ words }) =>
    words.some((word) => holdsWord(origin, word)),
  );
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
