/**
 * `npm run fuzz [-- INPUTS [SEED]]`: spoilt records, readings and answers (50,000 unless said)
 * through reading, checking, sheets, pages and PDF. Prints what was found as it is found, and its
 * figures at the end; exit code 1 when anything was.
 */
import { fuzzed } from "./fuzz-run.ts";
import { runFolder } from "../support/run-folder.ts";

/** Memory [MB] that a process with this run alone stays under. */
const LARGEST_MB = 1_000;

const inputs = Number(process.argv[2] ?? 50_000);
const seed = Number(process.argv[3] ?? 1);
const { folder, remove } = runFolder("fuzz");
const started = process.cpuUsage();
const { kinds, ...report } = await fuzzed(inputs, seed, folder, {
  told: (what) => process.stdout.write(`${what}\n`),
  progress: (done) => process.stderr.write(`${done} of ${inputs}\n`),
  sheetEvery: 16,
  pageEvery: 200,
  paperEvery: 800,
});
remove();
const { user, system } = process.cpuUsage(started);
const accepted = Object.values(kinds).reduce((sum, kind) => sum + kind.accepted, 0);
process.stdout.write(
  `${[
    ...Object.entries(kinds).map(
      ([kind, of]) => `${kind}: ${of.inputs} inputs, ${of.accepted} accepted`,
    ),
    `${report.inputs} inputs from seed ${seed}, ${accepted} accepted, ${report.different} of them other than the sound records`,
    `${report.checked} whole workshops checked, ${report.sheets} worked out to sheets, ${report.pages} to pages, ${report.papers} to PDF`,
    `${report.found.length} found; ${report.slowestMs} ms by the clock at most, ${report.largestMb} MB at most, ${Math.round((user + system) / 1e6)} s of the processor`,
  ].join("\n")}\n`,
);
process.exitCode = report.found.length === 0 && report.largestMb <= LARGEST_MB ? 0 : 1;
