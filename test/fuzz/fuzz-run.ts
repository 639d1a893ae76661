import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { formatDiagnostic } from "../../lib/diagnostics/diagnostic.ts";
import { loadRecords } from "../../lib/records/load-records.ts";
import type { Records } from "../../lib/records/records.ts";
import { printedSite } from "../../lib/site/printed-site.ts";
import { workedSite } from "../../lib/site/site-context.ts";
import { siteOf } from "../../lib/site/site-of-records.ts";
import { chanceOf, mutated, soundRecords } from "./fuzzed-records.ts";

/** A hang is what takes longer than this of the processor's own time [ms]: of records, of a sheet, of pages and paper. */
const LONGEST_MS = { records: 2_000, sheet: 10_000, paper: 60_000 };

export interface FuzzReport {
  readonly inputs: number;
  readonly accepted: number;
  readonly printed: number;
  /** Each thing found, with the number of the input that shows it. */
  readonly found: readonly string[];
  readonly largestMb: number;
}

/**
 * Put mutated records through reading, checking and sheets; one of so many accepted ones through
 * pages and PDF too. Nothing but a diagnostic may refuse them, and no figure may be no number.
 * @param folder scratch folder for the content folder.
 */
export function fuzzed(
  inputs: number,
  seed: number,
  folder: string,
  { sheetEvery = 1, printEvery = 25, told = () => undefined }: FuzzOptions = {},
): FuzzReport {
  const sound = soundRecords();
  const write = (path: string, text: string): void => {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  };
  for (const [path, text] of Object.entries(sound)) write(path, text);
  const first = loadRecords(folder, folder, undefined);
  if (first.records === undefined)
    throw new Error(first.diagnostics.map(formatDiagnostic).join("\n"));
  const found: string[] = [];
  let [accepted, printed, largestMb] = [0, 0, 0];
  for (let input = 0; input < inputs; input++) {
    const { path, text } = mutated(sound, chanceOf(seed + input));
    const say = (what: string): void => {
      found.push(`input ${seed + input}, ${path}: ${what}`);
      told(found.at(-1) ?? "");
    };
    write(path, text);
    const records = timed("records", say, () => {
      const { records: read, diagnostics } = loadRecords(folder, folder, "2026-12-31");
      for (const line of diagnostics.map(formatDiagnostic))
        if (/undefined|NaN(?! *:)|\[object|\bat .*\.ts:\d/.test(line.replaceAll(text, "")))
          if (!/NaN|undefined|object/.test(text)) say(line);
      return read;
    });
    if (records !== undefined) {
      accepted += 1;
      if (accepted % sheetEvery === 0) timed("sheet", say, () => heldSheets(records, say));
      if (accepted % printEvery === 0) {
        printed += 1;
        timed("paper", say, () =>
          printedSite(siteOf(records, "2026-12-31").site, join(folder, "none")),
        );
      }
    }
    if (sound[path] !== undefined) write(path, sound[path]);
    largestMb = Math.max(largestMb, process.memoryUsage().rss / 1e6);
  }
  rmSync(folder, { recursive: true, force: true });
  return { inputs, accepted, printed, found, largestMb: Math.round(largestMb) };
}

export interface FuzzOptions {
  readonly sheetEvery?: number;
  readonly printEvery?: number;
  readonly told?: (what: string) => void;
}

function timed<T>(
  part: keyof typeof LONGEST_MS,
  say: (what: string) => void,
  work: () => T,
): T | undefined {
  const before = process.cpuUsage();
  try {
    return work();
  } catch (error) {
    say(
      `${part}: ${error instanceof Error ? (error.stack ?? String(error)).split("\n").slice(0, 4).join(" | ") : String(error)}`,
    );
    return undefined;
  } finally {
    const { user } = process.cpuUsage(before);
    if (user / 1000 > LONGEST_MS[part]) say(`${part}: ${Math.round(user / 1000)} ms`);
  }
}

/** Every number that the sheets publish is one, and every text is without the words of a slip. */
function heldSheets(records: Records, say: (what: string) => void): void {
  const { published } = workedSite(records, "2026-12-31");
  for (const { worded } of published) {
    const walk = (value: unknown, path: string): void => {
      if (typeof value === "number" && !Number.isFinite(value)) say(`${path} is ${value}`);
      if (typeof value === "string" && /\b(?:NaN|Infinity|undefined)\b/.test(value))
        say(`${path} is "${value.slice(0, 80)}"`);
      if (typeof value === "object" && value !== null)
        for (const [key, entry] of Object.entries(value)) walk(entry, `${path}.${key}`);
    };
    walk(worded.plain, worded.sheet.slug);
  }
}
