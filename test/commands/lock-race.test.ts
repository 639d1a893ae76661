import { execFile } from "node:child_process";
import { mkdtempSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { promisify } from "node:util";
import { expect, inject, test } from "vitest";
import { ownProgram } from "../support/own-program.ts";

test("of six builds at once never two are in, though locks of killed ones lie about", async () => {
  const home = mkdtempSync(join(inject("scratch"), "race-"));
  const racers = await Promise.all(
    Array.from({ length: 6 }, async () =>
      promisify(execFile)(process.execPath, [
        ...ownProgram(join(import.meta.dirname, "lock-racer.ts")),
        join(home, "site"),
        "300",
      ]),
    ),
  );
  const found = racers.map(
    ({ stdout }) => JSON.parse(stdout) as { inside: number; together: number },
  );
  expect(found.reduce((sum, { together }) => sum + together, 0)).toBe(0);
  expect(found.reduce((sum, { inside }) => sum + inside, 0)).toBeGreaterThan(40);
  // Nothing lies about but the last lock, if its holder was the kind that is killed.
  expect(readdirSync(home).filter((name) => name !== "site.lock")).toEqual([]);
});
