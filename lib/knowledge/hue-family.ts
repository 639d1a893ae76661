/** What a pigment counts among, by its Colour Index name; extenders and earths by what they are. */
export type HueFamily =
  | "white"
  | "black"
  | "brown"
  | "earth"
  | "red"
  | "orange"
  | "yellow"
  | "green"
  | "blue"
  | "violet"
  | "extender";

/** By the letters after P or N; M is of metals, which are no hue. */
const BY_LETTERS: Readonly<Record<string, HueFamily>> = {
  W: "white",
  Bk: "black",
  Br: "brown",
  R: "red",
  O: "orange",
  Y: "yellow",
  G: "green",
  B: "blue",
  V: "violet",
};

const EXTENDERS: ReadonlySet<string> = new Set([
  "chalk",
  "china clay",
  "mica",
  "barium sulphate",
  "alumina hydrate",
  "gypsum",
  "talc",
  "silica",
]);
const EARTHS: ReadonlySet<string> = new Set([
  "brown earth",
  "yellow earth",
  "red earth",
  "green earth",
]);

/**
 * @param pigmentClass of pigments.csv.
 * @returns undefined for a name that is none of the Colour Index's.
 */
export function hueFamily(
  colourIndexName: string,
  pigmentClass: string | undefined,
): HueFamily | undefined {
  if (pigmentClass !== undefined && EXTENDERS.has(pigmentClass)) return "extender";
  if (pigmentClass !== undefined && EARTHS.has(pigmentClass)) return "earth";
  const letters = /^[PN](Bk|Br|[A-Z]) \d/.exec(colourIndexName)?.[1];
  return letters === undefined ? undefined : BY_LETTERS[letters];
}
