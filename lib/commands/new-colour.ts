import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { CommandOptions } from "./command-line.ts";

/** Write a commented starter record for a colour; never over one that is there. */
export function newColour({ contentDir }: CommandOptions, words: readonly string[]): number {
  const [kind, name, ...rest] = words;
  if (kind !== "colour" || name === undefined || rest.length > 0)
    return complaint('A new colour is written by: mullstone new colour "Name"');
  const slug = slugOf(name);
  if (slug === "")
    return complaint(`The name "${name}" has no letters or digits, and no file can be called so`);
  if (!existsSync(join(contentDir, "workshop.yaml")))
    return complaint(`The content folder ${contentDir} has no workshop.yaml`);
  const folder = join(contentDir, "colours");
  const file = join(folder, `${slug}.md`);
  try {
    mkdirSync(folder, { recursive: true });
    writeFileSync(file, starterRecord(name), { flag: "wx" });
  } catch (error) {
    const there = (error as NodeJS.ErrnoException).code === "EEXIST";
    return complaint(
      there
        ? `${file} is there already, and was left as it is`
        : `${file} can't be written: ${String(error)}`,
    );
  }
  process.stdout.write(`${file}\n`);
  return 0;
}

function slugOf(name: string): string {
  return name
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .slice(0, 80)
    .replace(/^-|-$/g, "");
}

function complaint(sentence: string): number {
  process.stderr.write(`${sentence}\n`);
  return 1;
}

/** All that a colour can say, as comments; only its name is filled in. */
function starterRecord(name: string): string {
  return `---
name: ${JSON.stringify(name)}
# The least a colour needs: which pigments, by the file names in pigments/.
# Parts by mass of dry pigment, of all pigments or of none.
pigments:
  - pigment: CHANGE-ME
    # parts: 1

# vehicle: linseed-oil          # a file name in vehicles/
# dispersion: mulled            # mulled | milled
# oilIndexGPer100g: { value: 60, method: "weighed on the slab", date: 2026-01-31, standing: measured }
# gloss60: { value: 45, method: "ISO 2813", standing: measured }

# What colour the masstone has, in one of three ways:
# masstone: { reading: my-file, column: masstone, scale: factor, geometry: "d/8 excluded" }
# masstone: { lab: [24.1, 0.2, -0.6], illuminant: D65, observer: 10, geometry: "d/8 excluded" }
# masstone: { munsell: "N 2/" }

# Let-downs, colour to white by mass; ratioKind says whether pigment or paint was weighed:
# tints:
#   - { white: titanium-white, massRatio: "1:20", ratioKind: paint, reading: my-file, column: "1:20", scale: factor, geometry: "d/8 excluded" }

# dryingTrials:
#   - { touchDryDays: 6, filmThicknessUm: 75, temperatureC: 20, humidityPercent: 50, date: 2026-01-31 }
# exposures:
#   - { deltaEab: 2.1, form: tint, standard: "after ASTM D4303", exposure: "south window, under glass, 6 months", date: 2026-01-31 }
---
Notes for the sheet, in Markdown.
`;
}
