import { join } from "node:path";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { contentHash } from "../kept/content-hash.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import { certain } from "../quantities/at.ts";
import {
  askedCards,
  askedFormers,
  askedRange,
  askedSheet,
  type Paper,
  type Printing,
} from "./asked-papers.ts";
import { keptPapers } from "./kept-papers.ts";
import { papersBeside, withPapers } from "./pages-with-papers.ts";
import { programKey, sheetKey, soonerSheetKey } from "./paper-keys.ts";
import type { BinaryFile, PackedSheet, Site } from "./site.ts";
import { WORKED_HERE, type WorkThreads } from "./work-threads.ts";

/** A site whose papers are asked of the threads, and come while other things are made. */
export interface AskedPapers {
  /** Whether a page tells of a paper, so that it can be made only once that is there. */
  readonly isWaiting: (page: string) => boolean;
  /** The site that tells of its papers, once all are there; what no thread has begun is drawn here. To be asked once. */
  readonly printed: () => Promise<PrintedSite>;
}

/** A site that tells of its papers, which have been put where they go. */
export interface PrintedSite {
  readonly site: Site;
  readonly warnings: readonly Diagnostic[];
  readonly papers: readonly Paper[];
  /** By the folder of another language. */
  readonly inLanguages: ReadonlyMap<string, readonly Paper[]>;
}

/** How papers are asked for, and where they go. */
export interface AskingPapers extends Pick<Printing, "threads" | "put" | "bring" | "cache"> {
  /** The output that will be replaced; need not exist. */
  readonly previousDir: string;
}

/**
 * A site with its PDFs, their bytes in it: a sheet for each colour, and the range. One that would come
 * out the same as in the earlier output is taken from there; the same bytes either way.
 * @param previousDir the output that will be replaced; need not exist.
 * @param cache tells what was drawn before: without it nothing is taken from there.
 */
export async function printedSite(
  site: Site,
  previousDir: string,
  cache?: WorkCache,
  threads: WorkThreads = WORKED_HERE,
): Promise<Pick<PrintedSite, "site" | "warnings">> {
  const files = new Map<string, BinaryFile>();
  const put = (file: BinaryFile): string => {
    files.set(file.path, file);
    return contentHash([file.bytes]).toString("base64url");
  };
  const printed = await askedPapers(site, { previousDir, cache, threads, put }).printed();
  const withBytes = (one: Site, folder: string, papers: readonly Paper[]): Site => ({
    ...one,
    papers: papers.map(({ path }) => ({ ...certain(files.get(`${folder}${path}`)), path })),
  });
  return {
    site: {
      ...withBytes(printed.site, "", printed.papers),
      translated: (printed.site.translated ?? []).map(({ folder, site: other }) => ({
        folder,
        site: withBytes(other, folder, printed.inLanguages.get(folder) ?? []),
      })),
    },
    warnings: printed.warnings,
  };
}

/** Sheets of edited records are mostly drawn anew: by then they are, while the others are looked through. */
function editedFirst(sheets: readonly PackedSheet[]): PackedSheet[] {
  return [...sheets].sort((one, other) => Number(other.isEdited) - Number(one.isEdited));
}

/** The same in two steps, between which the threads draw. */
export function askedPapers(
  site: Site,
  { previousDir, cache, threads, put, bring }: AskingPapers,
): AskedPapers {
  const { prints } = site;
  if (prints === undefined)
    return {
      isWaiting: () => false,
      printed: () => Promise.resolve({ site, warnings: [], papers: [], inLanguages: new Map() }),
    };
  const drawnBefore = keptPapers(cache);
  const printing: Printing = {
    prints,
    program: programKey(),
    before: { ...drawnBefore, dir: previousDir },
    cache,
    threads,
    put,
    bring,
  };
  // Cards first: laid out they take more memory than sheets do, as long as they wait to be drawn.
  const further = [...askedCards(printing), ...askedFormers(printing)];
  const asked = new Map(
    editedFirst(prints.sheets).map((sheet) => {
      const sooner = soonerSheetKey(sheet, printing.program);
      const key = drawnBefore.keyOf(sooner, () => sheetKey(sheet, printing.program));
      return [sheet.slug, askedSheet(sheet, key, printing)];
    }),
  );
  const sheets = prints.sheets.map(({ slug }) => certain(asked.get(slug)));
  const range = askedRange(sheets, printing);
  const translated = (site.translated ?? []).map(({ folder, site: one }) => ({
    folder,
    ...askedPapers(one, {
      previousDir: join(previousDir, folder),
      cache,
      threads,
      put: ({ path, ...file }) => put({ ...file, path: `${folder}${path}` }),
      bring: bring && ((path, hash) => bring(`${folder}${path}`, hash)),
    }),
  }));
  const paths = new Set([...sheets, ...range, ...further].map(({ path }) => path));
  const rangePaths = range.map(({ path }) => path);
  const isOwnWaiting = (page: string): boolean =>
    papersBeside(page, rangePaths).some((path) => paths.has(path));
  return {
    isWaiting: (page) =>
      isOwnWaiting(page) ||
      translated.some(
        ({ folder, isWaiting }) => page.startsWith(folder) && isWaiting(page.slice(folder.length)),
      ),
    printed: async () => {
      const papers: Paper[] = [];
      // Taken out of their lists: what they were drawn from takes more memory than they do.
      for (const asked of [sheets, range, further])
        for (const { drawn } of asked.splice(0)) papers.push(await drawn());
      drawnBefore.keep(papers);
      const own = withPapers(site, isOwnWaiting, papers, rangePaths, prints);
      const warnings = [...prints.laidOut().warnings];
      const inLanguages = new Map<string, readonly Paper[]>();
      const others: NonNullable<Site["translated"]>[number][] = [];
      for (const { folder, printed } of translated) {
        const one = await printed();
        others.push({ folder, site: one.site });
        inLanguages.set(folder, one.papers);
        warnings.push(...one.warnings);
      }
      return { site: { ...own, translated: others }, warnings, papers, inLanguages };
    },
  };
}
