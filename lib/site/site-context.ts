import { formatDiagnostic, type Diagnostic } from "../diagnostics/diagnostic.ts";
import type { PageContext } from "../pages/page-context.ts";
import { sourceName } from "../present/source-name.ts";
import { sheetTexts, type SheetTexts } from "../present/sheet-texts.ts";
import { at } from "../quantities/at.ts";
import { wordsIn } from "../words/languages.ts";
import type { Words } from "../words/words.ts";
import { REPLACEMENTS_ROOT, replacementsPart } from "../pages/replacement-blocks.ts";
import { MIXING_PARTS, mixingData, paintIdentity } from "../pages/mixing-data.ts";
import { toldRow } from "../pages/colour-rows.ts";
import { wordedSheet } from "../pages/worded-sheet.ts";
import { languageFolder, pageLanguages } from "../pages/page-languages.ts";
import { rangeCards, type RangeCards } from "../print/range-cards.ts";
import { collectionOf } from "../collection/collection.ts";
import { inRange } from "../collection/in-range.ts";
import { ownTexts } from "../records/own-texts.ts";
import type { Records } from "../records/records.ts";
import { followedRecords, LISTS_OF_RECORDS } from "../records/followed-records.ts";
import { changesSheets, recordsIn } from "../records/records-in-language.ts";
import type { Language } from "../quantities/languages.ts";
import {
  allFits,
  lazySheets,
  toldFits,
  type LazySheet,
  type ToldFits,
} from "../sheet/all-sheets.ts";
import { isKnown } from "../quantities/figure.ts";
import type { Fits } from "../sheet/tints/strength.ts";
import { revision } from "../sheet/revision.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { CARDS_ROOT, laidOutCards, RANGE_OF_CARDS, type LaidOutCards } from "./laid-out-cards.ts";
import { labelFaults } from "./label-faults.ts";
import { letterWarnings } from "./letter-warnings.ts";
import { neighboursOf } from "./neighbours.ts";
import type { PublishedSheet } from "./published-data.ts";
import { placedIn, sheetComplaints, type SheetComplaint } from "./sheet-warnings.ts";
import {
  followed,
  followedList,
  followedWhenAsked,
  type Followed,
  type Grain,
} from "../kept/followed.ts";
import { keepIn, type Keep } from "../kept/kept-result.ts";
import { keptSteps, madeStep, type KeptSteps, type Step } from "../kept/kept-steps.ts";
import { heldFew } from "../kept/held-few.ts";
import { partHash, textHash } from "../kept/part-hashes.ts";
import { partTimes } from "../kept/part-times.ts";
import { madeAside, readAside, readAsPart, readWhenAsked } from "../kept/reads.ts";
import { followedTexts } from "./followed-texts.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import { theoryOnce } from "./theory-cache.ts";
import { siteAnswers, type SiteAnswers } from "./site-answers.ts";

/** Everything that is worked out before a page is made. */
export interface WorkedSite {
  readonly published: readonly PublishedSheet[];
  readonly sheets: readonly Sheet[];
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
  /** Keep what was taken of steps, and what parts of sheets and records are known by. */
  readonly keepSteps: () => void;
  /** Letters that paper lacks, what the sheets found against their records, and the answers against the sheets. */
  readonly diagnostics: readonly Diagnostic[];
}

/** Parts that a step may read, by the first word of their names. */
type PartsTold = Map<string, PartsOfRoot>;

interface PartsOfRoot {
  readonly part: (name: string) => unknown;
  /** What tells a member from what it was, where that is known without loading it. */
  readonly identity?: (owner: string) => string | undefined;
}

