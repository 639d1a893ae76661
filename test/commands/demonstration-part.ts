import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { RecordTexts } from "../support/content-folder.ts";

/** A workshop of four colours out of the demonstration's records: three whites, and a black let down in each. */
export function fourColourWorkshop(): RecordTexts {
  return partOfDemonstration(["lamp-black", "lead-white", "titanium-white", "zinc-white"]);
}

/** Some colours of the demonstration, with their lots and all that they are made of and read by, but no photographs. */
export function partOfDemonstration(colours: readonly string[]): RecordTexts {
  const texts = new Map<string, string>();
  const add = (path: string): void => {
    texts.set(path, readFileSync(join("content", path), "utf8"));
  };
  add("workshop.yaml");
  for (const slug of colours) add(`colours/${slug}.md`);
  for (const [path, text] of texts)
    texts.set(path, text.replace(/^photographs:\n(?:[ -].*\n)+?(?=[\w-])/m, ""));
  for (const lot of filesOf("lots"))
    if (colours.some((slug) => lot.text.includes(`\ncolour: ${slug}\n`))) add(lot.path);
  for (const { path } of filesOf("sources")) add(path);
  const named = [...texts.values()].join("\n");
  for (const folder of ["pigments", "vehicles", "readings"])
    for (const { path, slug } of filesOf(folder))
      if (new RegExp(`(?<![\\w-])${slug}(?![\\w-])`).test(named)) add(path);
  // Its leading pair and most of its pairs are not among them.
  texts.set(
    "workshop.yaml",
    (texts.get("workshop.yaml") ?? "")
      .replace(/^leadingPair:.*\n/m, "")
      .replace(/^pairs:\n(?: .*\n)+/m, "pairs: [[titanium-white, lead-white, zinc-white]]\n"),
  );
  return Object.fromEntries(texts);
}

function filesOf(folder: string): { path: string; slug: string; text: string }[] {
  return readdirSync(join("content", folder)).map((file) => ({
    path: `${folder}/${file}`,
    slug: file.replace(/\.\w+$/, ""),
    text: readFileSync(join("content", folder, file), "utf8"),
  }));
}
