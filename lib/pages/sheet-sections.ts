import type { Block, SectionBlock } from "../blocks/block.ts";
import { isKnown } from "../quantities/figure.ts";
import { given } from "../quantities/given.ts";
import { ownColour } from "./screen-swatch.ts";
import {
  columns,
  fold,
  linesOf,
  linksOf,
  lists,
  section,
  statement,
} from "../blocks/section-blocks.ts";
import { isNearNeutral } from "../collection/near-neutrals.ts";
import { answerLink } from "./answer-link.ts";
import { WHITES_PATH } from "./catalogue-pages.ts";
import { coloursLetDownIn } from "./colours-tinted-with.ts";
import { expectedLadderBlocks, ladderBlocks } from "./ladder-blocks.ts";
import { markdownHtml } from "./markdown.ts";
import { paintingBlocks } from "./painting-blocks.ts";
import { permanenceReasons, permanenceSummary } from "./permanence-blocks.ts";
import { colourPhotographs } from "./photograph-blocks.ts";
import { neighboursBlocks } from "./neighbours-blocks.ts";
import { replacementBlocks } from "./replacement-blocks.ts";
import { safetyBlocks } from "./safety-blocks.ts";
import { whiteBlocks } from "./white-blocks.ts";
import { spectralFilms } from "../sheet/optics/opacity-chart.ts";
import { addressTo } from "./page-context.ts";
import type { SheetPage } from "./page-of-sheet.ts";

/** What a painter reads below the first screen, in order. */
export function sheetSections(page: SheetPage): SectionBlock[] {
  const { sections } = page.words.pages.sheetPage;
  return [
    ...section(
      "photographs",
      page.words.pages.photographs.heading,
      colourPhotographs(page.sheet, page.context, page.place),
    ),
    ...section("whites", isWhite(page) ? sections.ofWhite : sections.whites, letDown(page)),
    ...section("painting", sections.painting, [...paintingBlocks(page), ...notes(page)]),
    ...section("permanence", sections.permanence, lasting(page)),
    ...section("handling", sections.handling, safetyBlocks(page)),
    ...section(
      "replacement",
      page.words.pages.mixing.recipes.replaces.heading,
      replacementBlocks(page.sheet.slug, page.context, page.place),
    ),
    ...section("range", sections.range, neighboursBlocks(page)),
    ...section("questions", sections.questions, asked(page)),
    ...section("unknown", sections.unknown, notKnownYet(page)),
    ...section("bench", sections.bench, [
      statement(page.words.pages.sheetPage.benchLead, "way", {
        link: {
          text: page.words.pages.sheetPage.benchLink(page.sheet.name),
          href: "bench/",
        },
      }),
    ]),
  ];
}

/** A white by its family, or because others were let down in it. */
function isWhite({ sheet, context }: SheetPage): boolean {
  return sheet.family === "white" || coloursLetDownIn(sheet.slug, context).length > 0;
}

function letDown(page: SheetPage): Block[] {
  const { worded, words, place } = page;
  const { sheet } = worded;
  const text = words.pages.sheetPage;
  if (isWhite(page)) return whiteBlocks(page);
  const ladders = ladderBlocks(page);
  if (ladders.length === 0) return [];
  return [
    { kind: "group", id: "ladders", flow: "stack", blocks: ladders },
    statement(
      sheet.tints[0]?.massRatioKind === "pigment" ? text.ladder.keyPigment : text.ladder.key,
      "note",
    ),
    ...sheet.optics.acrossWhites.flatMap((said) =>
      said.rule === "not-let-down-in" ? notTried(said.values.whites, page) : [],
    ),
    ...(isNearNeutral(sheet)
      ? linksOf([
          { text: words.pages.optics.whites.linkToAll, href: addressTo(WHITES_PATH, place) },
        ])
      : []),
  ];
}

/** Whites that it was not painted out in: what to expect of those that other colours tell of, and the names of the others. */
function notTried(whites: readonly string[], page: SheetPage): Block[] {
  const { ladder: text } = page.words.pages.sheetPage;
  const expected = expectedLadderBlocks(page);
  const told = page.sheet.expectedTints.map(({ white }) => white.name);
  const untold = whites.filter((white) => !told.includes(white));
  return given([
    untold.length > 0 && statement(text.notDrawn(untold), "note"),
    ...fold(text.expected(told), expected),
  ]);
}

/** What nobody knows of it, each with what would tell: one list, in place of empty tables. */
function notKnownYet(page: SheetPage): Block[] {
  const { worded, words } = page;
  const { notations, tints, oil, drying, permanence, cautions, family } = worded.sheet;
  const text = words.pages.sheetPage.unknown;
  const isTinted = tints.length > 0 || family === "extender" || isWhite(page);
  const lines = given([
    ownColour(notations.masstone) === undefined && text.colour,
    !isTinted && text.whites,
    hidingUnknown(page),
    !isKnown(oil.oilIndexGPer100g) && text.oil,
    !isKnown(drying.touchDryDays) && text.drying,
    ...(isKnown(permanence.category) || isKnown(permanence.expectation) ? [] : [text.permanence]),
    cautions.unknown.length > 0 && text.hazard,
  ]);
  return linesOf(lines.map(({ name, takes }) => ({ name, sentences: [{ text: takes }] })));
}

/** What would tell how it hides. Of films that hide by their darkness those of its white do, of flakes that mirror none. */
function hidingUnknown({ context, sheet, words }: SheetPage) {
  const { opacityClass, contrastRatio } = sheet.optics;
  const text = words.pages.sheetPage.unknown;
  if (isKnown(opacityClass) || opacityClass.wanting.length === 0) return undefined;
  if (isKnown(contrastRatio)) return text.filmsOfWhite;
  const colour = context.records.colours.get(sheet.slug);
  const hasFilms = colour !== undefined && colour.films.length > 0;
  return hasFilms && spectralFilms(colour).length === 0 ? text.filmSpectra : text.opacity;
}

function notes({ context: { records }, sheet }: SheetPage): Block[] {
  const { notes: own = "", notesLanguage: language } = records.colours.get(sheet.slug) ?? {};
  if (own === "") return [];
  return [
    {
      kind: "prose",
      body: markdownHtml(own),
      ...(language !== undefined && { language }),
    },
  ];
}

function lasting(page: SheetPage): Block[] {
  const [lead, ...more] = permanenceSummary(page);
  return given([
    lead !== undefined && statement(lead, "lead"),
    ...more.map((text) => statement(text, "note")),
    ...columns(lists(permanenceReasons(page))),
  ]);
}

function asked({ context, sheet, place }: SheetPage): Block[] {
  const naming = context.answers.filter(({ colours }) => colours.includes(sheet.slug));
  return linksOf(naming.map((answer) => answerLink(answer, place)));
}
