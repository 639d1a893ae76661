import type { PageContext } from "../pages/page-context.ts";
import { offerViews } from "../pages/sheet-page.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { cardOfSheet } from "../print/card-of-sheet.ts";
import type { CardStatement } from "../print/card-content.ts";
import type { ShownPaint } from "./colour-faces.ts";

/** A picture with what is said to whoever does not see it. */
export interface ListedPicture {
  readonly file: string;
  readonly alt: string;
}

/** What a shop needs to know of a colour beside its pictures, as plain text. */
export function listingText(
  worded: SheetTexts,
  pictures: readonly ListedPicture[],
  context: PageContext,
): string {
  const { sheet } = worded;
  const { words } = context;
  const text = words.pages.listing;
  const card = cardOfSheet(worded, context, [words.language]);
  const { label } = card;
  const part = (heading: string, lines: readonly string[]): string[] =>
    lines.length === 0 ? [] : [[heading, "-".repeat(heading.length), ...lines].join("\n")];
  return `${[
    [sheet.name, ...card.imprint].join("\n"),
    ...part(text.said, whatMayBeSaid(worded, context)),
    ...part(text.made, [card.madeOf, card.sentence]),
    ...part(
      text.sizes,
      card.sizes.length === 0 ? unsized(worded, context) : card.sizes.map((size) => size.text),
    ),
    ...part(text.label, [
      ...label.signalWords,
      ...label.pictograms.map(({ code, name }) => `${code} ${name}`),
      ...label.statements.flatMap(statementLines),
      ...label.precautions.flatMap(statementLines),
      ...(label.notice === undefined ? [] : [label.notice]),
      ...(label.basis === undefined ? [] : [label.basis]),
      ...(card.rags === undefined ? [] : [card.rags.full]),
      card.poisonCentre,
      card.deference,
    ]),
    ...part(
      text.pictures,
      pictures.map(({ file, alt }) => `${file}: ${alt}`),
    ),
    ...(card.address === undefined ? [] : [card.address]),
  ]
    .join("\n\n")
    .replaceAll("\u00a0", " ")}\n`;
}

function whatMayBeSaid(
  { sheet: { notations, tints } }: SheetTexts,
  { words }: PageContext,
): string[] {
  const text = words.pages.listing;
  const inGamut = notations.masstone?.srgb?.inGamut;
  return [
    text.screen,
    ...(notations.masstone?.standing === "estimated" ? [text.estimated] : []),
    ...(inGamut === false ? [text.outside] : []),
    ...(tints.some(({ steps }) => steps.some(({ standing }) => standing !== "measured"))
      ? [text.predicted]
      : []),
  ];
}

/** Why no size is offered, where the sheet says so. */
function unsized({ sheet }: SheetTexts, { words }: PageContext): string[] {
  const said = offerViews(sheet, words).map(({ text }) => text);
  return said.length === 0 ? [words.pages.listing.noSizes] : said;
}

function statementLines({ code, texts }: CardStatement): string[] {
  return texts.map(({ text }) => (code === undefined ? text : `${code} ${text}`));
}

/** What is said in place of a colour's picture of a size. */
export function altTexts(
  { name, tints, ladder }: ShownPaint,
  { words }: Pick<PageContext, "words">,
): Readonly<Record<"wide" | "square" | "strip", string>> {
  const text = words.pages.listing;
  const own = tints?.description ?? text.alone(name);
  return {
    wide: own,
    square: own,
    strip: ladder === undefined ? text.alone(name) : text.strip(name, ladder.name),
  };
}
