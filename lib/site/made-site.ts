import { setImmediate as turn } from "node:timers/promises";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { loadRecords, type LoadedRecords } from "../records/load-records.ts";
import { keptParsers } from "../records/kept-parsers.ts";
import { withPhotographs } from "../photographs/taken-photographs.ts";
import type { Records } from "../records/records.ts";
import { recordsBelow } from "../records/site-base.ts";
import { layCardsAhead } from "./cards-ahead.ts";
import { claimsAs } from "./claim-severity.ts";
import { earlierCards, earlierState } from "./earlier-manifest.ts";
import { printedCards } from "./printed-cards.ts";
import { allLanguages, inOneFolder } from "./one-folder.ts";
import { latestDate, printedDate } from "./printed-date.ts";
import { paperThreads, type PaperThreads } from "./paper-threads.ts";
import { askedPapers } from "./printed-site.ts";
import { siteOf } from "./site-of-records.ts";
import { addressFaults, keptManifests } from "./site-addresses.ts";
import type { SiteReport, SiteTask, SiteTelling } from "./site-task.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import { clearResults } from "../kept/kept-result.ts";
import type { Site } from "./site.ts";
import { begunSite, type BegunSite, type LaterSite } from "./write-site.ts";
import { workAhead } from "./worked-ahead.ts";
import { workProcess } from "./work-process.ts";
import { knownFiles } from "./known-files.ts";
import { writtenFiles } from "./written-files.ts";

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

/** Of one folder's site that is made again and again only what was edited is parsed. */
const parsers = keptParsers();

/**
 * Write the whole site and the workshop's pages of a content folder into a folder each, unless something found in the records stops it.
 */
export async function madeSite(
  task: SiteTask,
  cache: WorkCache,
  tell: SiteTelling,
  threads: PaperThreads = paperThreads(task, cache),
): Promise<SiteReport> {
  try {
    parsers.begin(cache);
    const loaded = loadRecords(task.contentDir, process.cwd(), latestDate(task.date), parsers);
    // Begun by now at the latest, it gets ready while sheets are worked out.
    if (loaded.records !== undefined) threads.of(loaded.records.colours.size);
    return await madeBeside(threads, loaded, task, cache, tell);
  } finally {
    await threads.end();
  }
}

async function madeBeside(
  ofPaper: PaperThreads,
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
  const threads = ofPaper.of(records.colours.size);
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
  const ofClaims = claimsAs(claims, ofSheets);
  if (kind === "paper" && ofClaims.every(({ severity }) => severity !== "error"))
    for (const one of allLanguages(onScreen)) await layCardsAhead(one, cache, threads);
  const ofCards =
    kind === "paper"
      ? allLanguages(onScreen).flatMap(({ prints }) => prints?.laidOut().warnings ?? [])
      : [];
  if (
    isStopped([
      ...ofClaims,
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
    whole: async () => inFolder((await papers.printed()).site),
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
  // Papers and pictures are asked for by now: when the last of them is drawn, what their threads hold is free for the pages that come after.
  const threadsEnded = threads.atRest().then(ofPaper.keepWords).then(ofPaper.end);
  threadsEnded.catch(() => undefined);
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
  // What waits for paper comes last: it is drawn meanwhile, and what is known by now is kept.
  const keepSteps = (): void => {
    for (const one of allLanguages(onScreen)) one.keepSteps?.();
  };
  keepSteps();
  parsers.keep(cache);
  await ofSite.rest();
  await threadsEnded;
  keepSteps();
  clearResults(cache);
  return { diagnostics, sheetCount: site.sheetCount };
}
