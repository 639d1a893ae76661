import { mkdtempSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, test } from "vitest";
import { formatDiagnostic } from "../../lib/diagnostics/diagnostic.ts";
import type { WorkCache } from "../../lib/kept/work-cache.ts";
import { letterWarnings } from "../../lib/site/letter-warnings.ts";
import { workedSite } from "../../lib/site/site-context.ts";
import { soundRecords } from "../support/sound-records.ts";

function warnings(
  workshop: string,
  colour: string,
  from: "letters" | "site" = "letters",
  cache?: WorkCache,
) {
  const records = soundRecords({
    "workshop.yaml": `name: ${workshop}\nvehicle: linseed\naddress: The Loft\n`,
    "vehicles/linseed.yaml": "name: Linseed oil\nkind: oil\nhazards: []\n",
    "pigments/earth.yaml": "name: Earth\nhazards: []\n",
    "colours/earth.md": `---\nname: ${colour}\npigments: [{ pigment: earth }]\noilIndexGPer100g: 50\n---\n`,
  });
  const site = workedSite(records, undefined, cache);
  const found = from === "letters" ? letterWarnings(records) : site.diagnostics;
  site.keepSteps();
  return found.map(formatDiagnostic).filter((line) => line.includes("print/missing-letter"));
}

test("European letters, Greek and Cyrillic are printed, and nothing is told of them", () => {
  expect(warnings("Ł\u00f3d\u017a & \u00d8rsted", "\u041e\u0445\u0440\u0430 \u03a9")).toEqual([]);
});

test("a letter of the workshop is told once, at the workshop's line and no colour's", () => {
  const told =
    'content/workshop.yaml:1:7 warning The fonts of sheets and cards on paper have no "\u9ed2" (U+9ED2): [?] is printed instead; pages on screen show it in a font of the reader\'s print/missing-letter';
  expect(warnings("Kuro \u9ed2\u9ed2", "Earth")).toEqual([told]);
  expect(warnings("Kuro \u9ed2\u9ed2", "Earth", "site")).toEqual([told]);
});

test("letters of a colour are told together, at its line", () => {
  expect(warnings("Loft", "\u571f \u8272")).toEqual([
    expect.stringMatching(
      /^content\/colours\/earth\.md:2:7 warning .*"\u571f" \(U\+571F\), "\u8272" \(U\+8272\)/,
    ),
  ]);
});

test("what was kept of a record is told at the line where it stands now, and no more once the letter has gone", () => {
  process.env["XDG_STATE_HOME"] = mkdtempSync(join(inject("scratch"), "state-"));
  const folder = join(mkdtempSync(join(inject("scratch"), "letters-")), "cache");
  const cache: WorkCache = { folder, keeps: true, programPart: (module) => `of ${module}` };
  const told = (colour: string): string[] => warnings("Loft", colour, "site", cache);
  expect(told("\u571f")).toEqual([expect.stringMatching(/^content\/colours\/earth\.md:2:7 /)]);
  expect(told(" \u571f")).toEqual([expect.stringMatching(/^content\/colours\/earth\.md:2:8 /)]);
  expect(told("Earth")).toEqual([]);
});
