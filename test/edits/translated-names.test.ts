import { mkdtempSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, test } from "vitest";
import { workCacheOf, type WorkCache } from "../../lib/kept/work-cache.ts";
import { loadRecords } from "../../lib/records/load-records.ts";
import { allLanguages } from "../../lib/site/one-folder.ts";
import { siteOf } from "../../lib/site/site-of-records.ts";
import { contentFolder } from "../support/content-folder.ts";
import { IN_TWO_LANGUAGES } from "./whole-workshop.ts";
import { dataAt } from "../support/site-data.ts";

/** What the sheet of the red says in each language, out of a cache or without one. */
function sheets(content: string, home: string, cache?: WorkCache): string[] {
  const { records } = loadRecords(content, home);
  if (records === undefined) throw new Error("The workshop is refused");
  const languages = allLanguages(siteOf(records, records.newestDate, cache).site);
  const texts = languages.map((site) => String(dataAt(site, "colours/red/sheet.json")));
  for (const { keepSteps } of languages) keepSteps?.();
  return texts;
}

test("a let-down that comes moves the sheet in a language in which its pigment has another name", () => {
  const RED = IN_TWO_LANGUAGES["colours/red.md"] ?? "";
  const last = /^ {2}- .*massRatio: "1:20".*\n/m.exec(RED)?.[0] ?? "";
  const { content, home } = contentFolder({
    ...IN_TWO_LANGUAGES,
    "colours/red.md": RED.replace(last, ""),
  });
  process.env["XDG_STATE_HOME"] = mkdtempSync(join(inject("scratch"), "state-"));
  const cache = { ...workCacheOf(content), programPart: () => "of this test" };
  const before = sheets(content, home, cache);
  writeFileSync(join(content, "colours/red.md"), RED);
  const after = sheets(content, home, cache);
  expect(after).toEqual(sheets(content, home));
  expect(after[1]).not.toBe(before[1]);
  expect(after[1]).toContain("Selenid");
});