/** What is worked out of records before any word is chosen. */
interface WorkedRange {
  readonly cache: WorkCache | undefined;
  readonly steps: KeptSteps | undefined;
  readonly partsTold: PartsTold;
  readonly keepSteps: () => void;
  /** Themselves; and as what is read of them is noted. */
  readonly written: Records;
  readonly records: Records;
  /** Likewise. */
  readonly fitted: ToldFits;
  readonly fits: Fits;
  readonly sheets: readonly LazySheet[];
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

/** Works out fits and sheets for whoever asks later and finds them kept. */
export function rangeAhead(records: Records, cache: WorkCache): void {
  const [own] = pageLanguages(records.workshop);
  workedRange(records, own, cache).keepSteps();
}

function workedRange(
  written: Records,
  language: Language,
  cache: WorkCache | undefined,
): WorkedRange {
  const kept = keepIn(cache);
  const own = following(written, language, cache, (records, steps) =>
    madeStep(steps, FITTING, () => toldFits(allFits(records, kept))),
  );
  const { records, fits, steps } = own;
  return {
    ...own,
    kept,
    cache,
    written,
    sheets: lazySheets(records, fits, steps),
    theory: theoryOnce(records, cache),
  };
}

function rangeIn(range: WorkedRange, language: Language, own: Language): WorkedRange {
  const written = recordsIn(range.written, language, own);
  // A fit is the same in every language; it is kept by what it reads of the records as they are written.
  const noting = following(written, language, range.cache, () => range.fitted);
  const { records, fits, steps } = noting;
  const inLanguage = { ...range, ...noting, written, theory: theoryOnce(records, range.cache) };
  return changesSheets(range.written, language)
    ? { ...inLanguage, sheets: lazySheets(records, fits, steps) }
    : inLanguage;
}

/** Records and fits that note what is read of them, and what was kept of steps that read the same. */
function following(
  written: Records,
  language: Language,
  cache: WorkCache | undefined,
  fitting: (records: Records, steps: KeptSteps | undefined) => ToldFits,
): Pick<WorkedRange, "records" | "fitted" | "fits" | "steps" | "partsTold" | "keepSteps"> {
  if (cache === undefined) {
    const fitted = fitting(written, undefined);
    return {
      records: written,
      fitted,
      fits: fitted.fits,
      steps: undefined,
      partsTold: new Map(),
      keepSteps: () => undefined,
    };
  }
  const records = followedRecords(written);
  const partsTold: PartsTold = new Map<string, PartsOfRoot>([
    // What a record is as a whole is hashed sooner than each part that is read of it.
    ["records", { part: records.part, identity: (owner) => partHash(records.part(owner)) }],
  ]);
  const told = (name: string): PartsOfRoot | undefined => {
    const end = name.indexOf("/");
    return partsTold.get(end === -1 ? name : name.slice(0, end));
  };
  const times = partTimes(cache, language, {
    part: (name) => told(name)?.part(name),
    identity: (owner) => told(owner)?.identity?.(owner),
  });
  const steps = keptSteps(
    cache,
    [language, languageFolder(language, written.workshop)],
    times,
    LISTS,
  );
  const fitted = fitting(records.value, steps);
  const fits = followed(fitted.fits, FITS, "fits");
  const { hashes: ofFits } = fitted;
  partsTold.set("fits", { part: fits.part, identity: (owner) => ofFits.get(nameIn(owner)) });
  return {
    records: records.value,
    fitted,
    fits: fits.value,
    partsTold,
    keepSteps: steps.keepBooks,
    steps,
  };
}

const COLLECTING = { modules: ["lib/collection/collection.ts"] };

const FITTING: Step = { modules: ["lib/sheet/all-sheets.ts"], name: "fits" };

/** A fit key by key, and what it tells of each white likewise: who was let down in what is all that many ask. */
const FITS: Grain = {
  each: { keys: { whites: { members: { keys: { slug: "always" } } } } },
};

/** Whose members are read alike. */
const LISTS = [
  ...LISTS_OF_RECORDS,
  "fits",
  "sheets",
  "range/nearest",
  "range/inTwoLights",
  "mixing/paints",
  "rows",
];

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
    rows: "always",
    theory: "always",
    mixing: "always",
  },
};
const RANGE: Grain = {
  keys: {
    nearest: { each: "whole" },
    inTwoLights: { each: "whole" },
    letDownIn: { each: "whole" },
    ofPigment: { each: "whole" },
    oil: { each: "whole" },
    spreads: { keys: {} },
  },
};

