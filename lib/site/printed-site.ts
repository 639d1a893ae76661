import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { deflateRawSync } from "node:zlib";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { AnyPageView } from "../blocks/page-kinds.ts";
import { keyOf, readResult, writeResult } from "../kept/kept-result.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import { byFamily, orderPath } from "../pages/catalogue-pages.ts";
import { formerTexts } from "../pages/former-page.ts";
import type { DownloadView } from "../present/views.ts";
import { PAPER_SIZES } from "../print/card-size.ts";
import { cardsFolder } from "../print/cards-page.ts";
import { formerPdf } from "../print/former-pdf.ts";
import type { PhotographOnPaper } from "../print/paper-photographs.ts";
import type { PagesOnPaper, SaidOnPaper, SheetPaper } from "../print/paper-work.ts";
import type { SheetToPrint } from "../print/sheet-paper.ts";
import type { PictureSizes } from "../records/taken-photograph.ts";
import { contentKey } from "../sheet/revision.ts";
import { formerColours } from "./former-sheets.ts";
import { keptPapers, type KeptPapers } from "./kept-papers.ts";
import { pageWith } from "./page-entry.ts";
import { cardsKey, programKey, rangeKey, sheetKey, soonerSheetKey } from "./paper-keys.ts";
import { manifestWithPapers, type PaperState } from "./published-data.ts";
import { rangeParts } from "./range-papers.ts";
import type { BinaryFile, RangeToPrint, Site } from "./site.ts";
import { WORKED_HERE, type AskedWork, type WorkThreads } from "./work-threads.ts";

/** The page that leads to the range on paper. */
const GRID_PATH = orderPath("grid");

const SHEET_MODULES = ["lib/print/sheet-paper.ts", "lib/words/languages.ts"] as const;

interface Paper extends PaperState, BinaryFile {}

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

/** What papers are drawn from, and by. */
interface Printing {
  readonly prints: RangeToPrint;
  readonly program: string;
  readonly before: PreviousPapers;
  readonly cache: WorkCache | undefined;
  readonly threads: WorkThreads;
}

/** A paper that is drawn by somebody, or was before. */
interface AskedPaper {
  readonly path: string;
  readonly key: string;
  /** By this thread, where no other has begun it. */
  readonly drawn: () => Paper | Promise<Paper>;
}

/** A sheet as it is laid out, or was before. */
type SheetLayout = AskedWork<Uint8Array>;

interface AskedSheet extends AskedPaper {
  readonly sheet: SheetToPrint;
  /** For the range. */
  readonly layout: () => SheetLayout;
}

function paperOf({ records: { workshop } }: RangeToPrint["context"]): {
  readonly widthMm: number;
  readonly heightMm: number;
} {
  return PAPER_SIZES[workshop.paper ?? "A4"];
}

function saidOf({ records: { workshop }, date, words }: RangeToPrint["context"]): SaidOnPaper {
  // Followed records are no plain data; their values are.
  return { workshop: { ...workshop }, date, language: words.language };
}

/** Photographs that some text names by their hashes. */
function photographsIn(
  names: (hash: string) => boolean,
  { records: { photographs } }: RangeToPrint["context"],
): PhotographOnPaper[] {
  const named = (
    one: PictureSizes | undefined,
  ): Pick<PictureSizes, "hash" | "paper"> | undefined =>
    one !== undefined && names(one.hash) ? { hash: one.hash, paper: one.paper } : undefined;
  return photographs.flatMap((photograph) => {
    const [pictures, inReadColour] = [named(photograph.pictures), named(photograph.inReadColour)];
    return pictures === undefined && inReadColour === undefined
      ? []
      : [{ ...(pictures && { pictures }), ...(inReadColour && { inReadColour }) }];
  });
}

