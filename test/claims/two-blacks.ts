import { figureIndex, type FigureIndex } from "../../lib/claims/figure-index.ts";
import { heldAnswer, type HeldAnswer } from "../../lib/claims/held-claims.ts";
import { recordRoots, type RootsOf } from "../../lib/claims/record-roots.ts";
import type { Records } from "../../lib/records/records.ts";
import { allSheets } from "../../lib/sheet/all-sheets.ts";
import { type RecordTexts } from "../support/content-folder.ts";
import { soundRecords } from "../support/sound-records.ts";

/** Two invented blacks, one with its oil index measured and one as a supplier states it. */
export const TWO_BLACKS: RecordTexts = {
  "workshop.yaml": "name: Test Workshop\nvehicle: linseed\n",
  "pigments/lamp-black.yaml": "name: Lamp black\nfamily: black\nhazards: []\n",
  "pigments/bone-black.yaml": "name: Bone black\nfamily: black\nhazards: []\n",
  "vehicles/linseed.yaml": "name: Linseed oil\nkind: oil\nhazards: []\n",
  "sources/supplier-paper.yaml": "citation: An invented supplier's paper\n",
  "colours/lamp-black.md": colour(
    "Lamp Black",
    "lamp-black",
    "oilIndexGPer100g: { value: 99, standing: measured, date: 2026-05-04 }",
  ),
  "colours/bone-black.md": colour(
    "Bone Black",
    "bone-black",
    "oilIndexGPer100g: { value: 60, standing: stated, source: supplier-paper }",
  ),
  "readings/lamp-black.csv": slopedReadings(0.02, 0.021),
  "readings/bone-black.csv": slopedReadings(0.042, 0.04),
};

function colour(name: string, pigment: string, more: string): string {
  return `---\nname: ${name}\npigments:\n  - { pigment: ${pigment} }\nmasstone: { reading: ${pigment}, column: masstone, scale: factor, geometry: "45/0" }\n${more}\n---\nNotes.\n`;
}

/** A CSV of readings, 400 to 700 nm in steps of 10, on a straight line between two reflectance factors. */
export function slopedReadings(from: number, to: number): string {
  return `nm,masstone\n${Array.from({ length: 31 }, (_, i) => `${400 + 10 * i},${(from + ((to - from) * i) / 30).toFixed(5)}`).join("\n")}\n`;
}

/** An answer with these claims, the first of them on line 5. */
export function answerOf(claims: readonly string[]): string {
  return `---\nquestion: Which is leaner?\nsummary: Bone black.\nclaims:\n${claims.map((claim) => `  - { ${claim} }\n`).join("")}---\nIt is.\n`;
}

export interface HeldWorkshop {
  readonly records: Records;
  readonly index: FigureIndex;
  readonly rootsOf: RootsOf;
  readonly held: readonly HeldAnswer[];
}

/** A workshop's answers held against its sheets. */
export function heldWorkshop(texts: RecordTexts): HeldWorkshop {
  const records = soundRecords(texts);
  const index = figureIndex(allSheets(records));
  const rootsOf = recordRoots(index, records);
  return {
    records,
    index,
    rootsOf,
    held: [...records.answers.values()].map((answer) =>
      heldAnswer(answer, index, rootsOf, records),
    ),
  };
}
