import type { Block, SectionBlock } from "../blocks/block.ts";
import { isKnown } from "../quantities/figure.ts";
import { ownColour } from "./screen-swatch.ts";
import { columns, headed, section, statement } from "../blocks/section-blocks.ts";
import { statementText } from "../present/statement-text.ts";
import { isNearNeutral } from "../collection/near-neutrals.ts";
import { asMarkup } from "../present/views.ts";
import { answerEntry } from "./answer-entry.ts";
import { WHITES_PATH } from "./catalogue-pages.ts";
import { coloursLetDownIn } from "./colours-tinted-with.ts";
import { handlingSection } from "./handling-section.ts";
import { expectedLadderBlocks, ladderBlocks } from "./ladder-blocks.ts";
import { markdownHtml } from "./markdown.ts";
import { paintingBlocks } from "./painting-section.ts";
import { permanenceSummary } from "./permanence-view.ts";
import { colourPhotographs } from "./photograph-blocks.ts";
import { neighboursSection } from "./neighbours-section.ts";
import { replacementBlocks } from "./replacement-blocks.ts";
import { safetyBlocks } from "./safety-blocks.ts";
import { whiteBlocks } from "./white-section.ts";
import { reasons, type SheetPage } from "./section-views.ts";

/** What a painter reads below the first screen, in order. */
export function sheetSections(page: SheetPage): SectionBlock[] {
  const { sections } = page.words.pages.sheetPage;
  return [
    ...section(
      "photographs",
      page.words.pages.photographs.heading,
      colourPhotographs(page.worded.sheet, page.context, page.place),
    ),
    ...section("whites", isWhite(page) ? sections.ofWhite : sections.whites, letDown(page)),
    ...section("painting", sections.painting, [...paintingBlocks(page), ...notes(page)]),
    ...section("permanence", sections.permanence, lasting(page)),
    ...section("handling", sections.handling, safetyBlocks(handlingSection(page), page)),
    ...section(
      "replacement",
      page.words.pages.mixing.recipes.replaces.heading,
      replacementBlocks(page.worded.sheet.slug, page.context, page.place),
    ),
    ...section("range", sections.range, beside(page)),
    ...section("questions", sections.questions, asked(page)),
    ...section("unknown", sections.unknown, notKnownYet(page)),
    ...section("bench", sections.bench, [
      statement(page.words.pages.sheetPage.benchLead, "way", {
        link: {
          text: page.words.pages.sheetPage.benchLink(page.worded.sheet.name),
          href: "bench/",
        },
      }),
    ]),
  ];
}

/** A white by its family, or because others were let down in it. */
function isWhite({ worded: { sheet }, context }: SheetPage): boolean {
  return sheet.family === "white" || coloursLetDownIn(sheet.slug, context).length > 0;
}

function letDown(page: SheetPage): Block[] {
  const { worded, words, place } = page;
  const { sheet } = worded;
  const text = words.pages.sheetPage;
  if (isWhite(page)) return whiteBlocks(page);
  const ladders = ladderBlocks(page);
  if (ladders.length === 0) return [];
  const absent = sheet.optics.acrossWhites.filter(({ rule }) => rule === "not-let-down-in");
  return [
    { kind: "group", id: "ladders", flow: "stack", blocks: ladders },
    statement(
      sheet.tints[0]?.massRatioKind === "pigment" ? text.ladder.keyPigment : text.ladder.key,
      "note",
    ),
    ...absent.flatMap(({ values }) => notTried(values["whites"] as readonly string[], page)),
    ...(isNearNeutral(sheet)
      ? [
          {
            kind: "links",
            links: [
              {
                text: words.pages.optics.whites.linkToAll,
                href: `${place.root}${WHITES_PATH.replace("index.html", "")}`,
              },
            ],
          } as const,
        ]
      : []),
  ];
}