function askedSheet(
  sheet: SheetToPrint,
  key: string,
  { prints: { context }, before, cache, threads }: Printing,
): AskedSheet {
  const path = `colours/${sheet.slug}/sheet.pdf`;
  const paper = paperOf(context);
  const layoutKey = keyOf(cache, { modules: SHEET_MODULES, inputs: { key, paper } });
  const laidBefore = (): Uint8Array | undefined =>
    cache && layoutKey !== undefined ? readResult(cache, layoutKey) : undefined;
  const asked = (): PagesOnPaper => {
    const pages = JSON.stringify({ sheet: sheet.sheet, bench: sheet.bench });
    return {
      slug: sheet.slug,
      // Packed: what waits to be drawn would take more memory than all that is drawn.
      pages: deflateRawSync(pages, { level: 1 }),
      caution: sheet.caution,
      said: saidOf(context),
      paper,
      photographs: photographsIn((hash) => pages.includes(hash), context),
    };
  };
  const keptOnceDone = (layout: SheetLayout): SheetLayout => {
    if (cache && layoutKey !== undefined)
      void layout.result.then(
        (bytes) => writeResult(cache, layoutKey, bytes),
        () => undefined,
      );
    return layout;
  };
  let layout: SheetLayout | undefined;
  const own = {
    path,
    key,
    sheet,
    layout: () => {
      const bytes = layout === undefined ? laidBefore() : undefined;
      layout ??=
        bytes === undefined ? keptOnceDone(threads.ask("layout", asked())) : alreadyThere(bytes);
      return layout;
    },
  };
  const earlier = kept(path, key, before);
  if (earlier !== undefined) return { ...own, drawn: () => earlier };
  const laidOut = laidBefore();
  const work = threads.ask("sheet", { ...asked(), ...(laidOut && { laidOut }) });
  layout = laidOut === undefined ? keptOnceDone(layoutIn(work)) : alreadyThere(laidOut);
  return { ...own, drawn: async () => made(path, key, (await work.here()).pdf) };
}

function alreadyThere<R>(value: R): AskedWork<R> {
  const result = Promise.resolve(value);
  return { result, here: () => result };
}

function layoutIn({ result, here }: AskedWork<SheetPaper>): SheetLayout {
  const laidOut = result.then((sheet) => sheet.laidOut);
  // Whoever waits for the sheet is told what stopped it.
  laidOut.catch(() => undefined);
  return { result: laidOut, here: async () => (await here()).laidOut };
}

function askedRange(
  sheets: readonly AskedSheet[],
  { prints: { context }, program, before, threads }: Printing,
): AskedPaper[] {
  const bySlug = new Map(sheets.map((one) => [one.sheet.slug, one]));
  const families = byFamily(context.sheets, context.words.language).map(([family, members]) => ({
    name: context.words.families[family],
    items: members.flatMap((member) => bySlug.get(member.sheet.slug) ?? []),
  }));
  return rangeParts(families).map(({ path, families: part }): AskedPaper => {
    const key = rangeKey(
      part.map(({ name, items }) => [name, items.map((one) => one.key)]),
      context,
      program,
    );
    const earlier = kept(path, key, before);
    if (earlier !== undefined) return { path, key, drawn: () => earlier };
    const asking = askedPart(part, context, threads);
    asking.catch(() => undefined);
    return {
      path,
      key,
      drawn: async () => {
        for (const { layout } of part.flatMap(({ items }) => items)) await layout().here();
        return made(path, key, await (await asking).here());
      },
    };
  });
}

/** Asked as soon as each of its sheets is laid out. */
async function askedPart(
  part: readonly { readonly name: string; readonly items: readonly AskedSheet[] }[],
  context: RangeToPrint["context"],
  threads: WorkThreads,
): Promise<AskedWork<Uint8Array>> {
  const families = await Promise.all(
    part.map(async ({ name, items }) => ({
      name,
      sheets: await Promise.all(
        items.map(async ({ sheet: { slug, caution }, layout }) => ({
          slug,
          caution,
          laidOut: await layout().result,
        })),
      ),
    })),
  );
  return threads.ask("range", {
    families,
    said: saidOf(context),
    paper: paperOf(context),
    photographs: photographsIn(() => true, context),
  });
}

/** A PDF of cards for each size. */
function askedCards({
  prints: { context, laidOut },
  program,
  before,
  threads,
}: Printing): AskedPaper[] {
  const { date, words } = context;
  const { name: workshop } = context.records.workshop;
  return laidOut().sizes.flatMap(({ size, count, marks, laid }): AskedPaper[] => {
    const path = `${cardsFolder(size, context)}cards.pdf`;
    if (count === 0) return [];
    const key = cardsKey(marks, size, context, program);
    const earlier = kept(path, key, before);
    if (earlier !== undefined) return [{ path, key, drawn: () => earlier }];
    const said = { workshop, date, language: words.language };
    const asked = threads.ask("cards", { laid: laid(), size, said });
    return [{ path, key, drawn: async () => made(path, key, await asked.here()) }];
  });
}

