/**
 * Names of old pigments that a paint bears, held against the Colour Index names of what is in it:
 * "madder" on a tube of synthetic alizarin says more than the tube holds.
 *
 * @source astm-d4302 : a paint in which another pigment stands for the one named bears the word "hue" (partly read); which
 *   name goes with which pigment is recalled (memory-permanence).
 */
import type { Complaint } from "../diagnostics/complaint.ts";

export interface TraditionalName {
  /** Word of a paint's name, lower case. */
  readonly word: string;
  /** Pigments that bear it by right. */
  readonly colourIndexNames: readonly string[];
  /** What a common stand-in is called by right, by its Colour Index name. */
  readonly standIns: Readonly<Record<string, string>>;
}

export const TRADITIONAL_NAMES: readonly TraditionalName[] = [
  {
    word: "madder",
    colourIndexNames: ["NR 9", "NR 8"],
    standIns: { "PR 83": "alizarin crimson", "PV 19": "quinacridone rose" },
  },
  { word: "vermilion", colourIndexNames: ["PR 106"], standIns: { "PR 108": "cadmium red" } },
  { word: "carmine", colourIndexNames: ["NR 4"], standIns: { "PR 83": "alizarin crimson" } },
  { word: "gamboge", colourIndexNames: ["NY 24"], standIns: {} },
  {
    word: "indigo",
    colourIndexNames: ["NB 1", "NB 2", "PB 66"],
    standIns: { "PB 60": "indanthrone blue" },
  },
  { word: "aureolin", colourIndexNames: ["PY 40"], standIns: {} },
  { word: "flake white", colourIndexNames: ["PW 1"], standIns: { "PW 6": "titanium white" } },
  { word: "lead white", colourIndexNames: ["PW 1"], standIns: { "PW 6": "titanium white" } },
  { word: "naples yellow", colourIndexNames: ["PY 41"], standIns: {} },
  { word: "emerald green", colourIndexNames: ["PG 21"], standIns: {} },
  {
    word: "viridian",
    colourIndexNames: ["PG 18"],
    standIns: { "PG 7": "phthalocyanine green" },
  },
  {
    word: "cadmium",
    colourIndexNames: ["PY 35", "PY 37", "PO 20", "PR 108", "PO 23", "PR 113"],
    standIns: {},
  },
];

/**
 * @param name of the paint.
 * @param colourIndexNames of its pigments; empty or with gaps where some are not recorded.
 * @returns a warning when the name speaks of a pigment that the paint holds nothing of; undefined when they agree, when a
 *   pigment's Colour Index name is not recorded, or when the name says "hue".
 * @example nameComplaint("Madder Lake", ["PR 83"])?.hint // "PR 83 is alizarin crimson; with another pigment the name takes the word hue"
 */
export function nameComplaint(
  name: string,
  colourIndexNames: readonly (string | undefined)[],
): Complaint | undefined {
  const known = colourIndexNames.flatMap((each) => each?.replace(/:\d+$/, "") ?? []);
  if (known.length < colourIndexNames.length || known.length === 0 || holds(name, "hue"))
    return undefined;
  const claimed = TRADITIONAL_NAMES.find(
    (row) => holds(name, row.word) && !row.colourIndexNames.some((right) => known.includes(right)),
  );
  if (claimed === undefined) return undefined;
  const standIn = known.flatMap((each) =>
    claimed.standIns[each] === undefined ? [] : [`${each} is ${claimed.standIns[each]}`],
  )[0];
  const hue = "with another pigment the name takes the word hue";
  return {
    severity: "warning",
    rule: "permanence/name-and-pigment",
    message: `${name} names a paint of ${claimed.colourIndexNames.join(" or ")}, and this one is made of ${known.join(", ")}`,
    actual: `${name} of ${known.join(", ")}`,
    expected: `${claimed.colourIndexNames.join(" or ")} in a paint called ${claimed.word}`,
    source: "astm-d4302",
    hint: standIn === undefined ? hue : `${standIn}; ${hue}`,
  };
}

function holds(text: string, word: string): boolean {
  return new RegExp(`(?<!\\p{L})${word}(?!\\p{L})`, "iu").test(text);
}
