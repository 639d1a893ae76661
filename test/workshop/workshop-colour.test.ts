import { expect, test } from "vitest";
import { siteOf } from "../../lib/site/site-of-records.ts";
import { SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { soundRecords } from "../support/sound-records.ts";

test.each([
  ["en", "Not in the records."],
  ["fr", "Pas dans les relevés."],
  ["de", "Nicht in den Aufzeichnungen."],
  ["es", "No está en los registros."],
])("in %s the workshop is told in its own language why a figure is missing", (language, reason) => {
  const records = soundRecords({
    ...SMALLEST_WORKSHOP,
    "workshop.yaml": `name: Test Workshop\npageLanguages: [${language}]\n`,
  });
  const page = siteOf(records, undefined)
    .workshop({ isPrinted: false, printedCards: undefined })
    .pages.find(({ path }) => path === "colours/lamp-black/index.html");
  const told = JSON.stringify(page?.view);
  expect(told).toContain(JSON.stringify({ text: reason }));
  expect(told).not.toContain('"not in the records"');
});
