import { mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { inject } from "vitest";

/** Records by their path in the content folder: `colours/lamp-black.md`. */
export type RecordTexts = Readonly<Record<string, string>>;

/**
 * Write records into a content folder of their own, made up for one test, in the scratch folder.
 * @returns the folder, and the one it stands in, which complaints are printed from: `content/colours/x.md:1:1`.
 */
export function contentFolder(files: RecordTexts): {
  readonly content: string;
  readonly home: string;
} {
  const home = mkdtempSync(join(inject("scratch"), "workshop-"));
  const content = join(home, "content");
  mkdirSync(content);
  for (const [path, text] of Object.entries(files)) {
    const file = join(content, path);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, text);
  }
  return { content, home };
}

/** A CSV of readings, 400 to 700 nm in steps of 10, flat: the same reflectance factor at each. */
export function flatReadings(columns: Readonly<Record<string, number>>): string {
  const values = Object.values(columns).join(",");
  return `${[`nm,${Object.keys(columns).join(",")}`, ...Array.from({ length: 31 }, (_, i) => `${400 + 10 * i},${values}`)].join("\n")}\n`;
}

/** The least that builds: a workshop, one pigment, one colour and one CSV. */
export const SMALLEST_WORKSHOP = {
  "workshop.yaml": "name: Test Workshop\n",
  "pigments/lamp-black.yaml": "name: Lamp black\n",
  "colours/lamp-black.md": `---
name: Lamp Black
pigments:
  - { pigment: lamp-black }
masstone: { reading: lamp-black, column: masstone, scale: factor, geometry: "45/0" }
---
Notes.
`,
  "readings/lamp-black.csv": flatReadings({ masstone: 0.02 }),
} as const satisfies RecordTexts;
