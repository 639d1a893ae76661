/** What a pigment counts among: extenders and earths by what they are, the rest by the Colour Index name. */
export const HUE_FAMILIES = [
  "white",
  "black",
  "earth",
  "brown",
  "red",
  "orange",
  "yellow",
  "green",
  "blue",
  "violet",
  "extender",
] as const;
export type HueFamily = (typeof HUE_FAMILIES)[number];

export interface HueFamilyRow {
  /** The letters of a Colour Index name after P or N, or a class of pigments.csv. */
  readonly of: string;
  readonly family: HueFamily;
}

/**
 * @param pigmentClass of pigments.csv; it counts before the name.
 * @returns undefined for a name that no row answers to: M is of metals, which are no hue.
 */
export function hueFamily(
  rows: readonly HueFamilyRow[],
  colourIndexName: string,
  pigmentClass: string | undefined,
): HueFamily | undefined {
  const letters = /^[PN](Bk|Br|[A-Z]) \d/.exec(colourIndexName)?.[1];
  const familyOf = (wanted: string | undefined): HueFamily | undefined =>
    rows.find(({ of }) => of === wanted)?.family;
  return familyOf(pigmentClass) ?? familyOf(letters);
}
