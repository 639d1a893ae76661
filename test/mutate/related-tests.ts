import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { importsOf } from "../rooms/lib-modules.ts";

/** A test file and what it loads: every module that it imports itself or through others. */
interface TestFile {
  readonly file: string;
  readonly loads: ReadonlySet<string>;
}

/** Whole sites are too slow for a slip in one number, and hold no science by themselves. */
const NOT_UNITS = /^test\/(?:contract|site|demonstration|mutate)\//;

/** The unit tests of a project's folder, those that load least first: the first one to fail is then found soonest. */
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
    .map((file) => ({ file, loads: reached(file, importsOfFile) }))
    .sort((one, other) => one.loads.size - other.loads.size || (one.file < other.file ? -1 : 1));
}

function reached(from: string, importsOfFile: (file: string) => readonly string[]): Set<string> {
  const found = new Set([from]);
  for (const file of found) for (const next of importsOfFile(file)) found.add(next);
  return found;
}
