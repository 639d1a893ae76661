import { isKnown } from "../quantities/figure.ts";
import type { Statement } from "../quantities/statement.ts";
import { figureText } from "../present/figure-text.ts";
import { propertyView } from "../present/property-view.ts";
import { statementText } from "../present/statement-text.ts";
import { standingWord } from "../present/standing-view.ts";
import type {
  ListView,
  PropertyTableView,
  ReasonView,
  SectionView,
  TermView,
} from "../present/views.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { Words } from "../words/words.ts";
import { sourceLink, type PageContext, type PagePlace } from "./page-context.ts";

/** What the sections of one sheet are made from. */
export interface SheetPage {
  readonly context: PageContext;
  readonly worded: SheetTexts;
  readonly place: PagePlace;
  readonly words: Words;
}

/** A section with nothing in it yet. */
export function emptySection(id: string, heading: string): SectionView {
  return { id, heading, summary: [], pictures: [], tables: [], lists: [], terms: [] };
}

/** The figures at some paths of a sheet as a property table. */
export function properties(
  { worded, words, place, context }: SheetPage,
  caption: string,
  paths: readonly string[],
): PropertyTableView {
  return {
    caption,
    rows: paths
      .filter((path) => worded.has(path))
      .map((path) => propertyView(worded.leaf(path), words, sourceLink(context, place))),
  };
}

/** Rulings as a headed list; no list for none. */
export function reasons(
  page: SheetPage,
  heading: string,
  rulings: readonly Statement[],
): ListView[] {
  if (rulings.length === 0) return [];
  return [{ heading, items: rulings.map((ruling) => reason(ruling, page)) }];
}

function reason(ruling: Statement, { words, context, place }: SheetPage): ReasonView {
  return {
    text: statementText(ruling, words),
    ...(ruling.standing === undefined ? {} : { standing: standingWord(ruling.standing, words) }),
    ...(ruling.source === undefined ? {} : { source: sourceLink(context, place)(ruling.source) }),
  };
}

/** A figure's finished text with its unit; nothing when it is not stated. */
export function textOf({ worded, words }: SheetPage, path: string): string | undefined {
  if (!worded.has(path)) return undefined;
  const { row, figure } = worded.leaf(path);
  return isKnown(figure) && !row.isPrivate ? figureText(row, figure, words) : undefined;
}

export function terms(words: Words, named: readonly string[]): TermView[] {
  return named.flatMap((term) => {
    const gloss = words.trade[term];
    return gloss === undefined ? [] : [{ term, gloss }];
  });
}