/** Whites that it was not painted out in: what to expect of those that other colours tell of, and the names of the others. */
function notTried(whites: readonly string[], page: SheetPage): Block[] {
  const { ladder: text } = page.words.pages.sheetPage;
  const expected = expectedLadderBlocks(page);
  const told = page.worded.sheet.expectedTints.map(({ white }) => white.name);
  const untold = whites.filter((white) => !told.includes(white));
  return [
    ...(untold.length === 0 ? [] : [statement(text.notDrawn(untold), "note")]),
    ...(expected.length === 0
      ? []
      : [{ kind: "fold", summary: text.expected(told), blocks: expected } as const]),
  ];
}

/** What nobody knows of it, each with what would tell: one list, in place of empty tables. */
function notKnownYet(page: SheetPage): Block[] {
  const { worded, words } = page;
  const { notations, tints, optics, oil, drying, permanence, cautions, family } = worded.sheet;
  const text = words.pages.sheetPage.unknown;
  const isTinted = tints.length > 0 || family === "extender" || isWhite(page);
  const lines = [
    ...(ownColour(notations.masstone) === undefined ? [text.colour] : []),
    ...(isTinted ? [] : [text.whites]),
    ...(isKnown(optics.opacityClass) ? [] : [text.opacity]),
    ...(isKnown(oil.oilIndexGPer100g) ? [] : [text.oil]),
    ...(isKnown(drying.touchDryDays) ? [] : [text.drying]),
    ...(isKnown(permanence.category) || isKnown(permanence.expectation) ? [] : [text.permanence]),
    ...(cautions.unknown.length > 0 ? [text.hazard] : []),
  ];
  return lines.length === 0
    ? []
    : [
        {
          kind: "lines",
          lines: lines.map(([name, takes]) => ({ name, sentences: [{ text: takes }] })),
        },
      ];
}

function notes({ context: { records }, worded: { sheet } }: SheetPage): Block[] {
  const { notes: own = "", notesLanguage: language } = records.colours.get(sheet.slug) ?? {};
  return own === ""
    ? []
    : [
        {
          kind: "prose",
          body: asMarkup(markdownHtml(own)),
          ...(language === undefined ? {} : { language }),
        },
      ];
}

function lasting(page: SheetPage): Block[] {
  const { words, worded } = page;
  const { permanence } = worded.sheet;
  const [lead, ...more] = permanenceSummary(page);
  return [
    ...(lead === undefined ? [] : [statement(lead, "lead")]),
    ...more.map((text) => statement(text, "note")),
    ...columns(
      [
        ...reasons(page, words.pages.permanence.why, permanence.reasons),
        ...reasons(page, words.pages.paint.permanence.contradictions, permanence.contradictions),
        ...reasons(page, words.pages.permanence.sensitivities, permanence.sensitivities),
      ].map((list) => ({ kind: "list", list }) as const),
    ),
  ];
}

function beside(page: SheetPage): Block[] {
  const neighbours = neighboursSection(page);
  if (neighbours === undefined) return [];
  const { groups, lists, compare } = neighbours;
  return [
    ...columns(groups.map(({ heading, cards }) => headed(heading, [{ kind: "cards", cards }]))),
    ...columns([
      ...lists.map((list) => ({ kind: "list", list }) as const),
      ...(compare === undefined
        ? []
        : [headed(compare.heading, [{ kind: "links", links: compare.links }])]),
    ]),
  ];
}

function asked({ context, worded: { sheet }, words, place }: SheetPage): Block[] {
  const naming = context.answers.filter(({ colours }) => colours.includes(sheet.slug));
  return naming.length === 0
    ? []
    : [
        {
          kind: "links",
          links: naming.map((answer) => {
            const { question, href, language } = answerEntry(answer, words, place);
            return { text: question, href, ...(language === undefined ? {} : { language }) };
          }),
        },
      ];
}

/** Sentences across the whites: what one white makes of it beside another. */
export function acrossWhites({ worded: { sheet }, words }: SheetPage): string[] {
  return sheet.optics.acrossWhites
    .filter(({ rule }) => rule !== "not-let-down-in")
    .map((across) => statementText(across, words));
}
