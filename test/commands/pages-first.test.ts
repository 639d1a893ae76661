import { existsSync, mkdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { madeSite } from "../../lib/site/made-site.ts";
import type { OutputPages, PagesMade, SiteTask } from "../../lib/site/site-task.ts";
import { contentFolder, SMALLEST_WORKSHOP } from "../support/content-folder.ts";

const BLACK = "colours/lamp-black/index.html";
const ABOUT = "about/index.html";

test("pages that are wanted are made first, with all that they load, and each page is told once, after all are announced", async () => {
  const { home, content } = contentFolder(SMALLEST_WORKSHOP);
  const [dir, workshopDir] = [join(home, "site"), join(home, "workshop")];
  for (const folder of [dir, workshopDir]) mkdirSync(folder);
  const told: (PagesMade | "records")[] = [];
  const there: string[][] = [];
  let recorded: readonly string[] = [];
  const asked: OutputPages[] = [
    { site: [BLACK], workshop: ["next/index.html"] },
    // Wanted only once the first have come.
    { site: [BLACK, ABOUT], workshop: [] },
  ];
  const task: SiteTask = {
    contentDir: content,
    date: "2026-03-01",
    base: undefined,
    strict: false,
    claims: "error",
    dir,
    workshopDir,
    kind: "screen",
    earlierDir: dir,
    earlierWorkshopDir: workshopDir,
    since: undefined,
  };
  const cache = { folder: join(home, "cache"), keeps: false, programPart: () => undefined };
  await madeSite(task, cache, {
    complaints: () => undefined,
    progress: () => undefined,
    recorded: (folders) => {
      recorded = folders;
      told.push("records");
    },
    served: {
      wanted: async () => Promise.resolve(asked.shift() ?? { site: [], workshop: [] }),
      made: (pages) => {
        told.push(pages);
        there.push([BLACK, ABOUT].filter((path) => existsSync(join(dir, path))));
      },
    },
  });
  expect(recorded).toEqual(["colours/lamp-black/", "pigments/lamp-black/"]);
  const [first, ...outputs] = told.map((one) => (one === "records" ? one : [one.output, one.made]));
  expect(first).toBe("records");
  // Which pages there will be is told before any of them is made.
  expect(outputs.slice(0, 5)).toEqual([
    ["site", []],
    ["site", [BLACK]],
    ["workshop", []],
    ["workshop", ["next/index.html"]],
    ["site", [ABOUT]],
  ]);
  expect(there.slice(0, 5)).toEqual([[], [BLACK], [BLACK], [BLACK], [BLACK, ABOUT]]);
  const html = readFileSync(join(dir, BLACK), "utf8");
  const style = /assets\/styles\/site\.[0-9a-f]+\.css/.exec(html)?.[0] ?? "none";
  expect(existsSync(join(dir, style))).toBe(true);
  for (const output of ["site", "workshop"] as const) {
    const pages = told.flatMap((one) => (one !== "records" && one.output === output ? [one] : []));
    const made = pages.flatMap((one) => one.made);
    expect(made.toSorted()).toEqual([...(pages[0]?.all ?? [])].sort());
    expect(new Set(made).size).toBe(made.length);
  }
});
