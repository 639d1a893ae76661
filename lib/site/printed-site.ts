import { join } from "node:path";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { WorkCache } from "../kept/work-cache.ts";
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
import type { Site } from "./site.ts";
import { WORKED_HERE, type WorkThreads } from "./work-threads.ts";

/** A site whose papers are asked of the threads, and come while other things are made. */
export interface AskedPapers {
  /** Whether a page tells of a paper, so that it can be made only once that is there. */
  readonly isWaiting: (page: string) => boolean;
  /** The site with its papers, once all are there; what no thread has begun is drawn here. To be asked once. */
  readonly printed: () => Promise<PrintedSite>;
}

export interface PrintedSite {
  readonly site: Site;
  readonly warnings: readonly Diagnostic[];
}

/**
 * A site with its PDFs: a sheet for each colour, and the range. One that would come
 * out the same as in the earlier output is taken from there; the same bytes either way.
 * @param previousDir the output that will be replaced; need not exist.
 * @param cache tells what was drawn before: without it nothing is taken from there.
 */
export async function printedSite(
  site: Site,
  previousDir: string,
  cache?: WorkCache,
  threads: WorkThreads = WORKED_HERE,
): Promise<PrintedSite> {
  return askedPapers(site, previousDir, cache, threads).printed();
}

/** The same in two steps, between which the threads draw. */
export function askedPapers(
  site: Site,
  previousDir: string,
  cache: WorkCache | undefined,
  threads: WorkThreads,
): AskedPapers {
  const { prints } = site;
  if (prints === undefined)
    return { isWaiting: () => false, printed: () => Promise.resolve({ site, warnings: [] }) };
  const drawnBefore = keptPapers(cache);
  const printing: Printing = {
    prints,
    program: programKey(),
    before: { dir: previousDir, drawnHash: drawnBefore.drawnHash },
    cache,
    threads,
  };
  const sheets = prints.sheets.map((sheet) =>
    askedSheet(
      sheet,
      drawnBefore.keyOf(soonerSheetKey(sheet, printing.program), () =>
        sheetKey(sheet, printing.program),
      ),
      printing,
    ),
  );
  const range = askedRange(sheets, printing);
  const others = [...askedCards(printing), ...askedFormers(printing)];
  const translated = (site.translated ?? []).map(({ folder, site: one }) => ({
    folder,
    ...askedPapers(one, join(previousDir, folder), cache, threads),
  }));
  const paths = new Set([...sheets, ...range, ...others].map(({ path }) => path));
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
      for (const asked of [sheets, range, others])
        for (const { drawn } of asked.splice(0)) papers.push(await drawn());
      drawnBefore.keep(papers);
      const own = withPapers(site, isOwnWaiting, papers, rangePaths, prints);
      const warnings = [...prints.laidOut().warnings];
      const inLanguages: NonNullable<Site["translated"]>[number][] = [];
      for (const { folder, printed } of translated) {
        const one = await printed();
        inLanguages.push({ folder, site: one.site });
        warnings.push(...one.warnings);
      }
      return { site: { ...own, translated: inLanguages }, warnings };
    },
  };
}
