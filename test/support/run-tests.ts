/**
 * `npm test`: types, lint and every test, told at the end in one line, `N passed, N failed`.
 * Types and lint count as one check: the compiler that lint asks of types reads each file once and
 * tells of both. The exit code is 1 when anything failed, a test run that broke off included. Tests
 * are three runs side by side: what needs the demonstration shares it as worked out, which takes
 * longest and so goes first; what runs commands shares the thread that builds; and all else. What is
 * asked for beyond goes to each run: `npm test -- --sequence.shuffle`.
 */
import { execFileSync, spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { availableParallelism, setPriority, tmpdir } from "node:os";
import { join } from "node:path";
import { tallied, type Tally, type VitestReport } from "./tallied.ts";
import { translatedModules } from "./translated-modules.ts";

const ROOT = join(import.meta.dirname, "../..");

type Words = "as they come" | "at the end";

/** What all but the longest run gives way by: on two cores it fills what that leaves of them. */
const BEHIND = 5;

/** Run a program of node_modules to its end. Its words are held back where another runs beside it. */
async function finished(
  program: string,
  args: readonly string[],
  words: Words,
  env: Readonly<Record<string, string>> = {},
): Promise<number> {
  return new Promise((done) => {
    const child = spawn(process.execPath, [join(ROOT, "node_modules", program), ...args], {
      cwd: ROOT,
      env: { ...process.env, ...env },
      stdio: [
        "ignore",
        ...(words === "as they come"
          ? (["inherit", "inherit"] as const)
          : (["pipe", "pipe"] as const)),
      ],
    });
    if (words === "at the end" && child.pid !== undefined) setPriority(child.pid, BEHIND);
    const held: Buffer[] = [];
    for (const stream of [child.stdout, child.stderr])
      stream?.on("data", (chunk: Buffer) => held.push(chunk));
    child.once("error", (error) => held.push(Buffer.from(`${String(error)}\n`)));
    child.once("close", (code) => {
      process.stdout.write(Buffer.concat(held));
      done(code ?? 1);
    });
  });
}

/** Go's collector sweeps a program that ends soon all too often, a fifth of the time that lint and types take: not before the memory is full that they may take. */
const SELDOM_SWEPT = { GOGC: "off", GOMEMLIMIT: "4GiB" };

async function check(name: string, program: string, args: readonly string[]): Promise<Tally> {
  const code = await finished(program, args, "at the end", SELDOM_SWEPT);
  process.stdout.write(`${name}: ${code === 0 ? "passed" : "failed"}\n`);
  return code === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

/** A run of one part of the tests, as vitest.config.ts knows it. */
async function tests(
  part: "of the demonstration" | "of commands" | "of all else",
  args: readonly string[],
  words: Words,
): Promise<Tally> {
  const folder = mkdtempSync(join(tmpdir(), "mullstone-report-"));
  const report = join(folder, "report.json");
  try {
    const code = await finished(
      "vitest/vitest.mjs",
      [
        "run",
        "--reporter=default",
        "--reporter=json",
        `--outputFile.json=${report}`,
        ...args,
        ...process.argv.slice(2),
      ],
      words,
      { MULLSTONE_TESTS: part, MULLSTONE_TRANSLATED: translated },
    );
    return tallied(readReport(report), code);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function readReport(file: string): VitestReport | undefined {
  try {
    return JSON.parse(readFileSync(file, "utf8")) as VitestReport;
  } catch {
    return undefined;
  }
}

const cores = availableParallelism();
const forDemonstration = Math.max(1, Math.floor(cores / 2));
const forOthers = Math.max(1, Math.floor((cores - forDemonstration) / 2));
// Types and lint beside the tests: these wait for the demonstration to be built first, which leaves a core idle.
const typesAndLint = check("types and lint", "oxlint/bin/oxlint", ["--type-check", "."]);
const translated = await translatedModules(ROOT);
// The command is bundled when it is first run: here, so that no two of the runs bundle it at once.
execFileSync(process.execPath, [join(ROOT, "lib/mullstone.js"), "--help"], { stdio: "ignore" });
const parts = await Promise.all([
  typesAndLint,
  tests(
    "of the demonstration",
    ["--project=site", `--maxWorkers=${forDemonstration}`],
    "as they come",
  ),
  tests("of commands", ["--project=units", `--maxWorkers=${forOthers}`], "at the end"),
  tests("of all else", ["--project=units", `--maxWorkers=${forOthers}`], "at the end"),
]);
const passed = parts.reduce((sum, part) => sum + part.passed, 0);
const failed = parts.reduce((sum, part) => sum + part.failed, 0);
process.stdout.write(`${passed} passed, ${failed} failed\n`);
process.exitCode = failed === 0 ? 0 : 1;
