import { formatDiagnostic } from "../../lib/diagnostics/diagnostic.ts";
import { loadRecords } from "../../lib/records/load-records.ts";
import { claimsAs } from "../../lib/site/claim-severity.ts";
import { workedSite, type WorkedSite } from "../../lib/site/site-context.ts";
import { contentFolder, type RecordTexts } from "../support/content-folder.ts";

/** A workshop of four paints of which all that matters is typed: oil and gloss as measured, stated and estimated, one trial, one exposure. */
export const FOUR_PAINTS: RecordTexts = {
  "workshop.yaml": "name: Test Workshop\nsiteAddress: https://paints.example/\nmarkets: [EU]\n",
  "vehicles/oil.yaml": "name: Linseed oil\nkind: oil\noil: linseed\n",
  "pigments/soot.yaml":
    "name: Soot\ncolourIndexName: PBk 6\ndensityGPerCm3: 1.8\nhazards: []\ndate: 2026-01-04\n",
  "pigments/ore.yaml": "name: Ore\ncolourIndexName: PBk 11\ndensityGPerCm3: 4.8\nhazards: [H410]\n",
  "colours/soot-black.md": `---
name: Soot Black
pigments: [{ pigment: soot }]
family: black
vehicle: oil
oilIndexGPer100g: { value: 90, method: batch book, date: 2026-02-03 }
gloss60: { value: 8, method: ISO 2813, date: 2026-03-05 }
dryingTrials: [{ touchDryDays: { value: 8, standing: measured }, filmThicknessUm: 75, temperatureC: 20, date: 2026-03-02 }]
date: 2026-01-31
---
`,
  "colours/ore-black.md":
    "---\nname: Ore Black\npigments: [{ pigment: ore }]\nfamily: black\nvehicle: oil\noilIndexGPer100g: 33\ngloss60: { value: 70, method: ISO 2813, date: 2026-03-05 }\n---\n",
  "colours/guess-black.md":
    "---\nname: Guess Black\npigments: [{ pigment: soot }]\nfamily: black\nvehicle: oil\noilIndexGPer100g: { value: [80, 100], standing: estimated }\n---\n",
  "colours/bare-black.md":
    "---\nname: Bare Black\npigments: [{ pigment: soot }, { pigment: ore }]\nfamily: black\n---\n",
};

/** An answer whose claims are the lines given, from line 5 of its file. */
export function answerWith(
  claims: readonly string[],
  { body = "Because.", summary = "It is so.", further = "" } = {},
): string {
  return `---\nquestion: Is it so?\nsummary: "${summary}"\nclaims:\n${claims.map((claim) => `  - ${claim}\n`).join("")}${further}---\n${body}\n`;
}

export interface Answered {
  /** Complaints as a command prints them. */
  readonly lines: readonly string[];
  readonly worked?: WorkedSite;
}

/** What a workshop with one answer is told, claims as errors or as warnings. */
export function answered(
  answer: string,
  more: RecordTexts = {},
  severity: "error" | "warning" = "error",
): Answered {
  const { content, home } = contentFolder({ ...FOUR_PAINTS, "answers/so.md": answer, ...more });
  const { records, diagnostics } = loadRecords(content, home);
  if (records === undefined) return { lines: diagnostics.map(formatDiagnostic) };
  const worked = workedSite(records, undefined);
  return {
    lines: claimsAs(severity, worked.diagnostics)
      .map(formatDiagnostic)
      .filter((line) => line.startsWith("content/answers/")),
    worked,
  };
}
