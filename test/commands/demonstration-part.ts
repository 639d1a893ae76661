import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { RecordTexts } from "../support/content-folder.ts";

const COLOURS = ["lamp-black", "lead-white", "titanium-white", "zinc-white"];

/** A workshop of four colours out of the demonstration's records: three whites, and a black let down in each. */
export function fourColourWorkshop(): RecordTexts {
  const paths = [
    "workshop.yaml",
    ...COLOURS.map((slug) => `colours/${slug}.md`),
    ...readdirSync("content/lots")
      .map((file) => `lots/${file}`)
      .filter((path) =>
        COLOURS.some((slug) =>
          readFileSync(join("content", path), "utf8").includes(`\ncolour: ${slug}\n`),
        ),
      ),
    ...["pigments", "vehicles", "readings", "sources"].flatMap((folder) =>
      readdirSync(join("content", folder)).map((file) => `${folder}/${file}`),
    ),
  ];
  // Its leading pair and most of its pairs are not among the four.
  return Object.fromEntries(
    paths.map((path) => [
      path,
      readFileSync(join("content", path), "utf8")
        .replace(/^leadingPair:.*\n/m, "")
        .replace(/^pairs:\n(?: .*\n)+/m, "pairs: [[titanium-white, lead-white, zinc-white]]\n"),
    ]),
  );
}
