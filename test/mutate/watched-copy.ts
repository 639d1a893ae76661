/**
 * A process that holds one copy of the project open in vitest, so that a slip costs the tests
 * and not the start. It answers each slip that it is sent with the first test file that fails.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { relative, resolve } from "node:path";
import { BaseSequencer, createVitest, type TestSpecification } from "vitest/node";
import type { SlipAnswer, SlipTrial } from "./mutate.ts";

/** Files run in the order in which they were asked for. */
class AsAsked extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return Promise.resolve(files);
  }
}

// One worker takes all files of a slip one after another, shares their modules and stops at the first failure.
const vitest = await createVitest("test", {
  watch: false,
  project: ["units"],
  reporters: [{}],
  maxWorkers: 1,
  bail: 1,
  isolate: false,
  pool: "threads",
  sequence: { sequencer: AsAsked },
});
// Room that tests ask for in the heap of a process, a thread is refused.
for (const { config } of vitest.projects) config.execArgv = [];
/** A run goes on listing what earlier runs left. */
const earlierErrors = new Set<unknown>();
process.on("message", (trial: SlipTrial) => {
  void seenBy(trial).then((test) => process.send?.({ test } satisfies SlipAnswer));
});

/** The first test file that fails with the slip, or null. */
async function seenBy({ file, start, end, slip, tests }: SlipTrial): Promise<string | null> {
  const path = resolve(file);
  const text = readFileSync(path, "utf8");
  writeFileSync(path, text.slice(0, start) + slip + text.slice(end));
  vitest.invalidateFile(path);
  try {
    const found = await vitest.globTestSpecifications([...tests]);
    const inOrder = tests.map((test) => {
      const specification = found.find(({ moduleId }) => moduleId === resolve(test));
      if (specification === undefined) throw new Error(`There is no test ${test}`);
      return specification;
    });
    const { testModules, unhandledErrors } = await vitest.runTestSpecifications(inOrder, false);
    const states = new Map(testModules.map((module) => [module.moduleId, module.state()]));
    // Files after the failure were not run: what they say is of an earlier slip.
    const failed = inOrder.find(({ moduleId }) => states.get(moduleId) === "failed");
    if (failed !== undefined) return relative(process.cwd(), failed.moduleId);
    const isNew = unhandledErrors.some((error) => !earlierErrors.has(error));
    for (const error of unhandledErrors) earlierErrors.add(error);
    return isNew ? "an error outside of tests" : null;
  } finally {
    writeFileSync(path, text);
    vitest.invalidateFile(path);
  }
}
