import {
  asMarkup,
  type HomeView,
  type LeadingColourView,
  type LinkView,
  type TableView,
} from "../present/views.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { FAMILIES } from "../words/en/terms.ts";
import { chosenPairs } from "../records/chosen-pairs.ts";
import { familyStrip } from "../plots/small-swatch.ts";
import { answerEntry } from "./answer-entry.ts";
import { byFamily } from "./catalogue-pages.ts";
import { pairAddress } from "./compare-pages.ts";
import { madeOfText } from "./made-of.ts";
import { ownColour } from "./screen-swatch.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { sheetFacts } from "./sheet-facts.ts";
import { sheetPanel } from "./sheet-panel.ts";
import { pageHead } from "./site-frame.ts";

/** The workshop, two of its colours side by side, and ways in. */
export function homePage(context: PageContext, place: PagePlace): HomeView {
  const { words, records } = context;
  const text = words.pages.home;
  const name = records.workshop.name;
  const pair = leadingPair(context);
  return {
    kind: "home",
    ...pageHead(context, place, name, records.workshop.about ?? name),
    about: records.workshop.about === undefined ? [] : [records.workshop.about],
    ...(pair === undefined
      ? {}
      : {
          pair: {
            heading: text.pairHeading(pair[0].sheet.name, pair[1].sheet.name),
            sentence: text.pairSentence,
            colours: [
              leading(pair[0], context, place, "first"),
              leading(pair[1], context, place, "second"),
            ] as const,
            comparison: comparison(pair, context),
            ...fullComparison(pair, context, place),
          },
        }),
    questionsHeading: text.questionsHeading,
    questions: text.questions.map(([question, answer]) => ({
      question,
      answer: [{ text: answer }],
    })),
    familiesHeading: text.familiesHeading,
    families: byFamily(context.sheets).map(([family, sheets]) => {
      const colours = sheets
        .map(({ sheet }) => ownColour(sheet.notations.masstone))
        .filter((colour) => colour !== undefined);
      return {
        name: FAMILIES[family],
        href: `${place.root}colours/#${family}`,
        count: words.pages.catalogue.count(sheets.length),
        ...(colours.length === 0 ? {} : { strip: asMarkup(familyStrip(colours)) }),
      };
    }),
    ...(context.answers.length === 0 ? {} : { answersHeading: words.pages.answers.homeHeading }),
    answers: context.answers.map((answer) => answerEntry(answer, words, place)),
  };
}

/** A page of its own, where the workshop set the two side by side. */
function fullComparison(
  pair: readonly SheetTexts[],
  { words, records }: PageContext,
  { root }: PagePlace,
): { compare?: LinkView } {
  const chosen = chosenPairs(records.workshop).find(
    ({ colours }) =>
      colours.length === 2 && pair.every(({ sheet }) => colours.includes(sheet.slug)),
  );
  return chosen === undefined
    ? {}
    : { compare: { text: words.pages.compare.fromPair, href: root + pairAddress(chosen) } };
}

/** The two that the workshop names to lead with; else of one family the two that part most in one white at L* 50. */
function leadingPair({
  sheets,
  records,
}: PageContext): readonly [SheetTexts, SheetTexts] | undefined {
  const named = (records.workshop.leadingPair ?? []).map((slug) =>
    sheets.find(({ sheet }) => sheet.slug === slug),
  );
  const [first, second] = named;
  if (first !== undefined && second !== undefined) return [first, second];
  const withTints = sheets.filter(
    ({ sheet }) => sheet.tints.length > 0 && sheet.notations.masstone !== undefined,
  );
  const [one, other] = withTints;
  return one === undefined || other === undefined ? undefined : [one, other];
}

function leading(
  worded: SheetTexts,
  { words }: PageContext,
  { root }: PagePlace,
  id: string,
): LeadingColourView {
  const { sheet } = worded;
  const panel = sheetPanel(worded, words, id);
  if (panel === undefined)
    throw new RangeError(
      `The leading colour is ${sheet.slug}; right would be a colour that has been read`,
    );
  return {
    name: sheet.name,
    href: `${root}colours/${sheet.slug}/`,
    madeOf: madeOfText(sheet, words),
    panel,
    sentence: words.tintSentence(
      sheet.tints.map(({ white, sentence }) => ({ white: white.name, ruling: sentence })),
    ),
  };
}

function comparison(
  [one, other]: readonly [SheetTexts, SheetTexts],
  context: PageContext,
): TableView {
  const { words } = context;
  const facts = [one, other].map((worded) => sheetFacts(worded, context));
  return {
    caption: words.pages.home.comparison,
    columns: [
      { head: words.pages.frame.property },
      { head: one.sheet.name },
      { head: other.sheet.name },
    ],
    rows: (facts[0] ?? []).map((fact, i) => [
      { text: fact.name },
      ...[fact, facts[1]?.[i] ?? fact].map(({ word, detail, standing }) => ({
        text: word,
        ...(detail === undefined ? {} : { note: detail }),
        standing,
      })),
    ]),
  };
}
