import { workCacheOf } from "../../lib/kept/work-cache.ts";
import { join } from "node:path";
import type nunjucks from "nunjucks";
import { at } from "../../lib/quantities/at.ts";
import { formatDiagnostic, type Diagnostic } from "../../lib/diagnostics/diagnostic.ts";
import type { Records } from "../../lib/records/records.ts";
import { printedSite } from "../../lib/site/printed-site.ts";
import { workedSite } from "../../lib/site/site-context.ts";
import { siteOf } from "../../lib/site/site-of-records.ts";
import type { Site } from "../../lib/site/site.ts";
import { templateEnvironment } from "../../lib/site/template-environment.ts";
import { chanceOf } from "./chance.ts";
import { fuzzedInput, KINDS, WORKSHOPS, type KindName } from "./fuzzed-input.ts";
import { readWorkshop, TODAY } from "./read-workshop.ts";

/** A hang is what takes longer than this of the processor's own time [ms], in any of the parts. */
const LONGEST_MS = 2_000;

export interface FuzzReport {
  readonly inputs: number;
  /** By the way in which the file was spoilt: so many put in, and so many of them sound all the same. */
  readonly kinds: Readonly<Record<KindName, { inputs: number; accepted: number }>>;
  /** Accepted ones that say something else than the sound records; of these, as many as were worked out, shown and printed. */
  readonly different: number;
  /** Whole workshops that were checked with the spoilt file in them. */
  readonly checked: number;
  readonly sheets: number;
  readonly pages: number;
  readonly papers: number;
  /** Each thing found, with the number of the input that shows it. */
  readonly found: readonly string[];
  readonly slowestMs: number;
  readonly largestMb: number;
}

export interface FuzzOptions {
  /** Of so many files that are refused by themselves, or say nothing new, one is checked with all others. */
  readonly wholeEvery?: number;
  /** Of so many accepted ones that say something else, one is worked out, shown, printed. */
  readonly sheetEvery?: number;
  readonly pageEvery?: number;
  readonly paperEvery?: number;
  readonly told?: (what: string) => void;
  /** Called with the count so far, now and then. */
  readonly progress?: (done: number) => void;
}

/**
 * Put spoilt records and readings through reading, checking and sheets, and some on through pages and
 * PDF. Nothing but a diagnostic may refuse them, and no figure may be no number.
 * @param folder scratch folder, which keeps first-principles figures.
 */
export async function fuzzed(
  inputs: number,
  seed: number,
  folder: string,
  {
    wholeEvery = 10,
    sheetEvery = 1,
    pageEvery = 10,
    paperEvery = 50,
    told = () => undefined,
    progress = () => undefined,
  }: FuzzOptions = {},
): Promise<FuzzReport> {
  const cache = { ...workCacheOf(folder), folder: join(folder, "figures") };
  const templates = templateEnvironment();
  const workshops = WORKSHOPS.map(readWorkshop);
  const sound = workshops.map(({ sound: { records, diagnostics } }) => {
    if (records === undefined) throw new Error(diagnostics.map(formatDiagnostic).join("\n"));
    return records;
  });
  // Fonts and tables are read, and the program is warm, before anything is timed.
  const { site: warm } = siteOf(at(sound, 0), TODAY, cache);
  heldPages(warm, templates, (what) => {
    throw new Error(what);
  });
  await printedSite(warm, join(folder, "none"));

  const kinds = Object.fromEntries(
    Object.keys(KINDS).map((kind) => [kind, { inputs: 0, accepted: 0 }]),
  ) as FuzzReport["kinds"];
  const found: string[] = [];
  const count = { checked: 0, different: 0, sheets: 0, pages: 0, papers: 0 };
  let slowestMs = 0;

  for (let number = seed; number < seed + inputs; number++) {
    if (number > seed && (number - seed) % 5_000 === 0) progress(number - seed);
    const { kind, workshop, path, text } = fuzzedInput(chanceOf(number));
    const say = (what: string): void => {
      found.push(`input ${number}, ${kind}, ${path} of workshop ${workshop}: ${what}`);
      told(found.at(-1) ?? "");
    };
    const timed = async <T>(part: string, work: () => T): Promise<Awaited<T> | undefined> => {
      const before = performance.now();
      try {
        const made = await work();
        const ms = performance.now() - before;
        slowestMs = Math.max(slowestMs, ms);
        if (ms > LONGEST_MS) await again(part, work, say);
        return made;
      } catch (error) {
        say(`${part}: ${traceOf(error)}`);
        return undefined;
      }
    };
    kinds[kind].inputs += 1;
    const spoilt = await timed("file", () => workshops[workshop]?.parsed(path, text));
    if (spoilt === undefined) continue;
    heldLines(spoilt.diagnostics, text, say);
    if (!spoilt.isRefused && spoilt.saysTheSame) kinds[kind].accepted += 1;
    // What is refused by itself is refused with all others, and what says the same is what was checked before.
    if ((spoilt.isRefused || spoilt.saysTheSame) && number % wholeEvery !== 0) continue;
    count.checked += 1;
    const read = await timed("records", spoilt.loaded);
    if (read === undefined) continue;
    heldLines(read.diagnostics, text, say);
    const { records } = read;
    if (spoilt.isRefused && records !== undefined) say("it is refused and accepted");
    if (records === undefined || spoilt.saysTheSame) continue;
    kinds[kind].accepted += 1;
    count.different += 1;
    if (count.different % sheetEvery === 0) {
      count.sheets += 1;
      await timed("sheet", () => heldSheets(records, text, say));
    }
    if (count.different % pageEvery === 0 || count.different % paperEvery === 0) {
      count.pages += 1;
      const site = await timed("page", () => siteOf(records, TODAY, cache).site);
      if (site === undefined) continue;
      await timed("template", () => heldPages(site, templates, say));
      if (count.different % paperEvery === 0) {
        count.papers += 1;
        await timed("paper", () => printedSite(site, join(folder, "none")));
      }
    }
  }
  const largestMb = Math.round(process.resourceUsage().maxRSS / 1000);
  return { inputs, kinds, ...count, found, slowestMs: Math.round(slowestMs), largestMb };
}

