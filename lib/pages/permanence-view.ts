import { isKnown } from "../quantities/figure.ts";
import { figureText } from "../present/figure-text.ts";
import { propertyView } from "../present/property-view.ts";
import { standingView } from "../present/standing-view.ts";
import type { CellView, SectionView, TableView } from "../present/views.ts";
import { sourceLink } from "./page-context.ts";
import { emptySection, reasons, type SheetPage } from "./section-views.ts";

/** Lightfastness by what it rests on: only the standard's own exposures, or somebody's word, make a category. */
export function permanencePart(page: SheetPage): SectionView {
  const {
    worded: {
      sheet: { permanence },
    },
    words,
  } = page;
  const text = words.pages.permanence;
  return {
    ...emptySection("permanence", words.pages.sections.permanence),
    summary: permanenceSummary(page),
    properties: { caption: text.caption, rows: rows(page) },
    tables: formTable(page),
    lists: [
      ...reasons(page, text.why, permanence.reasons),
      ...reasons(page, words.pages.paint.permanence.contradictions, permanence.contradictions),
      ...reasons(page, text.sensitivities, permanence.sensitivities),
    ],
  };
}

/** The finding, and what its category rests on. */
export function permanenceSummary({
  worded: {
    sheet: {
      permanence: { basis, category, expectation },
    },
  },
  words,
}: SheetPage): string[] {
  const {
    permanence: text,
    paint,
    sheet: { categories, expectation: expectations },
  } = words.pages;
  const known = isKnown(category) ? category.value : "";
  const word = categories[known] ?? known;
  switch (basis) {
    case "exposed under the standard":
      return [text.exposed(word, known), text.note];
    case "own exposure":
      return [paint.permanence.ownExposure(known), text.note];
    case "stated":
      return [text.stated(word, known), text.note];
    case "expected":
      return isKnown(expectation)
        ? [text.expected(expectations[expectation.value] ?? `expected ${expectation.value}`)]
        : [text.none];
    case "not known":
      return [text.none];
  }
}

function rows({
  worded,
  worded: {
    sheet: { permanence },
  },
  words,
  place,
  context,
}: SheetPage) {
  const shown = isKnown(permanence.category) ? "permanence.category" : "permanence.expectation";
  const name = isKnown(permanence.category)
    ? words.pages.paint.permanence.names[permanence.basis]
    : undefined;
  return [
    propertyView(worded.leaf(shown), words, sourceLink(context, place), name),
    ...["permanence.deltaEab", "permanence.blueWool"].map((path) =>
      propertyView(worded.leaf(path), words, sourceLink(context, place)),
    ),
  ];
}

/** Each form with its change, and the standard and exposure that the record names. */
function formTable({
  worded,
  worded: {
    sheet: {
      permanence: { forms },
    },
  },
  words,
}: SheetPage): TableView[] {
  if (forms.length === 0) return [];
  const text = words.pages.paint.permanence.forms;
  return [
    {
      caption: text.caption,
      columns: [
        { head: text.columns.form },
        { head: text.columns.change, numeric: true },
        { head: text.columns.category },
        { head: text.columns.standard },
        { head: text.columns.exposure },
      ],
      rows: forms.map(({ slug, deltaEab, category, standards, exposures }): CellView[] => [
        { text: text.names[slug] ?? slug },
        deltaEab === undefined || !isKnown(deltaEab)
          ? { text: "\u2013", reason: text.notExposed }
          : {
              text: figureText(
                worded.leaf(`permanence.forms.${slug}.deltaEab`).row,
                deltaEab,
                words,
              ),
              standing: standingView(deltaEab, words),
            },
        {
          text: isKnown(category) ? category.value : "\u2013",
          standing: standingView(category, words),
        },
        { text: standards.length === 0 ? text.stated : standards.join(words.semicolon) },
        { text: exposures.length === 0 ? text.stated : exposures.join(words.semicolon) },
      ]),
      note: text.note,
    },
  ];
}
