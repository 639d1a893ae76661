import { escapedMarkup } from "../exchange/escaped-markup.ts";
import type { FigureIndex } from "../claims/figure-index.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { PageContext, PagePlace } from "../pages/page-context.ts";
import type { Block } from "../blocks/block.ts";
import { asMarkup, type Markup } from "../present/views.ts";
import { errorAt } from "../records/fault.ts";
import type { Language } from "../quantities/languages.ts";
import type { Answer } from "../records/records.ts";
import { wordsIn } from "../words/languages.ts";
import { markdownLine, markdownParts, type FoundShortcode } from "./answer-markdown.ts";
import {
  filledShortcode,
  inlineHtml,
  inlineText,
  unreadShortcodes,
  type Filled,
} from "./filled-shortcode.ts";
import { foldedBlocks } from "./folded-blocks.ts";
import type { BlockPiece, ShortcodeFault } from "./shortcode.ts";

/** An answer with its shortcodes filled in, or what is wrong with them. */
interface RenderedAnswer {
  readonly summary: Markup;
  /** The same without marks, for lists and letters. */
  readonly summaryText: string;
  /** The text of a reply, which may be other than the summary. */
  readonly replyText: string;
  readonly blocks: readonly Block[];
  readonly faults: readonly Diagnostic[];
}

/**
 * Fill in every shortcode of an answer, in the language that the answer is written in: nobody reads "touch dry in
 * 2 Tage". One with a fault leaves a dash and is told at its line.
 */
export function renderedAnswer(
  { slug, file, record, body, bodyLine, language, place: placeOf }: Answer,
  ofPage: PageContext,
  place: PagePlace,
  index: FigureIndex,
): RenderedAnswer {
  const context = language === undefined ? ofPage : inLanguage(ofPage, language);
  const faults: Diagnostic[] = [];
  let count = 0;
  const piece = (found: FoundShortcode, at: Place, told = faults): Filled => {
    count += 1;
    const one = filledShortcode(found, { context, place, index, id: `${slug}-${count}` });
    told.push(...one.faults.map((fault) => diagnostic(fault, at)));
    return one.piece;
  };
  const asText = (source: string, at: Place, told = faults): string =>
    unmarked(markdownLine(source, (found) => escapedMarkup(inlineText(piece(found, at, told)))));
  const inBody: PlaceOf = ({ line, column }) => ({
    file,
    line: bodyLine + line,
    column: column + 1,
    path: "",
  });

  const { summary, reply } = record;
  const [ofSummary, ofReply] = [placeOf(["summary"]), placeOf(["reply", "text"])];
  const summaryHtml = markdownLine(summary, (found) => inlineHtml(piece(found, ofSummary)));
  // What is wrong with it was told by the line before.
  const summaryText = asText(summary, ofSummary, []);
  const replyText = reply?.text === undefined ? summaryText : asText(reply.text, ofReply);
  const folded = bodyBlocks(body, inBody, piece);
  faults.push(
    ...folded.faults,
    ...unread(summary, () => ofSummary),
    ...unread(reply?.text ?? "", () => ofReply),
    ...unread(body, inBody),
    ...folded.unclosed,
  );
  return {
    summary: asMarkup(summaryHtml),
    summaryText,
    replyText,
    blocks: folded.blocks,
    faults,
  };
}

type Place = Diagnostic["place"];
type PlaceOf = (found: Pick<FoundShortcode, "line" | "column">) => Place;

/** What stands below an answer's summary, in folds where it says so. */
function bodyBlocks(
  body: string,
  placeOf: PlaceOf,
  piece: (found: FoundShortcode, at: Place) => Filled,
): {
  readonly blocks: readonly Block[];
  readonly faults: readonly Diagnostic[];
  readonly unclosed: readonly Diagnostic[];
} {
  const faults: Diagnostic[] = [];
  const folds = foldedBlocks();
  const filledIn = (found: FoundShortcode): Filled => {
    const one = piece(found, placeOf(found));
    if (one === undefined && OPENS_FOLD.test(found.raw)) folds.spoilt();
    return one;
  };
  for (const part of markdownParts(body, (found) => inlineHtml(filledIn(found)))) {
    if ("html" in part) {
      folds.add(prose(part.html));
      continue;
    }
    const at = placeOf(part.shortcode);
    const found = filledIn(part.shortcode);
    const isBlock = found !== undefined && !("text" in found);
    const fault = folds.add(isBlock ? found : prose(`<p>${inlineHtml(found)}</p>`), at);
    if (fault !== undefined) faults.push(diagnostic(fault, at));
  }
  const { blocks, open } = folds.all();
  return { blocks, faults, unclosed: open === undefined ? [] : [diagnostic(UNCLOSED, open)] };
}

const UNCLOSED: ShortcodeFault = {
  message: "Missing endfold for the fold that opens here: it stands on a line of its own",
  actual: "nothing",
  expected: "its endfold, on a line of its own",
};

function unread(text: string, placeOf: PlaceOf): Diagnostic[] {
  return unreadShortcodes(text).map(({ fault, ...at }) => diagnostic(fault, placeOf(at)));
}

/** What a page is made from, in another language's words. It is not copied, since a copy would have read all of it. */
function inLanguage(context: PageContext, language: Language): PageContext {
  const words = wordsIn(language, context.records.knowledge.said);
  return Object.create(context, { words: { value: words } }) as PageContext;
}

/** A shortcode that would begin a fold. */
const OPENS_FOLD = /^\{%\s*fold\b/;

function prose(html: string): BlockPiece {
  return { blocks: [{ kind: "prose", body: asMarkup(html) }] };
}

function diagnostic(
  { rule = "answers/shortcode", ...fault }: ShortcodeFault,
  place: Diagnostic["place"],
): Diagnostic {
  return errorAt(place, rule, fault);
}

/** A line of HTML that this module made, as plain text. */
function unmarked(html: string): string {
  return html
    .replace(/<[^>]*>/g, "")
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll("&amp;", "&");
}