/** What was long by the clock of a busy machine is done again by the processor's. */
async function again(
  part: string,
  work: () => unknown,
  say: (what: string) => void,
): Promise<void> {
  const before = process.cpuUsage();
  await work();
  const ms = process.cpuUsage(before).user / 1000;
  if (ms > LONGEST_MS) say(`${part}: ${Math.round(ms)} ms`);
}

function traceOf(error: unknown): string {
  return error instanceof Error
    ? (error.stack ?? String(error)).split("\n").slice(0, 5).join(" | ")
    : String(error);
}

/** Words that no sentence of ours has: something was put together of what is not there. */
const NO_WORDS = /\b(?:NaN|Infinity|undefined)\b|\[object /;
/** Such a word in the input itself, or what YAML reads as one, may be quoted. */
const WRITTEN = /NaN|Infinity|undefined|\[object|\.nan|\.inf/i;

/** Each line has a place, is one line of readable length, and holds no slip of the program. */
function heldLines(
  diagnostics: readonly Diagnostic[],
  text: string,
  say: (what: string) => void,
): void {
  if (diagnostics.length > 120) say(`${diagnostics.length} lines`);
  for (const diagnostic of diagnostics) {
    const { line, column } = diagnostic.place;
    const printed = formatDiagnostic(diagnostic);
    if (!(line >= 1 && column >= 1) || printed.length > 1_500 || /[\n\r]/.test(printed))
      say(printed);
    if (NO_WORDS.test(printed) && !WRITTEN.test(text)) say(printed);
  }
}

/** Every number that the sheets publish is one, and every text is without the words of a slip. */
function heldSheets(records: Records, written: string, say: (what: string) => void): void {
  const { published, diagnostics } = workedSite(records, TODAY);
  heldLines(diagnostics, written, say);
  const mayHold = WRITTEN.test(written);
  const walk = (value: unknown, path: string): void => {
    if (value === null && !/\.(?:hue|signalWord)$/.test(path)) say(`${path} is null`);
    if (typeof value === "number" && !Number.isFinite(value)) say(`${path} is ${value}`);
    if (typeof value === "string" && !mayHold && NO_WORDS.test(value))
      say(`${path} is "${value.slice(0, 80)}"`);
    if (typeof value === "object" && value !== null)
      for (const [key, entry] of Object.entries(value)) walk(entry, `${path}.${key}`);
  };
  for (const { worded } of published) walk(worded.plain, worded.sheet.slug);
}

/** Every page is written by its template, every file of data is what it says it is. */
function heldPages(site: Site, templates: nunjucks.Environment, say: (what: string) => void): void {
  for (const { path, site: frame, view } of site.pages) {
    const page = templates.render(`pages/${view.kind}.njk`, { site: frame, view });
    const slip = /\bNaN\b|[^\w]Infinity\b|\[object Object\]|>undefined</.exec(page);
    if (slip !== null) say(`${path} holds ${slip[0]}`);
  }
  for (const { path, text } of [...site.files(), ...site.manifests()])
    if (path.endsWith(".json")) JSON.parse(text);
}
