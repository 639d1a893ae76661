import { setImmediate as turn } from "node:timers/promises";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { loadRecords, type LoadedRecords } from "../records/load-records.ts";
import { keptParsers } from "../records/kept-parsers.ts";
import { withPhotographs } from "../photographs/taken-photographs.ts";
import type { Records } from "../records/records.ts";
import { recordsBelow } from "../records/site-base.ts";
import { claimsAs } from "./claim-severity.ts";
import { earlierCards, earlierState } from "./earlier-manifest.ts";
import { printedCards } from "./printed-cards.ts";
import { allLanguages, inOneFolder } from "./one-folder.ts";
import { latestDate, printedDate } from "./printed-date.ts";
import { askedPapers } from "./printed-site.ts";
import { siteOf } from "./site-of-records.ts";
import { addressFaults, keptManifests } from "./site-addresses.ts";
import type { SiteReport, SiteTask, SiteTelling } from "./site-task.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import { clearResults, keyOf, readResult, writeResult, type Origin } from "../kept/kept-result.ts";
import type { Site } from "./site.ts";
import { begunSite, type BegunSite, type LaterSite } from "./write-site.ts";
import { workAhead } from "./worked-ahead.ts";
import { workProcess } from "./work-process.ts";
import { knownFiles } from "./known-files.ts";
import { writtenFiles } from "./written-files.ts";
import { WORKED_HERE, workThreads, WORTH_A_THREAD, type WorkThreads } from "./work-threads.ts";

/** Where the pages lie that stand for one record each. */
function recordFolders({ colours, pigments, answers }: Records): string[] {
  const below = (folder: string, slugs: Iterable<string>): string[] =>
    [...slugs].map((slug) => `${folder}/${slug}/`);
  return [
    ...below("colours", colours.keys()),
    ...below("pigments", pigments.keys()),
    ...below("answers", answers.keys()),
  ];
}

/**
 * Photographs that the process is asked for before the first of them has come, so that it has something to do while
 * sheets are worked out; it does one after the other, and of those that wait it holds the file. Our own choice.
 */
const ASKED_AHEAD = 16;

/** Photographs in a process that ends with them: what their pixels took is free again for the pages. */
async function withPicturesOf(loaded: LoadedRecords, cache: WorkCache): Promise<LoadedRecords> {
  const beside = workProcess();
  try {
    const read = withPhotographs(loaded, cache, "pictures, too", {
      ahead: ASKED_AHEAD,
      made: async (asked) => beside.ask("photograph", asked),
    });
    // Whoever waits for it below is told what stopped it.
    read.catch(() => undefined);
    if (beside.isBegun() && loaded.records !== undefined) await workAhead(loaded.records, cache);
    return await read;
  } finally {
    beside.end();
  }
}

const SHAPED: Origin = { modules: ["lib/print/kept-words.ts"], inputs: "shaped words" };

/** Words as the newest build's papers had them shaped, for the thread that draws. */
function wordsBefore(cache: WorkCache): Uint8Array | null {
  const key = keyOf(cache, SHAPED);
  return (key === undefined ? undefined : readResult(cache, key)) ?? null;
}

/** Those of one thread: where there are more, the words that it was not asked for are shaped again. */
async function keepWords(threads: WorkThreads, cache: WorkCache): Promise<void> {
  const key = keyOf(cache, SHAPED);
  if (key === undefined || !cache.keeps || !threads.areThere) return;
  const words = await threads.ask("words", null).result;
  if (words !== null) writeResult(cache, key, words);
}

/** Of one folder's site that is made again and again only what was edited is parsed. */
const parsers = keptParsers();

/**
 * Write the whole site and the workshop's pages of a content folder into a folder each, unless something found in the records stops it.
 */
export async function madeSite(
  task: SiteTask,
  cache: WorkCache,
  tell: SiteTelling,
): Promise<SiteReport> {
  parsers.begin(cache);
  const loaded = loadRecords(task.contentDir, process.cwd(), latestDate(task.date), parsers);
  const count = loaded.records?.colours.size ?? 0;
  const threads = task.kind === "paper" && count >= WORTH_A_THREAD ? workThreads() : WORKED_HERE;
  // A thread gets ready while sheets are worked out: hardly any edit of records is on no paper.
  threads.ask("ready", wordsBefore(cache));
  try {
    return await madeBeside(threads, loaded, task, cache, tell);
  } finally {
    await threads.end();
  }
}

