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
import { followedRecords, LISTS_OF_RECORDS } from "../records/followed-records.ts";
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
import { followed, type Followed, type Grain } from "../kept/followed.ts";
import { keepIn, type Keep } from "../kept/kept-result.ts";
import { keptSteps, type KeptSteps } from "../kept/kept-steps.ts";
import { readWhenAsked } from "../kept/reads.ts";
import { followedTexts } from "./followed-texts.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import { theoryOnce } from "./theory-cache.ts";
import { siteAnswers, type SiteAnswers } from "./site-answers.ts";

/** Everything that is worked out before a page is made. */
export interface WorkedSite {
  readonly published: readonly PublishedSheet[];
  readonly context: PageContext;
  /** Whoever asks has read what they were made from, as of all that follows. */
  readonly answers: SiteAnswers;
  readonly cards: RangeCards;
  /** Laid out when it is first asked for. */
  readonly laidOut: () => LaidOutCards;
  /** What was kept of steps that read the same; and a further part that a step may read. */
  readonly cache: WorkCache | undefined;
  readonly steps: KeptSteps | undefined;
  readonly partsTold: PartsTold;
  /** Letters that paper lacks, what the sheets found against their records, and the answers against the sheets. */
  readonly diagnostics: readonly Diagnostic[];
}

/** Tells what each part is that a step reads, by the first word of its name. */
type PartsTold = Map<string, (name: string) => unknown>;

/** What is worked out of records before any word is chosen. */
interface WorkedRange {
  readonly cache: WorkCache | undefined;
  readonly steps: KeptSteps | undefined;
  readonly partsTold: PartsTold;
  /** Themselves; and as what is read of them is noted. */
  readonly written: Records;
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
  const [own] = pageLanguages(records.workshop);
  return wordedSite(workedRange(records, own, cache), date, own);
}

/** The site in each language of its pages, the workshop's own first: sheets are worked out once, and again only where names differ. */
export function workedSites(
  records: Records,
  date: string | undefined,
  cache?: WorkCache,
): readonly [WorkedSite, ...WorkedSite[]] {
  const [own, ...others] = pageLanguages(records.workshop);
  const range = workedRange(records, own, cache);
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

function workedRange(
  written: Records,
  language: Language,
  cache: WorkCache | undefined,
): WorkedRange {
  const kept = keepIn(cache);
  const own = following(written, allFits(written, kept), language, cache);
  const { records, fits, steps } = own;
  const sheets = allSheets(records, fits, steps);
  return {
    ...own,
    kept,
    cache,
    written,
    sheets,
    range: collectionOf(sheets, records.workshop.observer),
    theory: theoryOnce(records, cache),
  };
}

function rangeIn(range: WorkedRange, language: Language, own: Language): WorkedRange {
  const written = recordsIn(range.written, language, own);
  const noting = following(written, range.fits, language, range.cache);
  const { records, fits, steps } = noting;
  const inLanguage = { ...range, ...noting, written, theory: theoryOnce(records, range.cache) };
  if (!changesSheets(range.written, language)) return inLanguage;
  const sheets = allSheets(records, fits, steps);
  return { ...inLanguage, sheets, range: collectionOf(sheets, records.workshop.observer) };
}

/** Records and fits that note what is read of them, and what was kept of steps that read the same. */
function following(
  written: Records,
  fitted: Fits,
  language: Language,
  cache: WorkCache | undefined,
): Pick<WorkedRange, "records" | "fits" | "steps" | "partsTold"> {
  if (cache === undefined)
    return { records: written, fits: fitted, steps: undefined, partsTold: new Map() };
  const records = followedRecords(written);
  const fits = followed(fitted, { each: "whole" }, "fits");
  const partsTold: PartsTold = new Map([
    ["records", records.part],
    ["fits", fits.part],
  ]);
  return {
    records: records.value,
    fits: fits.value,
    partsTold,
    steps: keptSteps(
      cache,
      [language, written.knowledge.tables],
      (name) => partsTold.get(name.split("/")[0] ?? "")?.(name),
      LISTS,
    ),
  };
}

/** Whose members are read alike. */
const LISTS = [...LISTS_OF_RECORDS, "fits", "sheets", "range/nearest", "range/inTwoLights"];

const CONTEXT: Grain = {
  keys: {
    words: "always",
    folder: "always",
    kept: "always",
    steps: "always",
    // These note by themselves what is read of them.
    records: "always",
    fits: "always",
    sheets: "always",
    range: "always",
    theory: "always",
  },
};
const RANGE: Grain = { keys: { nearest: { each: "whole" }, inTwoLights: { each: "whole" } } };

/** A thing that notes what is read of it, whose parts can be told from now on. */
function noted<V extends object>(
  { steps, partsTold }: Pick<WorkedRange, "steps" | "partsTold">,
  root: string,
  made: () => Followed<V>,
  plain: V,
): V {
  if (steps === undefined) return plain;
  const { value, part } = made();
  partsTold.set(root, part);
  return value;
}

function wordedSite(worked: WorkedRange, date: string | undefined, language: Language): WorkedSite {
  const { records, fits, theory, kept, steps, partsTold } = worked;
  const words = WORDS[language];
  const texts = worked.sheets.map((sheet) => sheetTexts(sheet, words));
  const worded = noted(worked, "sheets", () => followedTexts(texts), texts);
  const range = noted(worked, "range", () => followed(worked.range, RANGE, "range"), worked.range);
  const sheets = worded.map(({ sheet }) => sheet);
  const published = worded.map((one): PublishedSheet => {
    const ownRevision = readWhenAsked(() => revision(one.plain));
    const neighbours = readWhenAsked(() => neighboursOf(one.sheet, sheets, range));
    return {
      worded: one,
      get revision() {
        return ownRevision();
      },
      get neighbours() {
        return neighbours();
      },
    };
  });
  const inContext = (context: PageContext): PageContext =>
    noted(worked, "context", () => followed(context, CONTEXT, "context"), context);
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
    sheets: worded,
    range,
    answers: [],
    date,
    theory,
    kept,
    steps,
    revision: revision(published.map((one) => one.revision)),
  };
  const held = readWhenAsked(() => siteAnswers(inContext(unanswered)));
  const { links, diagnostics } = held();
  const context = inContext({ ...unanswered, answers: links });
  const cards = readWhenAsked(() => rangeCards(context));
  return {
    published,
    context,
    get answers() {
      return held();
    },
    get cards() {
      return cards();
    },
    laidOut: readWhenAsked(() => laidOutCards(cards(), context)),
    cache: worked.cache,
    steps,
    partsTold,
    diagnostics: [
      ...letterWarnings(records),
      ...labelFaults(records),
      ...sheetWarnings(worked.sheets, records, words),
      ...diagnostics,
    ],
  };
}
