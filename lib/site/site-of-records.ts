import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { cautionLine } from "../pages/caution-line.ts";
import { benchPath } from "../pages/bench-page.ts";
import type { PageContext } from "../pages/page-context.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { shownColour } from "../pages/comparison-cells.ts";
import { allPagePaths, sitePages, type AnyPageView } from "./all-pages.ts";
import { sitePictures } from "../pictures/site-pictures.ts";
import { hostFiles } from "./host-files.ts";
import { readingsOf, readingsOfRange } from "./exchange-files.ts";
import { mixingFiles, otherPaintFiles } from "./mixing-files.ts";
import { searchFiles } from "./search-files.ts";
import { masstoneCsv } from "./masstone-csv.ts";
import type { Records } from "../records/records.ts";
import type { ScreenPicture } from "../records/taken-photograph.ts";
import { recordSchemas } from "../records/json-schemas.ts";
import { catalogueCsv } from "./catalogue-csv.ts";
import { figuresCsv } from "./figures-csv.ts";
import { formerSheets } from "./former-sheets.ts";
import {
  catalogueJson,
  manifestJson,
  sheetJson,
  stated,
  statedOfSheet,
  workshopManifestJson,
} from "./published-data.ts";
import { dataSchemas } from "./data-schemas.ts";
import { certain } from "../quantities/at.ts";
import { keptBesideProgram } from "../kept/beside-program.ts";
import { contentHash } from "../kept/content-hash.ts";
import { followed } from "../kept/followed.ts";
import { madeStep } from "../kept/kept-steps.ts";
import { readWhenAsked } from "../kept/reads.ts";
import { contentKey } from "../sheet/revision.ts";
import { dataFilesOf } from "./data-files.ts";
import { pageEntry, pageWith, type PageEntry, type PagesKept } from "./page-entry.ts";
import type { BinaryFile, DataFile, PackedSheet, Site } from "./site.ts";
import { MANIFEST } from "./output-manifest.ts";
import { labelsPdf } from "../print/labels-pdf.ts";
import { packageSizes } from "../print/package-size.ts";
import { rangeLabels, type RangeLabels } from "../print/range-labels.ts";
import { shelfCards } from "../print/range-cards.ts";
import { reprintList, type EarlierCard } from "../print/reprint-list.ts";
import { labelMatter, LABELS_PDF, type LabelMatter } from "../workshop/labels-page.ts";
import { workshopPages } from "../workshop/workshop-pages.ts";
import { hazardNotes } from "./hazard-notes.ts";
import { diagnosticsOf, workedSites, type WorkedSite } from "./site-context.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import { changesBetween } from "../changes/changes-between.ts";
import { publishedState, type PublishedState } from "../changes/published-state.ts";
import { allChanges, feed, FEED_PATH } from "./feed.ts";
import type { PagePaths } from "./site-addresses.ts";
import { sitemap } from "./sitemap.ts";

/**
 * A whole site worked out of checked records, and what contradicts itself; the workshop's own pages when they are asked for.
 * @param cache of first-principles figures; nothing is kept without it.
 * @param earlier what was published before in the folder of a language, "" or "de/", where that is known
 */
export function siteOf(
  records: Records,
  date: string | undefined,
  cache?: WorkCache,
  earlier: (folder: string) => PublishedState | undefined = () => undefined,
): {
  readonly site: Site;
  readonly workshop: (asked: WorkshopAsked) => Site;
  readonly warnings: readonly Diagnostic[];
  readonly paths: PagePaths;
} {
  const sites = workedSites(records, date, cache);
  const [worked, ...others] = sites;
  return {
    site: {
      ...siteOfWorked(worked, earlier("")),
      photographs: records.photographs.flatMap(({ pictures, inReadColour }) => [
        ...(pictures?.screen ?? []).map(photographFile),
        ...(inReadColour?.screen ?? []).map(photographFile),
      ]),
      translated: others.map((other) => ({
        folder: other.context.folder,
        site: siteOfWorked(other, earlier(other.context.folder)),
      })),
    },
    workshop: (asked) => workshopOfWorked(worked, date, asked),
    warnings: [
      ...diagnosticsOf(sites),
      ...hazardNotes(
        worked.sheets,
        worked.context.records,
        worked.context.words,
        worked.steps,
      ).filter(({ severity }) => severity !== "note"),
    ],
    paths: allPagePaths(sites),
  };
}

function photographFile({ path, fileHash, bytes }: ScreenPicture): BinaryFile {
  return {
    path,
    fileHash,
    get bytes() {
      return bytes();
    },
  };
}

