import { isKnown, type Figure } from "../quantities/figure.ts";
import type { Statement } from "../quantities/statement.ts";
import { propertyView } from "../present/property-view.ts";
import { statedText } from "../present/stated-text.ts";
import { statementText } from "../present/statement-text.ts";
import { standingWord } from "../present/standing-view.ts";
import type { ListView, PropertyTableView, ReasonView } from "../present/views.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { Silent } from "../sheet/declaration.ts";
import { listedRows } from "../sheet/figure-table.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Words } from "../words/words.ts";
import { sourceLink, type PageContext, type PagePlace } from "./page-context.ts";
import type { SheetPath } from "../sheet/sheet-path.ts";

/** What a page of one colour is filled from. */
export interface SheetPage {
  readonly context: PageContext;
  readonly words: Words;
  readonly worded: SheetTexts;
  readonly sheet: Sheet;
  readonly place: PagePlace;
}

export function pageOfSheet(worded: SheetTexts, context: PageContext, place: PagePlace): SheetPage {
  return { context, words: context.words, worded, sheet: worded.sheet, place };
}

/**
 * The table of what the declarations of sections list, but for rows that say nothing.
 * @param isShown which of them this page shows, by path.
 * @param nameOf what one is called here, where that is not its name.
 */
export function sectionTable(
  { worded, words, place, context }: SheetPage,
  caption: string,
  sections: readonly (keyof Sheet)[],
  isShown: (path: string) => boolean = () => true,
  nameOf: (path: string) => string | undefined = () => undefined,
): PropertyTableView {
  return {
    caption,
    rows: sections
      .flatMap(listedRows)
      .flatMap(({ pattern: path, silentAt = [] }) =>
        isShown(path) && worded.has(path) && !isSilent(worded.leaf(path).figure, silentAt)
          ? [propertyView(worded.leaf(path), words, sourceLink(context, place), nameOf(path))]
          : [],
      ),
  };
}

function isSilent(figure: Figure, silentAt: readonly Silent[]): boolean {
  if (!isKnown(figure)) return silentAt.includes("not stated");
  const { value } = figure;
  return silentAt.some((one) => [value].flat().every((end) => end === one));
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
    ...(ruling.standing !== undefined && { standing: standingWord(ruling.standing, words) }),
    ...(ruling.source !== undefined && { source: sourceLink(context, place)(ruling.source) }),
  };
}

/** What a page says of a figure; nothing when it is not stated, or the workshop's alone. */
export function textOf({ worded, words }: SheetPage, path: SheetPath): string | undefined {
  const isPrivate = worded.has(path) && worded.leaf(path).row.isPrivate;
  return isPrivate ? undefined : statedText(worded, path, words);
}
