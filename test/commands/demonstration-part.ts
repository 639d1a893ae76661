import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { RecordTexts } from "../support/content-folder.ts";

const WHITES = ["titanium-white", "lead-white", "zinc-white"];

const BLACK = "colours/lamp-black.md";
/** Of the black's let-downs in each white those that are kept: two tell all that the others do, and are fitted sooner. */
const LET_DOWN = /^ {2}- \{ white: .* massRatio: "1:(?!20"|100")\d+".*\n/gm;

/** A workshop of four colours out of the demonstration's records: three whites, and a black let down twice in each. */
export function fourColourWorkshop(): RecordTexts {
  const { [BLACK]: black = "", ...texts } = partOfDemonstration(["lamp-black", ...WHITES]);
  return { ...texts, [BLACK]: black.replace(LET_DOWN, "") };
}

/** Some colours of the demonstration, with their lots and all that they are made of and read by, but no photographs. */
export function partOfDemonstration(colours: readonly string[]): RecordTexts {
  const texts = new Map([["workshop.yaml", settingsFor(colours)]]);
  for (const { path, slug, text } of filesOf("colours"))
    if (colours.includes(slug))
      texts.set(path, text.replace(/^photographs:\n(?:[ -].*\n)+?(?=[\w-])/m, ""));
  for (const { path, text } of filesOf("lots"))
    if (colours.some((slug) => text.includes(`\ncolour: ${slug}\n`))) texts.set(path, text);
  for (const { path, text } of filesOf("sources")) texts.set(path, text);
  const named = [...texts.values()].join("\n");
  for (const folder of ["pigments", "vehicles", "readings"])
    for (const { path, slug, text } of filesOf(folder))
      if (new RegExp(`(?<![\\w-])${slug}(?![\\w-])`).test(named)) texts.set(path, text);
  return Object.fromEntries(texts);
}

/** Of the workshop's settings those that name a colour are cut to these: its whites are compared, where there are several. */
function settingsFor(colours: readonly string[]): string {
  const whites = WHITES.filter((slug) => colours.includes(slug));
  return readFileSync("content/workshop.yaml", "utf8")
    .replace(/^(?:leadingPair|firstQuestions):.*\n/gm, "")
    .replace(/^strengthReference: (\S+)\n/m, (line, slug: string) =>
      colours.includes(slug) ? line : "",
    )
    .replace(/^pairs:\n(?: .*\n)+/m, whites.length > 1 ? `pairs: [[${whites.join(", ")}]]\n` : "");
}

function filesOf(folder: string): { path: string; slug: string; text: string }[] {
  return readdirSync(join("content", folder)).map((file) => ({
    path: `${folder}/${file}`,
    slug: file.replace(/\.\w+$/, ""),
    text: readFileSync(join("content", folder, file), "utf8"),
  }));
}