/** A thing that notes what is read of it, whose parts can be told from now on. */
function noted<V extends object>(
  { steps, partsTold }: Pick<WorkedRange, "steps" | "partsTold">,
  root: string,
  made: () => Followed<V>,
  plain: V,
): V {
  if (steps === undefined) return plain;
  const { value, part } = made();
  partsTold.set(root, { part });
  return value;
}

/** The same of what is made when something of it is first asked for. @param identity of a member by its slug. */
function notedWhenAsked<V extends object>(
  { steps, partsTold }: Pick<WorkedRange, "steps" | "partsTold">,
  root: string,
  keys: Readonly<Record<string, Grain>>,
  made: () => V,
  identity: (slug: string) => string | undefined,
): () => V {
  const plain = readAside(made);
  if (steps === undefined) return plain;
  const { value, part } = followedWhenAsked(plain, keys, root);
  partsTold.set(root, {
    part,
    identity: (owner) => madeAside(() => identity(nameIn(owner))),
  });
  return () => value;
}

/** Of a member of a list. */
function nameIn(owner: string): string {
  return owner.slice(owner.lastIndexOf("/") + 1);
}

/** Something of every sheet: whoever goes through it has read which sheets there are. */
function listed<V>({ steps }: Pick<WorkedRange, "steps">, list: readonly V[]): readonly V[] {
  return steps === undefined ? list : followedList(list, "sheets");
}

/** Those of a large range take more memory than its sheets; what is asked of a sheet again and again is none of them. Our own choice. */
const TEXTS_AT_ONCE = 50;

/** Texts of sheets, made when they are asked for; what is read of them is noted. */
function wordedSheets(
  { sheets, steps, partsTold, cache }: WorkedRange,
  words: Words,
): readonly SheetTexts[] {
  const held = heldFew<SheetTexts["plain"]>(TEXTS_AT_ONCE);
  const lazy = sheets.map((one) => ({
    ...one,
    texts: readAside(() =>
      sheetTexts(one.sheet(), words, (made) => held(one.slug, () => madeAside(made))),
    ),
  }));
  if (steps === undefined) return lazy.map(({ texts }) => texts());
  const { value, part } = followedTexts(lazy);
  const wording = cache?.programPart("lib/present/sheet-texts.ts");
  const identities = new Map(
    sheets.map(({ slug, identity }) => [
      `sheets/${slug}`,
      identity && wording && textHash([identity, wording, words.language]),
    ]),
  );
  partsTold.set("sheets", { part, identity: (owner) => identities.get(owner) });
  return value;
}

/** What a site asks of every sheet before it makes a page. */
interface ToldOfSheet {
  readonly revision: string;
  /** Its name in an English system of colour names. */
  readonly systemName: string | undefined;
  readonly complaints: readonly SheetComplaint[];
}

const TOLD_MODULES = [
  "lib/site/sheet-warnings.ts",
  "lib/present/sheet-texts.ts",
  "lib/words/languages.ts",
];

function toldOfSheet(
  { sheet, plain }: SheetTexts,
  { records, steps }: WorkedRange,
  words: Words,
): ToldOfSheet {
  return madeStep(steps, { modules: TOLD_MODULES, name: "told of sheets", of: sheet.slug }, () => {
    const name = sheet.notations.masstone?.nbsName;
    return {
      revision: revision(plain),
      systemName: name !== undefined && isKnown(name) ? name.value : undefined,
      complaints: sheetComplaints(sheet, records, words),
    };
  });
}

