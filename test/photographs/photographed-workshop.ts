/** A workshop with one colour and whatever photographs a test lays into its folder. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { formatDiagnostic } from "../../lib/diagnostics/diagnostic.ts";
import { withPhotographs } from "../../lib/photographs/taken-photographs.ts";
import { loadRecords } from "../../lib/records/load-records.ts";
import type { Records } from "../../lib/records/records.ts";
import { contentFolder } from "../support/content-folder.ts";

export const TEXTS = {
  "workshop.yaml": "name: Saltreach Colourworks\n",
  "pigments/bone-black.yaml": "name: Bone black\ncolourIndexName: PBk 9\n",
};

export function colourText(photographs: string): string {
  return `---\nname: Bone Black\npigments: [{ pigment: bone-black }]\n${photographs}---\nNotes.\n`;
}

/** Its records with pictures, and what is complained of. */
export async function photographedWorkshop(
  texts: Readonly<Record<string, string>>,
  pictures: Readonly<Record<string, Uint8Array>>,
): Promise<{ readonly records: Records | undefined; readonly told: readonly string[] }> {
  const { content, home } = contentFolder({ ...TEXTS, ...texts });
  mkdirSync(join(content, "photographs"), { recursive: true });
  for (const [name, bytes] of Object.entries(pictures))
    writeFileSync(join(content, "photographs", name), bytes);
  const { records, diagnostics } = await withPhotographs(
    loadRecords(content, home),
    undefined,
    "pictures, too",
  );
  return { records, told: diagnostics.map(formatDiagnostic) };
}
