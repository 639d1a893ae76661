import { mkdtempSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, test } from "vitest";
import { keptIfAny, type Keep } from "../../lib/kept/kept-result.ts";
import type { WorkCache } from "../../lib/kept/work-cache.ts";
import { loadRecords } from "../../lib/records/load-records.ts";
import { workAhead } from "../../lib/site/worked-ahead.ts";
import { allFits } from "../../lib/sheet/all-sheets.ts";
import { soundWorkshops } from "../fuzz/sound-workshops.ts";
import { contentFolder } from "../support/content-folder.ts";

const COLOURS = ["bismuth-yellow", "cerulean-blue", "green-earth", "titanium-white"];

test("fits and theory that were worked out ahead are found kept by whoever asks for them", () => {
  const texts = soundWorkshops().find((workshop) =>
    COLOURS.every((slug) => `colours/${slug}.md` in workshop),
  );
  const { content, home } = contentFolder(texts ?? {});
  const { records } = loadRecords(content, home);
  if (records === undefined) throw new Error("Unexpected faults");
  const cache: WorkCache = {
    folder: join(mkdtempSync(join(inject("scratch"), "ahead-")), "cache"),
    keeps: true,
    programPart: (module) => `part of ${module}`,
  };
  workAhead(records, cache);
  const fromCache: Keep = (origin, made) => {
    const found = keptIfAny(cache, origin);
    if (found === undefined) throw new Error(`Nothing is kept of ${origin.modules.join()}`);
    return found as ReturnType<typeof made>;
  };
  expect(allFits(records, fromCache)).toEqual(allFits(records));
  expect(readdirSync(cache.folder)).toContainEqual(expect.stringMatching(/^theory-white-/));
  workAhead(records, { ...cache, folder: join(cache.folder, "other"), keeps: false });
  expect(readdirSync(cache.folder)).not.toContain("other");
});