/** Pages for Eleventy, data as text, and what may be printed. */
export function siteOfWorked(worked: WorkedSite, earlier?: PublishedState): Site {
  const { context } = worked;
  const states = readWhenAsked(() => stated(worked));
  const changes =
    earlier && allChanges(changesBetween(earlier, publishedState(states())), earlier.past, context);
  const atom = changes && feed(changes, context);
  const pages = sitePages(worked).map((page) => (atom === undefined ? page : withFeed(page)));
  const sheets = sheetsToPrint(worked, pages);
  const sheetOf = new Map(sheets.map((sheet) => [sheet.slug, sheet]));
  const filesOf = (what: string, made: () => readonly DataFile[]): readonly DataFile[] =>
    dataFilesOf(worked.steps, { name: `files of ${what}` }, made);
  const mixing = readWhenAsked(() => filesOf("mixing", () => mixingFiles(context)));
  function* files(): Generator<DataFile> {
    yield* dataFiles(worked, pages);
    yield* filesOf("paints beside those offered", () => otherPaintFiles(context));
    if (atom !== undefined) yield { path: FEED_PATH, text: atom };
  }
  return {
    base: context.records.siteBase,
    language: context.words.language,
    pages,
    files,
    manifests: () => [{ path: MANIFEST, text: manifestJson(worked, states(), changes) }],
    assets: mixing,
    keepSteps: worked.keepSteps,
    sheetCount: worked.published.length,
    pictures: () =>
      sitePictures((slug) => certain(sheetOf.get(slug)).sheet, context.answers, context),
    prints: {
      sheets,
      cards: () => worked.cards,
      laidOut: worked.laidOut,
      context: worked.context,
    },
  };
}

const LABEL_MODULES = [
  "lib/print/range-labels.ts",
  "lib/workshop/labels-page.ts",
  "lib/print/labels-pdf.ts",
  "lib/words/languages.ts",
] as const;

/** Every label of the range, and where it is printed all of them as a PDF. */
function printedLabels(
  { context }: WorkedSite,
  isPrinted: boolean,
): { readonly labels: RangeLabels; readonly pdf?: ReturnType<typeof labelsPdf> } {
  const { records, sheets, words, date, kept } = context;
  const labels = rangeLabels(sheets, packageSizes(records.workshop), context);
  const { runs } = labels;
  const { name: workshop } = records.workshop;
  const drawn = {
    modules: LABEL_MODULES,
    inputs: [runs, workshop, date ?? null, words.language],
  };
  return {
    labels,
    ...(isPrinted && runs.length > 0
      ? { pdf: kept(drawn, () => labelsPdf(runs, { workshop, date, words })) }
      : {}),
  };
}

/** What is said of the labels of the range, and their PDF, whose bytes are made only where the earlier output has another. */
function labelsOfRange(
  worked: WorkedSite,
  isPrinted: boolean,
): { readonly matter: LabelMatter; readonly papers: readonly BinaryFile[] } {
  const printed = readWhenAsked(() => printedLabels(worked, isPrinted));
  const { matter, fileHash } = madeStep(
    worked.steps,
    { modules: LABEL_MODULES, name: `what is said of labels ${isPrinted}` },
    () => {
      const { labels, pdf } = printed();
      return {
        matter: { ...labelMatter(labels), ...(pdf && { pdf: { pages: pdf.pages } }) },
        fileHash: pdf && contentHash([pdf.bytes]).toString("base64url"),
      };
    },
  );
  if (fileHash === undefined) return { matter, papers: [] };
  const paper: BinaryFile = {
    path: LABELS_PDF,
    fileHash,
    get bytes() {
      return certain(printed().pdf).bytes;
    },
  };
  return { matter, papers: [paper] };
}

/** How the workshop's pages are wanted. */
export interface WorkshopAsked {
  /** Whether labels are drawn as a PDF, too. */
  readonly isPrinted: boolean;
  /** Cards as they were printed last, where that is known. */
  readonly printedCards: readonly EarlierCard[] | undefined;
}

export function workshopOfWorked(
  worked: WorkedSite,
  date: string | undefined,
  { isPrinted, printedCards }: WorkshopAsked,
): Site {
  const { context, cards, diagnostics, steps, partsTold } = worked;
  const { records, words } = context;
  const labels = labelsOfRange(worked, isPrinted);
  const matter = {
    found: diagnostics,
    due: {
      labelNotes: hazardNotes(worked.sheets, records, words, steps),
      reprints:
        printedCards && reprintList(shelfCards(cards.cards, printedCards), printedCards, words),
    },
    labels: labels.matter,
  };
  const noted = followed(matter, { keys: {} }, "matter");
  partsTold.set("matter", noted);
  const own = {
    get found() {
      return noted.value.found;
    },
    get due() {
      return noted.value.due;
    },
    get labels() {
      return noted.value.labels;
    },
    get answers() {
      return worked.answers.held;
    },
    heldOf: worked.answers.heldOf,
    get index() {
      return worked.answers.index;
    },
  };
  const kept: PagesKept = { steps, of: "the workshop" };
  return {
    pages: workshopPages(context, own).map(({ path, filled }) => pageEntry(path, filled, kept)),
    language: worked.context.words.language,
    files: () => [],
    manifests: () => [{ path: MANIFEST, text: workshopManifestJson(date) }],
    papers: labels.papers,
    sheetCount: worked.published.length,
  };
}

