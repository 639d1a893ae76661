/**
 * `npm run mutate`: whether the tests of the sciences see a slip. Each mutant is one operator,
 * condition or number changed in a copy of the project; it is seen when a test of its science
 * fails. Mutants are drawn at random from a fixed seed, so that a run can be repeated.
 *
 * npm run mutate -- --science optics --mutants 20 --seed 1
 */
import { execFile } from "node:child_process";
import {
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { mutantsOfModule, mutantsOfTable, type Mutant } from "./mutants.ts";

const ROOT = join(import.meta.dirname, "../..");
const SCIENCES = ["colorimetry", "optics", "formulation", "drying", "permanence", "hazard"];
/** Tests that hold a science's tables and figures from outside its own room. */
const SHARED_TESTS = ["test/knowledge", "test/published"];

interface PlacedMutant extends Mutant {
  readonly file: string;
}

const { values } = parseArgs({
  options: {
    science: { type: "string", multiple: true, default: SCIENCES },
    mutants: { type: "string", default: "20" },
    seed: { type: "string", default: "1" },
  },
});
const random = seeded(Number(values.seed));
const copies = Array.from({ length: availableParallelism() }, copyOfProject);
try {
  for (const science of values.science) {
    const drawn = sample(mutantsOf(science), Number(values.mutants));
    const left = [...drawn];
    const unseen: PlacedMutant[] = [];
    await Promise.all(
      copies.map(async (copy) => {
        for (let next = left.shift(); next !== undefined; next = left.shift())
          if (!(await isSeen(copy, science, next))) unseen.push(next);
      }),
    );
    const share = (100 * (drawn.length - unseen.length)) / drawn.length;
    process.stdout.write(
      `${science}: ${drawn.length - unseen.length} of ${drawn.length} seen, ${share.toFixed(0)} %\n`,
    );
    for (const mutant of unseen) process.stdout.write(`  ${placed(mutant)}\n`);
  }
} finally {
  for (const copy of copies) rmSync(copy, { recursive: true, force: true });
}

function mutantsOf(science: string): PlacedMutant[] {
  return readdirSync(join(ROOT, "lib", science), { recursive: true, encoding: "utf8" })
    .sort()
    .flatMap((name) => {
      const file = join("lib", science, name);
      const text = (): string => readFileSync(join(ROOT, file), "utf8");
      const found = name.endsWith(".ts")
        ? mutantsOfModule(file, text())
        : name.endsWith(".csv")
          ? mutantsOfTable(text())
          : [];
      return found.map((mutant) => ({ ...mutant, file }));
    });
}

async function isSeen(copy: string, science: string, mutant: PlacedMutant): Promise<boolean> {
  const file = join(copy, mutant.file);
  const text = readFileSync(file, "utf8");
  writeFileSync(file, text.slice(0, mutant.start) + mutant.slip + text.slice(mutant.end));
  try {
    return !(await passes(copy, [`test/${science}`, ...SHARED_TESTS]));
  } finally {
    writeFileSync(file, text);
  }
}

async function passes(copy: string, tests: readonly string[]): Promise<boolean> {
  const vitest = join(copy, "node_modules", "vitest", "vitest.mjs");
  const options = ["run", "--project", "units", "--bail", "1", "--maxWorkers", "1", ...tests];
  return new Promise((done) => {
    // A slip that never ends is seen too.
    const run = { cwd: copy, maxBuffer: 2 ** 28, timeout: 600_000 };
    execFile(process.execPath, [vitest, ...options], run, (error) => {
      done(error === null);
    });
  });
}

function copyOfProject(): string {
  const copy = mkdtempSync(join(tmpdir(), "mullstone-mutants-"));
  for (const name of ["lib", "test", "content", "assets", "templates"])
    cpSync(join(ROOT, name), join(copy, name), { recursive: true });
  for (const name of ["package.json", "vitest.config.ts", "eleventy.config.ts", "tsconfig.json"])
    if (existsSync(join(ROOT, name))) cpSync(join(ROOT, name), join(copy, name));
  symlinkSync(join(ROOT, "node_modules"), join(copy, "node_modules"));
  return copy;
}

/** `lib/optics/films/film.ts:12:7 < is <=`. */
function placed({ file, start, end, slip }: PlacedMutant): string {
  const text = readFileSync(join(ROOT, file), "utf8");
  const before = text.slice(0, start).split("\n");
  return `${file}:${before.length}:${(before.at(-1)?.length ?? 0) + 1} ${text.slice(start, end)} as ${slip}`;
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
