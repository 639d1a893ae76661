import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { importsOf } from "../rooms/lib-modules.ts";

/** A test file and what it loads: every module that it imports, by itself or through others. */
export interface TestFile {
  readonly file: string;
  /** By the module's file: over how many imports it is reached, 1 where the test itself imports it. */
  readonly steps: ReadonlyMap<string, number>;
}

/** Whole sites are too slow for a slip in one number, and hold no science by themselves. */
const NOT_UNITS = /^test\/(?:contract|site|demonstration|mutate)\//;
/** A test that loads more works sheets or sites out, which takes longer than a slip in one number is worth. */
const MOST_MODULES = 300;

/** The unit tests of a project's folder, but for those that make the whole product. */
export function testFiles(root: string): TestFile[] {
  const importsByFile = new Map<string, readonly string[]>();
  const importsOfFile = (file: string): readonly string[] => {
    const known = importsByFile.get(file);
    if (known !== undefined) return known;
    const found = /\.[jt]s$/.test(file)
      ? importsOf(resolve(root, file), readFileSync(join(root, file), "utf8")).flatMap(
          ({ target, typeOnly }) => (target === undefined || typeOnly ? [] : [target.file]),
        )
      : [];
    importsByFile.set(file, found);
    return found;
  };
  return readdirSync(join(root, "test"), { recursive: true, encoding: "utf8" })
    .map((name) => join("test", name).replaceAll("\\", "/"))
    .filter((file) => file.endsWith(".test.ts") && !NOT_UNITS.test(file))
    .map((file) => ({ file, steps: stepsFrom(file, importsOfFile) }))
    .filter(({ steps }) => steps.size <= MOST_MODULES);
}

/**
 * Tests that may see a slip in a file, those first that reach it over the fewest imports, and of
 * these those that load least. A table is read and not imported: it stands as far away as the
 * module that reads the tables.
 */
export function relatedTests(tests: readonly TestFile[], file: string): TestFile[] {
  const reached = file.endsWith(".ts") ? file : "lib/knowledge/tables.ts";
  const [, room = ""] = file.split("/");
  const distance = ({ file: test, steps }: TestFile): number =>
    test.startsWith(`test/${room}/`) ? 0 : (steps.get(reached) ?? Infinity);
  return tests
    .filter(({ steps }) => steps.has(reached))
    .sort(
      (one, other) =>
        distance(one) - distance(other) ||
        one.steps.size - other.steps.size ||
        (one.file < other.file ? -1 : 1),
    );
}

function stepsFrom(
  from: string,
  importsOfFile: (file: string) => readonly string[],
): Map<string, number> {
  const steps = new Map([[from, 0]]);
  for (const [file, far] of steps)
    for (const next of importsOfFile(file)) if (!steps.has(next)) steps.set(next, far + 1);
  return steps;
}