/** Cards by what they say; of its sheet each is asked for by itself. */
function withoutTexts({ cards, without }: RangeCards): unknown {
  return {
    cards: cards.map(({ slug, name, revision, states, lacks }) => ({
      slug,
      name,
      revision,
      states,
      lacks,
    })),
    without,
  };
}

function wordedSite(worked: WorkedRange, date: string | undefined, language: Language): WorkedSite {
  const { records, fits, theory, kept, steps, partsTold } = worked;
  const words = wordsIn(language, records.knowledge.said);
  const worded = wordedSheets(worked, words);
  const sheets = listed(
    worked,
    worded.map(({ sheet }) => sheet),
  );
  const collected = madeStep(steps, { ...COLLECTING, name: "range" }, () =>
    collectionOf(
      sheets.map((sheet) =>
        madeStep(steps, { ...COLLECTING, name: "sheets in the range", of: sheet.slug }, () =>
          inRange(sheet),
        ),
      ),
      records.workshop.observer,
    ),
  );
  const range = noted(worked, "range", () => followed(collected, RANGE, "range"), collected);
  const told = worded.map((one) => readWhenAsked(() => toldOfSheet(one, worked, words)));
  const each = worded.map((one, i): PublishedSheet => {
    const neighbours = readWhenAsked(() => neighboursOf(one.sheet, sheets, range));
    return {
      worded: one,
      get revision() {
        return at(told, i)().revision;
      },
      get neighbours() {
        return neighbours();
      },
    };
  });
  const published = listed(worked, each);
  const inContext = (context: PageContext): PageContext =>
    noted(worked, "context", () => followed(context, CONTEXT, "context"), context);
  const mixing = notedWhenAsked(
    worked,
    "mixing",
    MIXING_PARTS,
    () => mixingData(unanswered),
    (slug) => paintIdentity(slug, unanswered),
  );
  const rows = notedWhenAsked(
    worked,
    "rows",
    Object.fromEntries(worked.sheets.map(({ slug }) => [slug, { keys: {} }])),
    () =>
      Object.fromEntries(
        worded.map((one) => [one.sheet.slug, toldRow(one, { words, steps }).value] as const),
      ),
    (slug) => {
      const one = wordedSheet(slug, { sheets: worded });
      return one && toldRow(one, { words, steps }).identity;
    },
  );
  const unanswered: PageContext = {
    words,
    folder: languageFolder(language, records.workshop),
    records,
    ownTexts: ownTexts(
      records,
      language,
      pageLanguages(records.workshop)[0],
      (key) => sourceName(key, records.sources.get(key), words.pages.sources.standings),
      told.flatMap((one) => one().systemName ?? []),
    ),
    fits,
    sheets: worded,
    range,
    rows,
    answers: [],
    date,
    theory,
    mixing,
    kept,
    steps,
    revision: revision(published.map((one) => one.revision)),
  };
  const { links, diagnostics, answers } = siteAnswers(inContext(unanswered));
  const context = inContext({ ...unanswered, answers: links });
  partsTold.set(REPLACEMENTS_ROOT, { part: (name) => replacementsPart(name, context) });
  const cards = readAsPart(RANGE_OF_CARDS, () => rangeCards(context));
  const laidOut = readAside(() => laidOutCards(cards, context, worked.cache));
  partsTold.set(CARDS_ROOT, {
    part: (name) => (name === RANGE_OF_CARDS ? withoutTexts(cards()) : laidOut().part(name)),
  });
  return {
    published,
    sheets,
    context,
    answers,
    get cards() {
      return cards();
    },
    laidOut,
    cache: worked.cache,
    steps,
    partsTold,
    keepSteps: worked.keepSteps,
    diagnostics: [
      ...letterWarnings(records, steps),
      ...labelFaults(worked.written),
      ...told.flatMap((one) => one().complaints).map(placedIn(records)),
      ...diagnostics,
    ],
  };
}
