import type { Geometry } from "../schema/terms.ts";

/** What a file tells of its geometry: one of the three, a sphere whose specular mode it keeps back, or another. */
export type FoundGeometry = Geometry | "d/8" | "other";

/**
 * Geometry from the words of a measurement file: "45/0", "0:45", "45°a:0°",
 * "di:8" and "de:8" (CIE 15: specular included, excluded), "d/8" with the mode
 * spelt out. The order of the two angles does not count.
 *
 * @returns undefined when the words tell nothing.
 */
export function foundGeometry(words: string): FoundGeometry | undefined {
  const said = words.slice(0, 200);
  const text = said
    .toLowerCase()
    .replace(/[°\s_]|deg(rees?)?/g, "")
    .replaceAll(":", "/");
  const sphere = /(?:^|[^a-z])d([ie]?)\/(\d+)/.exec(text) ?? /(?:^|\D)8\/d([ie]?)/.exec(text);
  if (sphere) {
    if ((sphere[2] ?? "8") !== "8") return "other";
    return sphereGeometry(
      `${sphere[1] === "i" ? "included" : sphere[1] === "e" ? "excluded" : ""} ${said}`,
    );
  }
  const angles = /(\d+)[a-z]*\/(\d+)/.exec(text);
  return angles ? angledGeometry(Number(angles[1]), Number(angles[2])) : undefined;
}

/** Lines of a preamble that speak of geometry: by their head, or since nothing else is written so. */
const OF_GEOMETRY =
  /geom|g\u00e9om|specular|specul|glanz|sp\u00e9culaire|especular|\bSC[IE]\b|\bd[ie]?\s*[/:]\s*8\b|\b8\u00b0?\s*[/:]\s*d[ie]?\b|\b45\u00b0?[a-z]?\s*[/:]\s*0\b|\b0\u00b0?\s*[/:]\s*45\b/i;

/** Geometry that the lines before a table tell of; undefined where none of them does. */
export function preambleGeometry(lines: readonly string[]): FoundGeometry | undefined {
  const words = lines
    .map((line) => line.slice(0, 200))
    .filter((line) => OF_GEOMETRY.test(line))
    .map((line) => line.replace(/^[^;,\t:=]*geom[^;,\t:=]*[;,\t:=]/i, ""))
    .join(" ");
  if (words.trim() === "") return undefined;
  const found = foundGeometry(words);
  // Only a sphere can shut the gloss out, and instruments that do it often say no more.
  return found ?? (sphereGeometry(words) === "d/8" ? undefined : sphereGeometry(words));
}

/**
 * Whether words of a file say that it was read between crossed polarisers, condition M3 of ISO 13655.
 * The names of the conditions are from memory.
 */
export function saysPolarised(words: string): boolean {
  return /\bM3(?![0-9])|polari[sz]|filter[_ ]?pol/i.test(words) && !/unpolari[sz]/i.test(words);
}

/** Geometry of an instrument with one angle of lighting and one of viewing [degree]. */
export function angledGeometry(one: number, other: number): FoundGeometry {
  return Math.min(one, other) === 0 && Math.max(one, other) === 45 ? "45/0" : "other";
}

/** Geometry of a sphere from what is said of the specular part; both or neither leave it open. */
export function sphereGeometry(words: string): FoundGeometry {
  const spaced = words.replaceAll("_", " ");
  const included = /includ|\bsci\b|\bspin\b/i.test(spaced);
  const excluded = /exclud|\bsce\b|\bspex\b/i.test(spaced);
  if (included === excluded) return "d/8";
  return included ? "d/8 included" : "d/8 excluded";
}

/** Whether a file's geometry rules out the one that a record declares. */
export function contradicts(found: FoundGeometry, declared: Geometry): boolean {
  return found === "d/8" ? declared === "45/0" : found !== declared;
}
