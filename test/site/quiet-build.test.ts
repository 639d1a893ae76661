import { performance } from "node:perf_hooks";
import { join } from "node:path";
import { afterEach, expect, test, vi } from "vitest";
import { loadRecords } from "../../lib/records/load-records.ts";
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
  let seconds = 0;
  // Eleventy's own clock stands still but for what it times of the configuration, its plugins' transforms.
  vi.spyOn(performance, "now").mockImplementation(
    () => 1000 * (new Error().stack?.includes("BenchmarkGroup") === true ? ++seconds : seconds),
  );
  const told = (["log", "warn", "error"] as const).map((way) =>
    vi.spyOn(console, way).mockImplementation(() => undefined),
  );
  await writeSite(site, {
    output: "site",
    kind: "screen",
    dir: join(home, "site"),
    earlierDir: join(home, "none"),
  });
  expect(seconds).toBeGreaterThan(10);
  expect(told.flatMap(({ mock }) => mock.calls)).toEqual([]);
});
