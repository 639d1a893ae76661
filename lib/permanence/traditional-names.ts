/**
 * Names of old pigments that a paint bears, held against the Colour Index names of what is in it:
 * "madder" on a tube of synthetic alizarin says more than the tube holds.
 *
 * @source astm-d4302 : a paint in which another pigment stands for the one named bears the word "hue" (partly read)
 */
import { parentName } from "../quantities/colour-index-name.ts";
import type { Complaint } from "../diagnostics/complaint.ts";
import { remembered } from "../quantities/remembered.ts";

/** A row of `traditional-names.yaml`. */
export interface TraditionalName {
  /** Word of a paint's name, lower case. */
  readonly word: string;
  /** Colour Index names of the pigments that bear it by right. */
  readonly pigments: readonly string[];
  /** What a common stand-in is called by right, by its Colour Index name. */
  readonly standIns?: Readonly<Record<string, string>> | undefined;
}

const wholeWord = (word: string): RegExp => new RegExp(`(?<!\\p{L})${word}(?!\\p{L})`, "iu");
const HUE = wholeWord("hue");
const inNames = remembered(({ word }: TraditionalName) => wholeWord(word));

/**
 * @param name of the paint.
 * @param colourIndexNames of its pigments; empty or with gaps where some are not recorded.
 * @param rows of `traditional-names.yaml`.
 * @returns a warning when the name speaks of a pigment that the paint holds nothing of; undefined when they agree, when a
 *   pigment's Colour Index name is not recorded, or when the name says "hue".
 * @example nameComplaint("Madder Lake", ["PR 83"], rows)?.hint // "PR 83 is alizarin crimson; with another pigment the name takes the word hue"
 */
export function nameComplaint(
  name: string,
  colourIndexNames: readonly (string | undefined)[],
  rows: readonly TraditionalName[],
): Complaint | undefined {
  const known = colourIndexNames.flatMap((each) => (each === undefined ? [] : parentName(each)));
  if (known.length < colourIndexNames.length || known.length === 0 || HUE.test(name))
    return undefined;
  const claimed = rows.find(
    (row) => !row.pigments.some((right) => known.includes(right)) && inNames(row).test(name),
  );
  if (claimed === undefined) return undefined;
  const standIn = known.flatMap((each) => {
    const called = claimed.standIns?.[each];
    return called === undefined ? [] : [`${each} is ${called}`];
  })[0];
  const hue = "with another pigment the name takes the word hue";
  return {
    severity: "warning",
    rule: "permanence/name-and-pigment",
    message: `${name} names a paint of ${claimed.pigments.join(" or ")}, and this one is made of ${known.join(", ")}`,
    actual: `${name} of ${known.join(", ")}`,
    expected: `${claimed.pigments.join(" or ")} in a paint called ${claimed.word}`,
    source: "astm-d4302",
    hint: standIn === undefined ? hue : `${standIn}; ${hue}`,
  };
}
