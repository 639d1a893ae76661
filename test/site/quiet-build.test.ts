import { readFileSync } from "node:fs";
import { performance } from "node:perf_hooks";
import { join } from "node:path";
import { afterEach, expect, test, vi } from "vitest";
import { loadRecords } from "../../lib/records/load-records.ts";
import { pageAt } from "../../lib/site/page-entry.ts";
import type { Site } from "../../lib/site/site.ts";
import { siteOf } from "../../lib/site/site-of-records.ts";
import { writeSite } from "../../lib/site/write-site.ts";
import { contentFolder, SMALLEST_WORKSHOP } from "../support/content-folder.ts";

afterEach(() => {
  vi.restoreAllMocks();
});

test("a busy machine, on which what finishes a page takes long, is told nothing of that", async () => {
  const { content, home } = contentFolder(SMALLEST_WORKSHOP);
  const { records } = loadRecords(content, home);
  if (records === undefined) throw new Error("Unexpected faults in the smallest workshop");
  const { site } = siteOf(records, undefined);
  const few = site.pages.length;
  // Enough of them for Eleventy.
  const pages = Array.from({ length: 3 * Math.ceil(60 / few) }, (_, nth) =>
    site.pages.map((page) => (nth === 0 ? page : pageAt(`copy-${nth}/${page.path}`, page))),
  ).flat();
  let seconds = 0;
  // Eleventy's own clock stands still but for what it times of the configuration, its plugins' transforms.
  vi.spyOn(performance, "now").mockImplementation(
    () => 1000 * (new Error().stack?.includes("BenchmarkGroup") === true ? ++seconds : seconds),
  );
  const told = (["log", "warn", "error"] as const).map((way) =>
    vi.spyOn(console, way).mockImplementation(() => undefined),
  );
  const written = async (of: Site, dir: string): Promise<void> =>
    writeSite(of, { output: "site", kind: "screen", dir, earlierDir: join(home, "none") });
  await written(site, join(home, "few"));
  expect(seconds).toBe(0);
  await written({ ...site, pages }, join(home, "many"));
  expect(seconds).toBeGreaterThan(10);
  expect(told.flatMap(({ mock }) => mock.calls)).toEqual([]);
  // A few pages are rendered without Eleventy, to the same bytes.
  expect(few).toBeGreaterThan(5);
  for (const { path } of site.pages)
    expect(readFileSync(join(home, "few", path), "utf8"), path).toBe(
      readFileSync(join(home, "many", path), "utf8"),
    );
});
