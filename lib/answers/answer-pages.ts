import type { Block } from "../blocks/block.ts";
import type { PageView, Markup, TileView, TableView, LinkView } from "../present/views.ts";
import type { FigureIndex } from "../claims/figure-index.ts";
import type { HeldAnswer, HeldClaim } from "../claims/held-claims.ts";
import { coloursOf } from "../claims/verdict.ts";
import { colourTile } from "../pages/colour-tile.ts";
import { pagePlace, type PageContext, type PagePlace } from "../pages/page-context.ts";
import { pictureFolder, picturedColours, sharedPicture } from "../pages/shared-picture.ts";
import { pageHead } from "../pages/site-frame.ts";
import { ownColour, tellingTint } from "../pages/screen-swatch.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { ReplyView } from "../present/answer-views.ts";
import { dateText } from "../present/date-text.ts";
import type { Answer } from "../records/records.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { claimTable } from "./claim-table.ts";
import { renderedAnswer } from "./rendered-answer.ts";
import { replyView } from "./reply-view.ts";
import type { PageKind, PlannedSite } from "../pages/page-kind.ts";

/** One answer: in short, what to do, why; and at its side the colours that it speaks of. */
export interface AnswerPageView extends PageView {
  readonly kind: "answer";
  /** The short answer, in reading size; its figures with their marks. */
  readonly summary: { readonly body: Markup };
  readonly blocks: readonly Block[];
  readonly coloursHeading: string;
  readonly colours: readonly TileView[];
  /** What the swatches below each masstone are. */
  readonly coloursNote?: string;
  /** What the answer rests on, with the figures as they stand now. */
  readonly claims?: { readonly heading: string; readonly table: TableView };
  readonly revision: string;
  readonly all: LinkView;
}

export function answerPath(slug: string): string {
  return `answers/${slug}/index.html`;
}

/** One answer: in short, in full, and what it rests on today, but for what is the workshop's alone. */
export function answerPage(
  { answer, claims: held }: HeldAnswer,
  context: PageContext,
  place: PagePlace,
  index: FigureIndex,
): AnswerPageView {
  const { words } = context;
  const text = words.pages.answers;
  const rendered = renderedAnswer(answer, context, place, index);
  const claims = held.filter(({ isPrivate }) => !isPrivate);
  const named = answerColours(answer, held);
  const sheets = named.flatMap((slug) => context.sheets.filter(({ sheet }) => sheet.slug === slug));
  const newest = claims
    .flatMap((claim) => claim.newest?.date ?? [])
    .sort()
    .at(-1);
  const { question, date } = answer.record;
  return {
    kind: "answer",
    ...(answer.language !== undefined && { language: answer.language }),
    ...pageHead(context, place, question, text.description(rendered.summaryText)),
    ...sharedPicture(
      context,
      pictureFolder(picturedColours(named, context), `answers/${answer.slug}/`),
      question,
    ),
    summary: { body: rendered.summary },
    blocks: rendered.blocks,
    ...(claims.length > 0 && {
      claims: {
        heading: text.claims.checked(claims.length, dateText(newest, words)),
        table: claimTable(claims, context, index),
      },
    }),
    coloursHeading: text.coloursHeading,
    ...answerTiles(sheets, context, place),
    revision: text.answered(dateText(date, words), dateText(newest, words)),
    all: { text: text.all, href: `${place.root}answers/` },
  };
}

/** The colours of an answer, each alone and with the whites that it is about; where there are none, with one that the tile names. */
export function answerTiles(
  sheets: readonly SheetTexts[],
  context: PageContext,
  place: PagePlace,
): Pick<AnswerPageView, "colours" | "coloursNote"> {
  const text = context.words.pages.answers;
  const whites = whitesOfAnswer(sheets.map(({ sheet }) => sheet));
  if (whites.length === 0)
    return {
      colours: sheets.map((worded) => {
        const white = tellingTint(worded.sheet)?.white;
        const tile = colourTile(worded, context, place);
        return white === undefined || tile.note !== undefined
          ? tile
          : { ...tile, note: text.tintIn(white) };
      }),
    };
  return {
    colours: sheets.map((worded) => ({
      ...colourTile(worded, context, place),
      colours: [
        ownColour(worded.sheet.notations.masstone),
        ...whites.map(({ slug }) =>
          ownColour(worded.sheet.tints.find(({ white }) => white.slug === slug)?.atL["50"]),
        ),
      ].filter((colour) => colour !== undefined),
    })),
    coloursNote: text.coloursNote(
      whites.map(({ name }) => name),
      sheets.length,
    ),
  };
}

/** The whites among its colours that others of them were tried in; without one those that all were tried in. */
function whitesOfAnswer(sheets: readonly Sheet[]): Sheet["tints"][number]["white"][] {
  const tried = sheets
    .map(({ tints }) => tints.filter(({ atL }) => ownColour(atL["50"]) !== undefined))
    .filter((tints) => tints.length > 0)
    .map((tints) => tints.map(({ white }) => white));
  const all = new Map(tried.flat().map((white) => [white.slug, white]));
  const named = sheets.flatMap(({ slug }) => all.get(slug) ?? []);
  return named.length > 0
    ? named
    : [...all.values()].filter(({ slug }) =>
        tried.every((whites) => whites.some((white) => white.slug === slug)),
      );
}

/** Those that the record names, else those that its claims speak of. */
export function answerColours({ record }: Answer, claims: readonly HeldClaim[]): readonly string[] {
  return record.colours ?? [...new Set(claims.flatMap(({ claim }) => coloursOf(claim)))];
}

/** A reply to a question of customers, to send. */
export function answerReply(
  { answer, claims }: HeldAnswer,
  context: PageContext,
  index: FigureIndex,
): ReplyView {
  const { slug, record } = answer;
  const { replyText } = renderedAnswer(answer, context, pagePlace(answerPath(slug)), index);
  const named = answerColours(answer, claims);
  const colours = (record.reply?.colours ?? named).flatMap((colour) =>
    context.sheets.filter(({ sheet }) => sheet.slug === colour),
  );
  return replyView(context, {
    question: record.question,
    short: replyText,
    colours,
    figures: record.reply?.figures ?? [],
    path: answerPath(slug),
    heading: context.words.pages.answers.reply.heading,
  });
}

/** A site with its answers held against its sheets: whoever asks has read what they were made from. */
interface AnsweredSite extends PlannedSite {
  readonly answers: {
    readonly heldOf: (slug: string) => HeldAnswer;
    readonly index: FigureIndex;
  };
}

export const ANSWERS: PageKind<AnswerPageView, AnsweredSite> = {
  pages: (site) =>
    [...site.context.records.answers.keys()].map((slug) => ({
      path: answerPath(slug),
      view: (place) => {
        const { heldOf, index } = site.answers;
        return answerPage(heldOf(slug), site.context, place, index);
      },
    })),
};