async function madeBeside(
  threads: WorkThreads,
  loaded: LoadedRecords,
  {
    contentDir,
    date,
    base,
    strict,
    claims,
    dir,
    workshopDir,
    kind,
    earlierDir,
    earlierWorkshopDir,
    since,
  }: SiteTask,
  cache: WorkCache,
  tell: SiteTelling,
): Promise<SiteReport> {
  const diagnostics: Diagnostic[] = [];
  const isStopped = (found: readonly Diagnostic[]): boolean => {
    diagnostics.push(...found);
    tell.complaints(found);
    return found.some(({ severity }) => severity === "error" || (strict && severity === "warning"));
  };
  const stopped = (): SiteReport => ({ diagnostics, sheetCount: undefined });

  const cardsBefore = since === undefined ? printedCards(contentDir) : earlierCards(since);
  const { records: asWritten, diagnostics: ofRecords } = await withPicturesOf(loaded, cache);
  if (isStopped(ofRecords) || asWritten === undefined) return stopped();
  const records = recordsBelow(asWritten, base);
  const sheets = records.colours.size === 1 ? "1 sheet" : `${records.colours.size} sheets`;
  tell.recorded?.(recordFolders(records));
  tell.progress(`working out ${sheets}`);
  const {
    site: onScreen,
    workshop,
    warnings: ofSheets,
    paths,
  } = siteOf(
    records,
    printedDate(date, records.newestDate),
    cache,
    since === undefined ? undefined : (folder) => earlierState(since, folder),
  );
  const ofCards =
    kind === "paper"
      ? allLanguages(onScreen).flatMap(({ prints }) => prints?.laidOut().warnings ?? [])
      : [];
  if (
    isStopped([
      ...claimsAs(claims, ofSheets),
      ...ofCards,
      ...addressFaults(records, paths, [
        ...keptManifests(contentDir),
        ...(since === undefined ? [] : [since]),
      ]),
    ])
  )
    return stopped();
  if (kind === "paper") tell.progress(`printing ${sheets}`);
  const inFolder = (whole: Site): Site => inOneFolder(whole, records.workshop.siteAddress);
  const written = writtenFiles(dir, earlierDir, knownFiles(cache, "site", kind));
  const papers =
    kind === "paper"
      ? askedPapers(onScreen, { ...written, previousDir: earlierDir, cache, threads })
      : undefined;
  // What a thread has drawn by now is heard: the range is asked for as soon as all its sheets are there.
  await turn();
  const later: LaterSite | undefined = papers && {
    isWaiting: papers.isWaiting,
    whole: async () => {
      const { site: whole } = await papers.printed();
      await keepWords(threads, cache);
      // Their memory is wanted for pages.
      await threads.end();
      return inFolder(whole);
    },
  };
  const site = inFolder(onScreen);
  tell.progress(`writing ${site.pages.length} pages`);
  const { served } = tell;
  const ofSite = await begunSite(site, {
    output: "site",
    kind,
    dir,
    earlierDir,
    cache,
    served,
    written,
    threads,
    ...(later && { later }),
  });
  const wanted = await served?.wanted();
  await ofSite.pages(wanted?.site ?? []);
  const beginWorkshop = async (): Promise<BegunSite> => {
    const own = workshop({ isPrinted: kind === "paper", printedCards: cardsBefore });
    const [to, earlier] = [workshopDir, earlierWorkshopDir];
    const begun = await begunSite(own, {
      output: "workshop",
      kind,
      dir: to,
      earlierDir: earlier,
      cache,
      served,
    });
    await begun.pages(wanted?.workshop ?? []);
    return begun;
  };
  // Where somebody looks at the workshop's pages they come before the site's others.
  const isLookedAt = wanted !== undefined && wanted.workshop.length > 0;
  const sooner = isLookedAt ? await beginWorkshop() : undefined;
  await ofSite.sooner();
  await (sooner ?? (await beginWorkshop())).rest();
  // What waits for paper comes last: it is drawn meanwhile.
  await ofSite.rest();
  for (const { keepSteps } of allLanguages(onScreen)) keepSteps?.();
  parsers.keep(cache);
  clearResults(cache);
  return { diagnostics, sheetCount: site.sheetCount };
}
