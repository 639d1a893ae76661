import { statedOf } from "../permanence/permanence-ruling.ts";
import { isKnown } from "../quantities/figure.ts";
import { figureText } from "../present/figure-text.ts";
import { standingView } from "../present/standing-view.ts";
import type { Block } from "../blocks/block.ts";
import { blocksOf } from "../blocks/section-blocks.ts";
import type { ListView, PropertyTableView, TableView } from "../present/views.ts";
import { tableView } from "../present/table-view.ts";
import { NO_VALUE } from "../words/no-value.ts";
import { reasons, sectionTable, type SheetPage } from "./page-of-sheet.ts";

/** Lightfastness by what it rests on: only the standard's own exposures, or somebody's word, make a category. */
export function permanenceBlocks(page: SheetPage): Block[] {
  return blocksOf({
    summary: permanenceSummary(page),
    properties: found(page),
    tables: formTable(page),
    lists: permanenceReasons(page),
  });
}

/** What the finding rests on, what speaks against it, and what the paint is sensitive to. */
export function permanenceReasons(page: SheetPage): ListView[] {
  const { permanence } = page.sheet;
  const { permanence: text, paint } = page.words.pages;
  return [
    ...reasons(page, text.why, permanence.reasons),
    ...reasons(page, paint.permanence.contradictions, permanence.contradictions),
    ...reasons(page, text.sensitivities, permanence.sensitivities),
  ];
}

/** The finding, and what its category rests on. */
export function permanenceSummary({ sheet, words }: SheetPage): string[] {
  const { basis, category, expectation } = sheet.permanence;
  const { permanence: text, paint } = words.pages;
  const { categories, expectation: expectations } = words.pages.sheet;
  const known = isKnown(category) ? category.value : "";
  const word = categories[known] ?? known;
  switch (basis) {
    case "exposed under the standard":
      return [text.exposed(word, known), text.note];
    case "own exposure":
      return [paint.permanence.ownExposure(known), text.note];
    case "stated":
      return [
        text.stated(word, words.pages.sheetPage.detail.stated[statedOf(sheet.permanence)](known)),
        text.note,
      ];
    case "expected":
      return isKnown(expectation)
        ? [text.expected(expectations[expectation.value] ?? `expected ${expectation.value}`)]
        : [text.none];
    case "not known":
      return [text.none];
  }
}

/** Its category by the name of what that rests on, or what is expected of it. */
function found(page: SheetPage): PropertyTableView {
  const { permanence: text, paint } = page.words.pages;
  const { category, basis } = page.sheet.permanence;
  const other = isKnown(category) ? "expectation" : "category";
  return sectionTable(
    page,
    text.caption,
    ["permanence"],
    (path) => path !== `permanence.${other}`,
    (path) => (path === "permanence.category" ? paint.permanence.names[basis] : undefined),
  );
}

/** Each form with its change, and the standard and exposure that the record names. */
function formTable({
  worded,
  sheet: {
    permanence: { forms },
  },
  words,
}: SheetPage): TableView[] {
  if (forms.length === 0) return [];
  const text = words.pages.paint.permanence.forms;
  return [
    tableView({
      caption: text.caption,
      columns: [
        text.columns.form,
        { head: text.columns.change, numeric: true },
        text.columns.category,
        text.columns.standard,
        text.columns.exposure,
      ],
      rows: forms.map(({ slug, deltaEab, category, standards, exposures }) => [
        text.names[slug] ?? slug,
        deltaEab === undefined || !isKnown(deltaEab)
          ? { text: NO_VALUE, reason: text.notExposed }
          : {
              text: figureText(
                worded.leaf(`permanence.forms.${slug}.deltaEab`).row,
                deltaEab,
                words,
              ),
              standing: standingView(deltaEab, words),
            },
        {
          text: isKnown(category) ? category.value : NO_VALUE,
          standing: standingView(category, words),
        },
        standards.length === 0 ? text.stated : standards.join(words.semicolon),
        exposures.length === 0 ? text.stated : exposures.join(words.semicolon),
      ]),
      note: text.note,
    }),
  ];
}