/** A colour's pages as paper takes them. */
function sheetsToPrint(
  { published, context, steps }: WorkedSite,
  pages: readonly PageEntry[],
): PackedSheet[] {
  const byPath = new Map(pages.map((page) => [page.path, page]));
  const caution = cautionLine(context);
  return published.map(({ worded: { sheet } }) => {
    const { slug } = sheet;
    const own = certain(byPath.get(`colours/${slug}/index.html`));
    const bench = certain(byPath.get(benchPath(slug)));
    return {
      slug,
      context,
      caution,
      isEdited: steps?.isAnother(`records/colours/${slug}`) ?? false,
      key: () => contentKey(JSON.stringify([own.key(), bench.key()])),
      packed: () => ({ sheet: own.packedView(), bench: bench.packedView() }),
      get sheet() {
        return ofKind(own.view, "sheet");
      },
      get bench() {
        return ofKind(bench.view, "bench");
      },
    };
  });
}

function ofKind<K extends AnyPageView["kind"]>(
  view: AnyPageView,
  kind: K,
): Extract<AnyPageView, { readonly kind: K }> {
  if (view.kind !== kind) throw new RangeError(`A page of ${kind} is filled as ${view.kind}`);
  return view as Extract<AnyPageView, { readonly kind: K }>;
}

/** A page whose head names the feed of its language. */
function withFeed(page: PageEntry): PageEntry {
  return pageWith(
    page,
    ({ site, view }) => ({ site: { ...site, feed: `${site.root}${FEED_PATH}` }, view }),
    ["feed"],
  );
}

function* dataFiles(worked: WorkedSite, pages: readonly PageEntry[]): Generator<DataFile> {
  const { published, context, steps } = worked;
  const { records } = context;
  const { siteAddress } = records.workshop;
  const of = (what: string, made: () => readonly DataFile[]): readonly DataFile[] =>
    dataFilesOf(steps, { name: `files of ${what}` }, made);
  const ofColour = (
    slug: string,
    what: string,
    made: () => readonly DataFile[],
  ): readonly DataFile[] =>
    dataFilesOf(steps, { name: `files of each colour, ${what}`, of: slug }, made);
  yield* of("the range", () => [
    { path: "catalogue.json", text: catalogueJson(published, records) },
    { path: "catalogue.csv", text: catalogueCsv(published, records, context) },
  ]);
  yield* of("all figures", () => [{ path: "figures.csv", text: figuresCsv(published, steps) }]);
  yield* of("search", () => searchFiles(context));
  for (const one of published) {
    const { slug } = one.worded.sheet;
    yield* ofColour(slug, "itself", () => [
      { path: `colours/${slug}/sheet.json`, text: sheetJson(one) },
      ...masstoneCsv(one.worded.sheet),
    ]);
    // While what its sheet says is held: for the manifest it would be made again.
    statedOfSheet(one, worked);
    yield* ofColour(slug, "compared", () => [comparisonData(one.worded, context)]);
    yield* ofColour(slug, "readings", () => readingsOf(slug, context));
  }
  yield* of("former sheets", () => formerSheets(context));
  yield* of("readings", () => readingsOfRange(context));
  yield* keptBesideProgram("schemas", [], schemaFiles);
  yield* hostFiles(records);
  if (siteAddress !== undefined) yield { path: "sitemap.xml", text: sitemap(siteAddress, pages) };
}

/** The same of every workshop. */
function schemaFiles(): DataFile[] {
  return [...recordSchemas(), ...dataSchemas()].map(({ name, schema }) => {
    const text = `${JSON.stringify(schema, null, 2)}\n`;
    return {
      path: `schema/${name}.schema.json`,
      text,
      hash: contentHash([text]).toString("base64url"),
    };
  });
}

/** What the page Compare fetches of a colour. */
function comparisonData(worded: SheetTexts, context: PageContext): DataFile {
  const colour = shownColour(worded, context);
  return { path: `compare/${colour.slug}.json`, text: `${JSON.stringify(colour)}\n` };
}