/** A page at the address of each sheet that is gone. */
function askedFormers({ prints: { context }, program, before }: Printing): AskedPaper[] {
  return formerColours(context).map(({ slug, former }) => {
    const path = `colours/${slug}/sheet.pdf`;
    const texts = formerTexts(former, context);
    const { records, date, words } = context;
    const key = contentKey(
      JSON.stringify([program, texts, records.workshop, date, words.language]),
    );
    return {
      path,
      key,
      drawn: () =>
        kept(path, key, before) ?? made(path, key, formerPdf(texts, context, paperOf(context))),
    };
  });
}

interface PreviousPapers extends Pick<KeptPapers, "drawnHash"> {
  readonly dir: string;
}

/** The earlier file, when it is what was drawn from the same. */
function kept(path: string, key: string, { dir, drawnHash }: PreviousPapers): Paper | undefined {
  try {
    const file = join(dir, path);
    if (!statSync(file).isFile()) return undefined;
    const bytes = readFileSync(file);
    const fileHash = drawnHash({ key, bytes });
    return fileHash === undefined ? undefined : { ...made(path, key, bytes), fileHash };
  } catch {
    return undefined;
  }
}

function made(path: string, key: string, bytes: Uint8Array): Paper {
  return { path, key, hash: contentKey(bytes), bytes };
}

/** Papers that a page may lead to. */
function papersBeside(page: string, range: readonly string[]): string[] {
  const folder = page.replace(/(?:bench\/)?index\.html$/, "");
  return [`${folder}sheet.pdf`, `${folder}cards.pdf`, ...(page === GRID_PATH ? range : [])];
}

/** Pages that lead to the papers, with their sizes; the manifest that knows of them. */
function withPapers(
  site: Site,
  isWaiting: (page: string) => boolean,
  papers: readonly Paper[],
  range: readonly string[],
  { context: { words } }: RangeToPrint,
): Site {
  const text = words.pages.sheetPaper.downloads;
  const sizes = new Map(papers.map(({ path, bytes }) => [path, text.kilobytes(bytes.length)]));
  const link = (path: string, href: string, note: (size: string) => string): DownloadView[] => {
    const size = sizes.get(path);
    return size === undefined
      ? []
      : [{ text: path.split("/").at(-1) ?? path, href, note: note(size) }];
  };
  const withLinks = (path: string, view: AnyPageView): AnyPageView => {
    if (view.kind === "sheet")
      return {
        ...view,
        actions: [
          ...link(path.replace("index.html", "sheet.pdf"), "sheet.pdf", text.sheet).map(
            ({ href }) => ({ text: words.pages.sheetPage.print, href }),
          ),
          ...view.actions,
        ],
      };
    if (view.kind === "bench")
      return {
        ...view,
        downloads: [
          ...link(path.replace("bench/index.html", "sheet.pdf"), "../sheet.pdf", text.sheet),
          ...view.downloads,
        ],
      };
    if (view.kind === "cards")
      return {
        ...view,
        downloads: [
          ...link(path.replace("index.html", "cards.pdf"), "cards.pdf", words.pages.cards.page.pdf),
          ...view.downloads,
        ],
      };
    if (path === GRID_PATH && view.kind === "catalogue-grid")
      return {
        ...view,
        downloads: [
          ...range.flatMap((part) =>
            link(part, `../${part}`, range.length === 1 ? text.range : text.rangePart),
          ),
          ...view.downloads,
        ],
      };
    return view;
  };
  return {
    ...site,
    papers,
    pages: site.pages.map((page) =>
      isWaiting(page.path)
        ? pageWith(
            page,
            ({ site: frame, view }) => ({ site: frame, view: withLinks(page.path, view) }),
            papersBeside(page.path, range).map((path) => `${path} ${sizes.get(path) ?? ""}`),
          )
        : page,
    ),
    files: site.files.map((file) =>
      file.path === "manifest.json"
        ? {
            ...file,
            text: manifestWithPapers(
              file.text,
              papers.map(({ path, key, hash }) => ({ path, key, hash })),
            ),
          }
        : file,
    ),
  };
}
