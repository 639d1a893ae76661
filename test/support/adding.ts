/**
 * `npm run adding`: what a pigment, a figure, a rule, a section, a page or a text that was added still
 * lacks, a line each, without the tests that it does not concern. It goes by the files that git knows as edited,
 * or by those that are named; formats them, and writes what follows from them and is kept as text.
 */
import { execFileSync, spawn } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { formatDiagnostic } from "../../lib/diagnostics/diagnostic.ts";
import { loadedTables } from "../../lib/knowledge/tables.ts";
import { addedKinds, faultLines, RULE, whatIsAdded, type FaultReport } from "./added-kinds.ts";
import { ownProgram } from "./own-program.ts";
import { STATEMENTS_FILE } from "./statements-list.ts";
import { translatedModules } from "./translated-modules.ts";
import { moduleTexts, unnamedExports } from "./unnamed-exports.ts";

const ROOT = join(import.meta.dirname, "../..");

/** Files of the project that were edited since the last commit, new ones too. */
function editedFiles(): string[] {
  const listed = (...args: string[]): string[] =>
    execFileSync("git", args, { cwd: ROOT, encoding: "utf8" }).split("\n").filter(Boolean);
  return [
    ...listed("diff", "--relative", "--name-only", "HEAD"),
    ...listed("ls-files", "--others", "--exclude-standard"),
  ];
}

/** A program to its end, its own or that of `signal`: what it said, and whether it was content. */
async function run(
  args: readonly string[],
  signal?: AbortSignal,
): Promise<{ isSound: boolean; said: string }> {
  return new Promise((done) => {
    const child = spawn(process.execPath, args, { cwd: ROOT, stdio: ["ignore", "pipe", "pipe"] });
    signal?.addEventListener("abort", () => child.kill());
    const held: Buffer[] = [];
    for (const stream of [child.stdout, child.stderr])
      stream.on("data", (chunk: Buffer) => held.push(chunk));
    child.once("close", (code) => done({ isSound: code === 0, said: String(Buffer.concat(held)) }));
  });
}

/** What types and lint complain of: a line each. */
async function typeFaults(files: readonly string[]): Promise<string[]> {
  if (files.length === 0) return [];
  const oxlint = ["node_modules/oxlint/bin/oxlint", "--type-check", "--format=unix"];
  const { isSound, said } = await run([...oxlint, ...files]);
  const lines = said.split("\n").filter((line) => /^\S+:\d+:\d+: /.test(line));
  return isSound ? [] : lines.length === 0 ? [said] : lines;
}

/** What tests complain of, a line each; nothing where they are broken off. */
async function testFaults(tests: readonly string[], signal: AbortSignal): Promise<string[]> {
  if (tests.length === 0) return [];
  const folder = mkdtempSync(join(tmpdir(), "mullstone-adding-"));
  const report = join(folder, "report.json");
  try {
    const { isSound, said } = await run(
      [
        ...["node_modules/vitest/vitest.mjs", "run", "--project=units", "--maxWorkers=1"],
        ...["--update", "--reporter=json", `--outputFile=${report}`],
        ...new Set(tests),
      ],
      signal,
    );
    if (signal.aborted) return [];
    const faults = existsSync(report)
      ? faultLines(JSON.parse(readFileSync(report, "utf8")) as FaultReport)
      : [];
    return isSound || faults.length > 0 ? faults : [said];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** What is wrong with the tables: as long as something is, no test can be asked. */
function tableFaults(): string[] {
  return edited.some((file) => /\.(?:csv|yaml)$/.test(file))
    ? loadedTables().diagnostics.map((each) => formatDiagnostic(each))
    : [];
}

/** Of a rule's files, what they export and no module names. */
function unlistedFaults(): string[] {
  const ofRules = edited.filter((file) => RULE.isOf.test(file));
  return ofRules.length === 0
    ? []
    : unnamedExports(ofRules, moduleTexts(ROOT)).map(
        ({ file, name }) =>
          `${file}: nothing names ${name}; a rule stands in the list of its heading`,
      );
}

function statements(): string[] {
  return readFileSync(join(ROOT, STATEMENTS_FILE), "utf8").split("\n");
}

const named = process.argv.slice(2);
const isThere = (file: string): boolean => existsSync(join(ROOT, file));
for (const file of named.filter((one) => !isThere(one))) {
  process.stderr.write(`No file ${file}; name it from the root of the project\n`);
  process.exit(1);
}
const edited = (named.length > 0 ? named : editedFiles()).filter(isThere);
if (edited.length === 0) {
  process.stderr.write("No edited file; name one after --\n");
  process.exit(1);
}
const kinds = addedKinds(edited);
process.stdout.write(`${whatIsAdded(edited, kinds)}\n`);
process.env["MULLSTONE_TRANSLATED"] = await translatedModules(ROOT);
await run(["node_modules/prettier/bin/prettier.cjs", "--write", "--ignore-unknown", ...edited]);
for (const writer of new Set(kinds.flatMap(({ writer: own = [] }) => own)))
  await run(ownProgram(join(ROOT, writer)));
const before = new Set(statements());
const modules = [
  ...edited,
  ...kinds.flatMap(({ wordsIn }) =>
    wordsIn === undefined
      ? []
      : readdirSync(join(ROOT, wordsIn)).map((file) => join(wordsIn, file)),
  ),
].filter((file) => file.endsWith(".ts"));
const faults = [...unlistedFaults(), ...tableFaults()];
if (faults.length === 0) {
  // What does not compile fails tests by its own consequences, which say less than the compiler.
  const tests = new AbortController();
  const types = typeFaults([...new Set(modules)]).then((found) => {
    if (found.length > 0) tests.abort();
    return found;
  });
  const tried = testFaults(
    [
      ...kinds.flatMap(({ tests: own }) => own),
      ...edited.filter((file) => /^test\/(?!site|contract).*\.test\.ts$/.test(file)),
    ],
    tests.signal,
  );
  faults.push(...(await types), ...(await tried));
  if (tests.signal.aborted) process.stdout.write("Tests are asked once the compiler is content\n");
}
for (const line of statements().filter((each) => !before.has(each)))
  process.stdout.write(`to be read in ${STATEMENTS_FILE}: ${line}\n`);
for (const fault of faults) process.stdout.write(`${fault}\n`);
process.stdout.write(`${faults.length === 0 ? "Nothing" : faults.length} missing\n`);
process.exitCode = faults.length === 0 ? 0 : 1;
