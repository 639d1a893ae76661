import { oneSentence } from "../pages/one-sentence.ts";
import type { PageContext } from "../pages/page-context.ts";
import type { ReplyView } from "../present/answer-views.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { isKnown } from "../quantities/figure.ts";
import { LIGHTFASTNESS, REPLY_LOTS, replyMaterial } from "./reply-material.ts";
import { replyText } from "./reply-text.ts";
import type { SheetPath } from "../sheet/sheet-path.ts";

interface ReplyQuestion {
  readonly question: string;
  readonly short: string;
  readonly colours: readonly SheetTexts[];
  /** Paths, without the colour, of the figures that the stock reply gives. */
  readonly figures: readonly string[];
  /** Of the page that it leads to. */
  readonly path: string;
  readonly heading: string;
}

/** A stock reply as text, and what a composer needs to make another of the same. */
export function replyView(
  context: PageContext,
  { question, short, colours, figures, path, heading }: ReplyQuestion,
): ReplyView {
  const { material, offered } = replyMaterial(colours, figures, short, path, context);
  const chosen = offered.filter((one) => figures.includes(one.path));
  const stock = replyText(material, {
    question,
    colours: colours.map(({ sheet }) => sheet.slug),
    figures: chosen.map((one) => one.path),
  });
  return {
    heading,
    words: context.words.pages.answers.reply,
    text: stock,
    rows: rowsOf(stock),
    question,
    material: JSON.stringify(material),
    colours: colours.map(({ sheet }) => ({ value: sheet.slug, text: sheet.name, chosen: true })),
    figures: offered.map((one) => ({
      value: one.path,
      text: one.name,
      chosen: chosen.includes(one),
    })),
  };
}

/** Characters to a row of the field, about. */
const ROW = 100;

function rowsOf(text: string): number {
  return text
    .split("\n")
    .reduce((rows, line) => rows + Math.max(1, Math.ceil(line.length / ROW)), 0);
}

/** The stock reply of a sheet: its one sentence and the figures of its first screen. */
export function sheetReply(worded: SheetTexts, context: PageContext): ReplyView {
  const { sheet } = worded;
  const { words } = context;
  const told: readonly SheetPath[] = [
    "drying.touchDryDays",
    "oil.oilIndexGPer100g",
    "optics.opacityClass",
    "notations.masstone.munsell.text",
    ...sheet.tints.map(({ white }) => `tints.${white.slug}.atL.50.b` as const),
  ];
  const stated = told.filter((path) => worded.has(path) && isKnown(worded.leaf(path).figure));
  return replyView(context, {
    question: words.pages.answers.reply.sheetQuestion(sheet.name),
    short: oneSentence(sheet, context),
    colours: [worded],
    figures: [...stated, LIGHTFASTNESS, REPLY_LOTS],
    path: `colours/${sheet.slug}/index.html`,
    heading: words.pages.sections.reply,
  });
}
