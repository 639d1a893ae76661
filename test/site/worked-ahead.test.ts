import { mkdtempSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, test } from "vitest";
import { keptIfAny, type Keep } from "../../lib/kept/kept-result.ts";
import type { WorkCache } from "../../lib/kept/work-cache.ts";
import { rangeAhead, workedSite } from "../../lib/site/site-context.ts";
import { workAhead } from "../../lib/site/worked-ahead.ts";
import type { Records } from "../../lib/records/records.ts";
import { allFits } from "../../lib/sheet/all-sheets.ts";
import { soundWorkshops } from "../fuzz/sound-workshops.ts";
import { soundRecords } from "../support/sound-records.ts";

const COLOURS = ["bismuth-yellow", "cerulean-blue", "green-earth", "titanium-white"];

/** Each by its inode: one that is made again is another. */
function keptFiles({ folder }: WorkCache): string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.startsWith("results"))
    .map((name) => `${name} ${statSync(join(folder, name)).ino}`)
    .sort();
}

function emptyCache(): WorkCache {
  return {
    folder: join(mkdtempSync(join(inject("scratch"), "ahead-")), "cache"),
    keeps: true,
    programPart: (module) => `part of ${module}`,
  };
}

function fewColours(): Records {
  const texts = soundWorkshops().find((workshop) =>
    COLOURS.every((slug) => `colours/${slug}.md` in workshop),
  );
  return soundRecords(texts ?? {});
}

test("a colour that is new is so for the build that worked it out ahead, and not for the next", async () => {
  const [records, cache] = [fewColours(), emptyCache()];
  await workAhead(records, cache);
  const newIn = (build: WorkCache): string[] =>
    COLOURS.filter((slug) =>
      workedSite(records, undefined, build).steps?.isAnother(`records/colours/${slug}`),
    );
  expect(newIn(cache)).toEqual(COLOURS);
  expect(newIn({ ...cache })).toEqual([]);
});

test("what was worked out ahead is found kept by whoever asks for it", async () => {
  const [records, cache] = [fewColours(), emptyCache()];
  await workAhead(records, cache);
  const fromCache: Keep = (origin, made) => {
    const found = keptIfAny(cache, origin);
    if (found === undefined) throw new Error(`Nothing is kept of ${origin.modules.join()}`);
    return found as ReturnType<typeof made>;
  };
  expect(allFits(records, fromCache)).toEqual(allFits(records));
  expect(readdirSync(cache.folder)).toContainEqual(expect.stringMatching(/^theory-white-/));
  const before = keptFiles(cache);
  expect(before.length).toBeGreaterThan(COLOURS.length);
  rangeAhead(records, cache);
  expect(keptFiles(cache)).toEqual(before);
  await workAhead(records, { ...cache, folder: join(cache.folder, "other"), keeps: false });
  expect(readdirSync(cache.folder)).not.toContain("other");
});
