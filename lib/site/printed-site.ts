import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { AnyPageView } from "../blocks/page-kinds.ts";
import { byFamily, orderPath } from "../pages/catalogue-pages.ts";
import { formerTexts } from "../pages/former-page.ts";
import type { DownloadView } from "../present/views.ts";
import { PAPER_SIZES } from "../print/card-size.ts";
import { cardsFolder } from "../print/cards-page.ts";
import { cardsPdf } from "../print/cards-pdf.ts";
import { formerPdf } from "../print/former-pdf.ts";
import { rangePdf } from "../print/range-pdf.ts";
import { laidOutSheet, type LaidOutSheet, type SheetToPrint } from "../print/sheet-paper.ts";
import { sheetPdf } from "../print/sheet-pdf.ts";
import { contentKey } from "../sheet/revision.ts";
import { formerColours } from "./former-sheets.ts";
import { keptPapers, type KeptPapers } from "./kept-papers.ts";
import { cardsKey, programKey, rangeKey, sheetKey, soonerSheetKey } from "./paper-keys.ts";
import { rangeParts } from "./range-papers.ts";
import { pageWith } from "./page-entry.ts";
import { manifestWithPapers, type PaperState } from "./published-data.ts";
import type { BinaryFile, RangeToPrint, Site } from "./site.ts";
import type { KeptFolder } from "../kept/work-cache.ts";

/** The page that leads to the range on paper. */
const GRID_PATH = orderPath("grid");

const SHEET_MODULES = ["lib/print/sheet-paper.ts", "lib/words/languages.ts"] as const;

interface Paper extends PaperState, BinaryFile {}

/**
 * A site with its PDFs: a sheet for each colour, and the range. One that would come
 * out the same as in the earlier output is taken from there; the same bytes either way.
 * @param previousDir the output that will be replaced; need not exist.
 * @param cache tells what was drawn before: without it nothing is taken from there.
 */
export function printedSite(
  site: Site,
  previousDir: string,
  cache?: KeptFolder,
): { readonly site: Site; readonly warnings: readonly Diagnostic[] } {
  const { prints } = site;
  if (prints === undefined) return { site, warnings: [] };
  const drawnBefore = keptPapers(cache);
  const before: PreviousPapers = { dir: previousDir, drawnHash: drawnBefore.drawnHash };
  const program = programKey();
  const keyOf = (sheet: SheetToPrint): string =>
    drawnBefore.keyOf(soonerSheetKey(sheet, program), () => sheetKey(sheet, program));
  const layouts = new Map<SheetToPrint, LaidOutSheet>();
  const laidOut = (sheet: SheetToPrint): LaidOutSheet => {
    const paper = paperOf(prints.context);
    const own =
      layouts.get(sheet) ??
      prints.context.kept({ modules: SHEET_MODULES, inputs: { key: keyOf(sheet), paper } }, () =>
        laidOutSheet(sheet, paper),
      );
    layouts.set(sheet, own);
    return own;
  };
  const drawn = prints.sheets.map((sheet) => {
    const path = `colours/${sheet.slug}/sheet.pdf`;
    const key = keyOf(sheet);
    const paper =
      kept(path, key, before) ??
      made(path, key, sheetPdf(sheet, paperOf(prints.context), laidOut(sheet)));
    return { paper, sheet };
  });
  const range = printedRange(drawn, laidOut, prints, program, before);
  const papers = [
    ...drawn.map(({ paper }) => paper),
    ...range,
    ...printedCards(prints, program, before),
    ...printedFormers(prints, program, before),
  ];
  drawnBefore.keep(papers);
  const translated = (site.translated ?? []).map(({ folder, site: one }) => ({
    folder,
    ...printedSite(one, join(previousDir, folder), cache),
  }));
  return {
    warnings: [...prints.laidOut().warnings, ...translated.flatMap(({ warnings }) => warnings)],
    site: {
      ...withPapers(site, papers, range, prints),
      translated: translated.map(({ folder, site: one }) => ({ folder, site: one })),
    },
  };
}

function paperOf({ records: { workshop } }: RangeToPrint["context"]): {
  readonly widthMm: number;
  readonly heightMm: number;
} {
  return PAPER_SIZES[workshop.paper ?? "A4"];
}

function printedRange(
  drawn: readonly { readonly paper: Paper; readonly sheet: SheetToPrint }[],
  laidOut: (sheet: SheetToPrint) => LaidOutSheet,
  { context }: RangeToPrint,
  program: string,
  before: PreviousPapers,
): Paper[] {
  const bySlug = new Map(drawn.map((one) => [one.sheet.slug, one]));
  const families = byFamily(context.sheets, context.words.language).map(([family, members]) => ({
    name: context.words.families[family],
    items: members.flatMap((member) => bySlug.get(member.sheet.slug) ?? []),
  }));
  return rangeParts(families).map(({ path, families: part }) => {
    const key = rangeKey(
      part.map(({ name, items }) => [name, items.map(({ paper }) => paper.key)]),
      context,
      program,
    );
    return (
      kept(path, key, before) ??
      made(
        path,
        key,
        rangePdf(
          part.map(({ name, items }) => ({
            name,
            sheets: items.map(({ sheet }) => ({
              slug: sheet.slug,
              caution: sheet.caution,
              context: sheet.context,
              laidOut: laidOut(sheet),
            })),
          })),
          context,
          paperOf(context),
        ),
      )
    );
  });
}

/** A PDF of cards for each size. */
function printedCards(
  { context, laidOut }: RangeToPrint,
  program: string,
  before: PreviousPapers,
): Paper[] {
  const { workshop } = context.records;
  return laidOut().sizes.flatMap(({ size, count, marks, laid }): Paper[] => {
    const path = `${cardsFolder(size, context)}cards.pdf`;
    if (count === 0) return [];
    const key = cardsKey(marks, size, context, program);
    return [
      kept(path, key, before) ??
        made(
          path,
          key,
          cardsPdf(laid(), size, {
            workshop: workshop.name,
            date: context.date,
            words: context.words,
          }).bytes,
        ),
    ];
  });
}

/** A page at the address of each sheet that is gone. */
function printedFormers(
  { context }: RangeToPrint,
  program: string,
  before: PreviousPapers,
): Paper[] {
  return formerColours(context).map(({ slug, former }) => {
    const path = `colours/${slug}/sheet.pdf`;
    const texts = formerTexts(former, context);
    const { records, date, words } = context;
    const key = contentKey(
      JSON.stringify([program, texts, records.workshop, date, words.language]),
    );
    return kept(path, key, before) ?? made(path, key, formerPdf(texts, context, paperOf(context)));
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
function papersBeside(page: string, range: readonly Paper[]): string[] {
  const folder = page.replace(/(?:bench\/)?index\.html$/, "");
  return [
    `${folder}sheet.pdf`,
    `${folder}cards.pdf`,
    ...(page === GRID_PATH ? range.map(({ path }) => path) : []),
  ];
}

/** Pages that lead to the papers, with their sizes; the manifest that knows of them. */
function withPapers(
  site: Site,
  papers: readonly Paper[],
  range: readonly Paper[],
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
            link(part.path, `../${part.path}`, range.length === 1 ? text.range : text.rangePart),
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
      pageWith(
        page,
        ({ site: frame, view }) => ({ site: frame, view: withLinks(page.path, view) }),
        papersBeside(page.path, range).map((path) => `${path} ${sizes.get(path) ?? ""}`),
      ),
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
