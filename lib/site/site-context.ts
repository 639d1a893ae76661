import { formatDiagnostic, type Diagnostic } from "../diagnostics/diagnostic.ts";
import type { PageContext } from "../pages/page-context.ts";
import { sourceName } from "../present/source-name.ts";
import { sheetTexts } from "../present/sheet-texts.ts";
import { WORDS } from "../words/languages.ts";
import { languageFolder, pageLanguages } from "../pages/page-languages.ts";
import { rangeCards, type RangeCards } from "../print/range-cards.ts";
import { collectionOf, type Collection } from "../collection/collection.ts";
import { ownTexts } from "../records/own-texts.ts";
import type { Records } from "../records/records.ts";
import { changesSheets, recordsIn } from "../records/records-in-language.ts";
import type { Language } from "../records/schema/terms.ts";
import { allFits, allSheets } from "../sheet/all-sheets.ts";
import { isKnown } from "../quantities/figure.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Fits } from "../sheet/tints/strength.ts";
import { revision } from "../sheet/revision.ts";
import { laidOutCards, type LaidOutCards } from "./laid-out-cards.ts";
import { labelFaults } from "./label-faults.ts";
import { letterWarnings } from "./letter-warnings.ts";
import { neighboursOf } from "./neighbours.ts";
import type { PublishedSheet } from "./published-data.ts";
import { sheetWarnings } from "./sheet-warnings.ts";
import { keepIn, type Keep } from "../kept/kept-result.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import { theoryOnce } from "./theory-cache.ts";
import { siteAnswers, type SiteAnswers } from "./site-answers.ts";

/** Everything that is worked out before a page is made. */
export interface WorkedSite {
  readonly published: readonly PublishedSheet[];
  readonly context: PageContext;
  readonly answers: SiteAnswers;
  readonly cards: RangeCards;
  /** Laid out when it is first asked for. */
  readonly laidOut: () => LaidOutCards;
  /** Letters that paper lacks, what the sheets found against their records, and the answers against the sheets. */
  readonly diagnostics: readonly Diagnostic[];
}

/** What is worked out of records before any word is chosen. */
interface WorkedRange {
  readonly records: Records;
  readonly fits: Fits;
  readonly sheets: readonly Sheet[];
  readonly range: Collection;
  readonly theory: PageContext["theory"];
  readonly kept: Keep;
}

/** The site in the workshop's own language. */
export function workedSite(
  records: Records,
  date: string | undefined,
  cache?: WorkCache,
): WorkedSite {
  return wordedSite(workedRange(records, cache), date, pageLanguages(records.workshop)[0]);
}

/** The site in each language of its pages, the workshop's own first: sheets are worked out once, and again only where names differ. */
export function workedSites(
  records: Records,
  date: string | undefined,
  cache?: WorkCache,
): readonly [WorkedSite, ...WorkedSite[]] {
  const [own, ...others] = pageLanguages(records.workshop);
  const range = workedRange(records, cache);
  return [
    wordedSite(range, date, own),
    ...others.map((language) => wordedSite(rangeIn(range, language, own), date, language)),
  ];
}

/** What is complained of in any language, each once and in the workshop's own words: a claim holds or fails in all of them. */
export function diagnosticsOf([own, ...others]: readonly [
  WorkedSite,
  ...WorkedSite[],
]): Diagnostic[] {
  const told = new Map(own.diagnostics.map((one) => [formatDiagnostic(one), one]));
  const places = new Set(own.diagnostics.map(placeOf));
  for (const one of others.flatMap(({ diagnostics }) => diagnostics))
    if (!places.has(placeOf(one))) told.set(formatDiagnostic(one), one);
  return [...told.values()];
}

function placeOf({ place: { file, line, column, path }, rule }: Diagnostic): string {
  return [file, line, column, path, rule].join(":");
}

function workedRange(records: Records, cache: WorkCache | undefined): WorkedRange {
  const kept = keepIn(cache);
  const fits = allFits(records, kept);
  const sheets = allSheets(records, fits);
  return {
    kept,
    records,
    fits,
    sheets,
    range: collectionOf(sheets, records.workshop.observer),
    theory: theoryOnce(records, cache),
  };
}

function rangeIn(range: WorkedRange, language: Language, own: Language): WorkedRange {
  const records = recordsIn(range.records, language, own);
  if (!changesSheets(range.records, language)) return { ...range, records };
  const sheets = allSheets(records, range.fits);
  return { ...range, records, sheets, range: collectionOf(sheets, records.workshop.observer) };
}

function wordedSite(
  { records, fits, sheets, range, theory, kept }: WorkedRange,
  date: string | undefined,
  language: Language,
): WorkedSite {
  const words = WORDS[language];
  const published = sheets.map((sheet): PublishedSheet => {
    const worded = sheetTexts(sheet, words);
    return {
      worded,
      revision: revision(worded.plain),
      neighbours: neighboursOf(sheet, sheets, range),
    };
  });
  const unanswered: PageContext = {
    words,
    folder: languageFolder(language, records.workshop),
    records,
    ownTexts: ownTexts(
      records,
      language,
      pageLanguages(records.workshop)[0],
      (key) => sourceName(key, records.sources.get(key), words.pages.sources.standings),
      sheets.flatMap(({ notations: { masstone } }) => {
        const name = masstone?.nbsName;
        return name !== undefined && isKnown(name) ? [name.value] : [];
      }),
    ),
    fits,
    sheets: published.map(({ worded }) => worded),
    range,
    answers: [],
    date,
    theory,
    kept,
    revision: revision(published.map((one) => one.revision)),
  };
  const answers = siteAnswers(unanswered);
  const context: PageContext = { ...unanswered, answers: answers.links };
  const cards = rangeCards(context);
  let laid: LaidOutCards | undefined;
  return {
    published,
    context,
    answers,
    cards,
    laidOut: () => (laid ??= laidOutCards(cards, context)),
    diagnostics: [
      ...letterWarnings(records),
      ...labelFaults(records),
      ...sheetWarnings(sheets, records, words),
      ...answers.diagnostics,
    ],
  };
}
