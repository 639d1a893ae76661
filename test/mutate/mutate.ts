/**
 * `npm run mutate`: whether the tests of the sciences see a slip. Each mutant is one operator,
 * condition or number changed in a copy of the project; it is seen when a unit test that loads
 * the changed file fails, the nearest first. Mutants are drawn at random from a fixed seed, so that a run can be repeated.
 *
 * npm run mutate -- --science optics --mutants 20 --seed 1
 */
import { fork, type ChildProcess } from "node:child_process";
import { cpSync, existsSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { once } from "node:events";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { mutantsOfModule, mutantsOfTable, type Mutant } from "./mutants.ts";
import { relatedTests, testFiles } from "./related-tests.ts";
import { runFolder } from "../support/run-folder.ts";

interface PlacedMutant extends Mutant {
  readonly file: string;
}

/** A slip and the tests that may see it, in the order in which they are run. */
export interface SlipTrial extends PlacedMutant {
  readonly tests: readonly string[];
}

export interface SlipAnswer {
  readonly test: string | null;
}

const ROOT = join(import.meta.dirname, "../..");
const SCIENCES = ["colorimetry", "optics", "formulation", "drying", "permanence", "hazard"];
/** A slip that never ends is seen too; on a busy machine all tests of a science took minutes. */
const LONGEST_MS = 1_200_000;
/** Letters of a slip that are printed. */
const MOST_SHOWN = 60;
const UNTOUCHED: PlacedMutant = { file: "package.json", start: 0, end: 0, slip: "" };

const { values } = parseArgs({
  options: {
    science: { type: "string", multiple: true, default: SCIENCES },
    mutants: { type: "string", default: "20" },
    seed: { type: "string", default: "1" },
  },
});
const random = seeded(Number(values.seed));
const tests = testFiles(ROOT);
const { folder: copy, remove } = runFolder("mutants");
copyProject();
let watched = watchedCopy();
try {
  for (const science of values.science) {
    const drawn = sample(mutantsOf(science), Number(values.mutants));
    const failing = await seenBy(UNTOUCHED, [...new Set(drawn.flatMap(testsOf))]);
    if (failing !== null) throw new Error(`${failing} fails without a slip`);
    const unseen: PlacedMutant[] = [];
    for (const mutant of drawn) {
      const test = await seenBy(mutant, testsOf(mutant));
      process.stderr.write(`${placed(mutant)}: ${test ?? "not seen"}\n`);
      if (test === null) unseen.push(mutant);
    }
    const share = (100 * (drawn.length - unseen.length)) / drawn.length;
    process.stdout.write(
      `${science}: ${drawn.length - unseen.length} of ${drawn.length} seen, ${share.toFixed(0)} %\n`,
    );
    for (const mutant of unseen) process.stdout.write(`  ${placed(mutant)}\n`);
  }
} finally {
  watched.kill();
  remove();
}

function mutantsOf(science: string): PlacedMutant[] {
  return readdirSync(join(copy, "lib", science), { recursive: true, encoding: "utf8" })
    .sort()
    .flatMap((name) => {
      const file = join("lib", science, name);
      const text = (): string => textOf(file);
      const found = name.endsWith(".ts")
        ? mutantsOfModule(file, text())
        : name.endsWith(".csv")
          ? mutantsOfTable(text())
          : [];
      return found.map((mutant) => ({ ...mutant, file }));
    });
}

/** The test that fails with the slip, or null; a slip that ends the process or never ends is seen as well. */
async function seenBy(mutant: PlacedMutant, files: readonly string[]): Promise<string | null> {
  const trial: SlipTrial = { ...mutant, tests: files };
  const text = textOf(mutant.file);
  const ended = new AbortController();
  const { signal } = ended;
  const tooLong = setTimeout(() => watched.kill("SIGKILL"), LONGEST_MS);
  watched.send(trial);
  try {
    const answer = once(watched, "message", { signal }) as Promise<[SlipAnswer]>;
    const first = await Promise.race([answer, once(watched, "exit", { signal }).then(() => null)]);
    if (first !== null) return first[0].test;
    writeFileSync(join(copy, mutant.file), text);
    watched = watchedCopy();
    return "the end of the process";
  } finally {
    clearTimeout(tooLong);
    ended.abort();
  }
}

/** As copied: what is edited in the project meanwhile has its operators in other places. */
function textOf(file: string): string {
  return readFileSync(join(copy, file), "utf8");
}

function testsOf({ file }: PlacedMutant): string[] {
  return relatedTests(tests, file).map((test) => test.file);
}

function watchedCopy(): ChildProcess {
  const program = join(copy, "test/mutate/watched-copy.ts");
  return fork(program, { cwd: copy, execArgv: ["--import", "tsx"] });
}

function copyProject(): void {
  for (const name of ["lib", "test", "content", "assets", "templates"])
    cpSync(join(ROOT, name), join(copy, name), { recursive: true });
  for (const name of [
    "package.json",
    "README.md",
    "DEVELOPERS.md",
    "vitest.config.ts",
    "eleventy.config.ts",
    "tsconfig.json",
  ])
    if (existsSync(join(ROOT, name))) cpSync(join(ROOT, name), join(copy, name));
  symlinkSync(join(ROOT, "node_modules"), join(copy, "node_modules"));
}

/** `lib/optics/films/film.ts:12:7 < is <=`. */
function placed({ file, start, end, slip }: PlacedMutant): string {
  const text = textOf(file);
  const before = text.slice(0, start).split("\n");
  const [was, is] = [text.slice(start, end), slip].map((one) =>
    one.replace(/\s+/g, " ").slice(0, MOST_SHOWN),
  );
  return `${file}:${before.length}:${(before.at(-1)?.length ?? 0) + 1} ${was} as ${is}`;
}

function sample<T>(all: readonly T[], count: number): T[] {
  const left = [...all];
  return Array.from({ length: Math.min(count, left.length) }, () =>
    left.splice(Math.floor(random() * left.length), 1),
  ).flat();
}

/** Numbers from 0 up to 1 by a linear congruence (Numerical Recipes' constants, 32 bit). */
function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
