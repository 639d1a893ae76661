import type { FigureIndex } from "../claims/figure-index.ts";
import { pathParts } from "../claims/figure-index.ts";
import { factAt } from "../claims/fact-at.ts";
import type { HeldAnswer, HeldClaim } from "../claims/held-claims.ts";
import { answerEntry } from "../pages/answer-entry.ts";
import { colourTile } from "../pages/colour-tile.ts";
import type { PageContext, PagePlace } from "../pages/page-context.ts";
import { pageHead } from "../pages/site-frame.ts";
import type { AnswerIndexView, AnswerPageView } from "../present/answer-views.ts";
import { claimText, factText, todayText } from "../present/claim-text.ts";
import { standingView, standingWord } from "../present/standing-view.ts";
import type { CellView, TableView } from "../present/views.ts";
import type { Answer } from "../records/records.ts";
import { renderedAnswer, type RenderedAnswer } from "./rendered-answer.ts";
import { replyView } from "./reply-view.ts";

export function answerPath(slug: string): string {
  return `answers/${slug}/index.html`;
}

export function answerIndex(context: PageContext, place: PagePlace): AnswerIndexView {
  const { words, answers } = context;
  const text = words.pages.answers;
  return {
    kind: "answer-index",
    ...pageHead(context, place, text.heading, text.lead),
    lead: [text.lead],
    answers: answers.map((answer) => answerEntry(answer, words, place)),
    ...(answers.length === 0 ? { noAnswers: text.none } : {}),
  };
}

/** One answer: in short, in full, what it rests on today, and a reply to send. */
export function answerPage(
  { answer, claims }: HeldAnswer,
  context: PageContext,
  place: PagePlace,
  index: FigureIndex,
): AnswerPageView {
  const { words } = context;
  const text = words.pages.answers;
  const rendered = renderedAnswer(answer, context, place, index);
  const named = answerColours(answer, claims);
  const sheets = named.flatMap((slug) => context.sheets.filter(({ sheet }) => sheet.slug === slug));
  const newest = claims
    .flatMap((claim) => claim.newest?.date ?? [])
    .sort()
    .at(-1);
  const { question, date } = answer.record;
  return {
    kind: "answer",
    ...pageHead(context, place, question, text.description(rendered.summaryText)),
    summary: { body: rendered.summary },
    parts: rendered.parts,
    ...(claims.length === 0
      ? {}
      : {
          claims: {
            heading: text.claims.checked(
              claims.length,
              newest === undefined ? undefined : words.date(newest),
            ),
            table: claimTable(claims, context, index),
          },
        }),
    coloursHeading: text.coloursHeading,
    colours: sheets.map((worded) => colourTile(worded, context, place)),
    reply: answerReply(answer, rendered, named, context),
    revision: text.answered(
      date === undefined ? undefined : words.date(date),
      newest === undefined ? undefined : words.date(newest),
    ),
    all: { text: text.all, href: `${place.root}answers/` },
  };
}

/** Those that the record names, else those that its claims speak of. */
export function answerColours({ record }: Answer, claims: readonly HeldClaim[]): readonly string[] {
  return (
    record.colours ?? [
      ...new Set(
        claims.flatMap(
          ({ claim }) => pathParts("fact" in claim ? claim.fact : claim.figure).colour,
        ),
      ),
    ]
  );
}

function answerReply(
  { slug, record }: Answer,
  { replyText }: RenderedAnswer,
  named: readonly string[],
  context: PageContext,
): AnswerPageView["reply"] {
  const colours = (record.reply?.colours ?? named).flatMap((colour) =>
    context.sheets.filter(({ sheet }) => sheet.slug === colour),
  );
  return replyView(
    {
      question: record.question,
      short: replyText,
      colours,
      figures: record.reply?.figures ?? [],
      path: answerPath(slug),
      heading: context.words.pages.answers.reply.heading,
    },
    context,
  );
}

function claimTable(
  claims: readonly HeldClaim[],
  { words, records }: PageContext,
  index: FigureIndex,
): TableView {
  const text = words.pages.answers.claims;
  const nameOf = (slug: string): string => records.colours.get(slug)?.record.name ?? slug;
  return {
    caption: text.caption,
    columns: [
      { head: text.columns.statement },
      { head: text.columns.today },
      { head: text.columns.records },
    ],
    rows: claims.map((held): CellView[] => [
      {
        text: claimText(held, nameOf, words),
        ...(held.faults.length === 0 ? {} : { note: text.broken }),
      },
      todayCell(held, nameOf, index, words),
      { text: held.newest === undefined ? text.undated : words.date(held.newest.date) },
    ]),
  };
}

/** The claim's own figure, and under it the one that it is compared with. */
function todayCell(
  { claim, figures }: HeldClaim,
  nameOf: (slug: string) => string,
  index: FigureIndex,
  words: PageContext["words"],
): CellView {
  if ("fact" in claim) {
    const { colour, figure } = pathParts(claim.fact);
    const sheet = index.sheet(colour);
    const at = sheet === undefined ? undefined : factAt(sheet, figure);
    return { text: at !== undefined && "fact" in at ? factText(at.fact, words) : "\u2013" };
  }
  const [own, ...others] = figures;
  if (own === undefined) return { text: "\u2013", standing: standingWord("not stated", words) };
  const compared = "lowestOf" in claim || "highestOf" in claim ? [] : others;
  const note = compared
    .flatMap((other) => todayText(other, words) ?? [])
    .map((value, i) => `${nameOf(compared[i]?.sheet.slug ?? "")}: ${value}`)
    .join("; ");
  return {
    text: todayText(own, words) ?? "\u2013",
    standing: standingView(own.leaf.figure, words),
    ...(note === "" ? {} : { note }),
  };
}
