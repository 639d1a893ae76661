import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { PageContext } from "../pages/page-context.ts";
import { sheetTexts } from "../present/sheet-texts.ts";
import { ENGLISH } from "../words/en/english.ts";
import { rangeCards, type RangeCards } from "../print/range-cards.ts";
import { collectionOf } from "../collection/collection.ts";
import type { Records } from "../records/records.ts";
import { allFits, allSheets } from "../sheet/all-sheets.ts";
import { revision } from "../sheet/revision.ts";
import { laidOutCards, type LaidOutCards } from "./laid-out-cards.ts";
import { labelFaults } from "./label-faults.ts";
import { letterWarnings } from "./letter-warnings.ts";
import { neighboursOf } from "./neighbours.ts";
import type { PublishedSheet } from "./published-data.ts";
import { sheetWarnings } from "./sheet-warnings.ts";
import { theoryOnce, type TheoryCache } from "./theory-cache.ts";
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

export function workedSite(
  records: Records,
  date: string | undefined,
  cache?: TheoryCache,
): WorkedSite {
  const fits = allFits(records);
  const sheets = allSheets(records, fits);
  const range = collectionOf(sheets, records.workshop.observer);
  const published = sheets.map((sheet): PublishedSheet => {
    const worded = sheetTexts(sheet, ENGLISH);
    return {
      worded,
      revision: revision(worded.plain),
      neighbours: neighboursOf(sheet, sheets, range),
    };
  });
  const unanswered: PageContext = {
    words: ENGLISH,
    records,
    fits,
    sheets: published.map(({ worded }) => worded),
    range,
    answers: [],
    date,
    theory: theoryOnce(records, cache),
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
      ...sheetWarnings(sheets, records, ENGLISH),
      ...answers.diagnostics,
    ],
  };
}
