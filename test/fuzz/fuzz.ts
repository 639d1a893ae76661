/**
 * `npm run fuzz [-- INPUTS [SEED]]`: mutated records, readings and answers (50,000 unless said)
 * through reading, checking, sheets, pages and PDF. Prints what was found as it is found, and its
 * figures at the end; exit code 1 when anything was.
 */
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fuzzed } from "./fuzz-run.ts";

const inputs = Number(process.argv[2] ?? 50_000);
const seed = Number(process.argv[3] ?? 1);
const report = fuzzed(inputs, seed, mkdtempSync(join(tmpdir(), "mullstone-fuzz-")), {
  told: (what) => process.stdout.write(`${what}\n`),
  sheetEvery: 5,
  printEvery: 200,
});
process.stdout.write(
  `${report.inputs} inputs from seed ${seed}, ${report.accepted} accepted, ${report.printed} printed, ${report.found.length} found, ${report.largestMb} MB at most\n`,
);
process.exitCode = report.found.length === 0 ? 0 : 1;
