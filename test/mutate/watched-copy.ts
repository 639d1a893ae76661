/**
 * A process that holds one copy of the project open in vitest, so that a slip costs the tests
 * and not the start. It answers each slip that it is sent with the first test that fails.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { resolve } from "node:path";
import { createVitest } from "vitest/node";
import type { SlipTrial } from "./mutate.ts";

const vitest = await createVitest("test", {
  watch: false,
  project: ["units"],
  reporters: [{}],
  maxWorkers: 1,
  bail: 1,
  isolate: true,
  pool: "threads",
});
let unhandled = 0;
process.on("message", (trial: SlipTrial) => {
  void seenBy(trial).then((test) => process.send?.({ test }));
});

/** The first test that fails with the slip, or null. */
async function seenBy({ file, start, end, slip, tests }: SlipTrial): Promise<string | null> {
  const path = resolve(file);
  const text = readFileSync(path, "utf8");
  writeFileSync(path, text.slice(0, start) + slip + text.slice(end));
  vitest.invalidateFile(path);
  try {
    for (const test of tests) {
      const specifications = await vitest.globTestSpecifications([test]);
      const run = await vitest.runTestSpecifications(specifications, false);
      // A run goes on listing what earlier runs left.
      const isNew = run.unhandledErrors.length > unhandled;
      unhandled = run.unhandledErrors.length;
      const own = run.testModules.filter(({ moduleId }) => moduleId === resolve(test));
      if (isNew || own.some((module) => !module.ok())) return test;
    }
    return null;
  } finally {
    writeFileSync(path, text);
    vitest.invalidateFile(path);
  }
}
