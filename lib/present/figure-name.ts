import type { Sheet } from "../sheet/sheet.ts";
import type { FigureEntry } from "../sheet/figure-entries.ts";
import type { Words } from "../words/words.ts";

/** Figures of which a sheet has one alone in its place, so that saying where would say nothing. */
const UNLIKE: ReadonlySet<string> = new Set([
  "munsell",
  "munsellHue",
  "munsellValue",
  "munsellChroma",
  "nbsName",
  "lamplight",
  "glossExcludedL",
  "srgb",
  "displayP3",
  "oklch",
]);

/**
 * What a figure is, in words that tell it from its likes on the same sheet:
 * "b* in titanium white at L* 50", "Touch dry in lead white", "Density of the pigment, lamp black".
 */
export function figureName(
  { path, row }: Pick<FigureEntry, "path" | "row">,
  sheet: Sheet,
  words: Words,
): string {
  const name = words.figures[row.word];
  const { place } = words.pages.answers;
  const keys = path.split(".");
  const where: string[] = [];
  const after = (key: string): string | undefined =>
    keys.includes(key) ? keys[keys.indexOf(key) + 1] : undefined;
  const white = keys[0] === "tints" ? keys[1] : after("inWhites");
  if (white !== undefined)
    where.push(
      place.inWhite(
        sheet.tints.find((tint) => tint.white.slug === white)?.white.name ??
          white.replaceAll("-", " "),
      ),
    );
  const level = after("atL");
  if (level !== undefined && !UNLIKE.has(row.word)) where.push(place.atL(level));
  const ratio = /\.steps\.(.+?)\.(?=[a-zA-Z])/.exec(`.${path}`)?.[1];
  if (ratio !== undefined) where.push(place.at(ratio));
  if (keys[0] === "notations" && !UNLIKE.has(row.word)) where.push(place.masstone);
  const viewing = after("lab") ?? after("xyz");
  if (viewing !== undefined && viewing !== "D65/10")
    where.push(place.under(words.pages.notations.viewings[viewing] ?? viewing));
  const pigment =
    keys[0] === "pigments" ? sheet.pigments.find(({ slug }) => slug === keys[1]) : undefined;
  if (pigment !== undefined && sheet.pigments.length > 1) where.push(place.of(pigment.name));
  const form = after("forms");
  if (form !== undefined) where.push(place.form(form));
  // "White to L* 50, tube to tube" would run into what follows.
  return `${name}${where.length > 0 && name.includes(",") ? "," : ""}${where.map((part) => ` ${part}`).join("")}`;
}
