import { escapedMarkup } from "../exchange/escaped-markup.ts";
import type { FigureIndex } from "../claims/figure-index.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { nearestHint } from "../diagnostics/nearest-word.ts";
import type { PageContext, PagePlace } from "../pages/page-context.ts";
import type { Block } from "../blocks/block.ts";
import { asMarkup, type Markup } from "../present/views.ts";
import { errorAt } from "../records/fault.ts";
import type { Language } from "../quantities/languages.ts";
import type { Answer } from "../records/records.ts";
import { wordsIn } from "../words/languages.ts";
import { markdownLine, markdownParts, type FoundShortcode } from "./answer-markdown.ts";
import { checkedArgs } from "./checked-args.ts";
import { foldedBlocks } from "./folded-blocks.ts";
import type { BlockPiece, InlinePiece, ShortcodeFault, ShortcodeRoom } from "./shortcode.ts";
import { otherBrackets, shortcodeCall } from "./shortcode-syntax.ts";
import { NO_VALUE } from "../words/no-value.ts";
import { SHORTCODES } from "./shortcode-table.ts";

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

  const inBody = (found: Pick<FoundShortcode, "line" | "column">): Diagnostic["place"] => ({
    file,
    line: bodyLine + found.line,
    column: found.column + 1,
    path: "",
  });
  const piece = (
    found: FoundShortcode,
    at: Diagnostic["place"],
  ): InlinePiece | BlockPiece | undefined => {
    count += 1;
    const told = { any: false };
    const room: ShortcodeRoom = {
      context,
      place,
      index,
      id: `${slug}-${count}`,
      begins: found.begins,
      fault: (fault) => {
        told.any = true;
        faults.push(diagnostic(fault, at));
        return undefined;
      },
    };
    return filled(found, room, () => told.any);
  };
  const asText = (source: string, path: readonly string[]): string =>
    unmarked(
      markdownLine(source, (found) => escapedMarkup(inlineText(piece(found, placeOf(path))))),
    );

  const summary = markdownLine(record.summary, (found) =>
    inlineHtml(piece(found, placeOf(["summary"]))),
  );
  const told = faults.length;
  const summaryText = asText(record.summary, ["summary"]);
  faults.length = told;
  const replyText =
    record.reply?.text === undefined ? summaryText : asText(record.reply.text, ["reply", "text"]);
  const folds = foldedBlocks();
  const bodyPiece = (found: FoundShortcode): ReturnType<typeof piece> => {
    const filledIn = piece(found, inBody(found));
    if (filledIn === undefined && OPENS_FOLD.test(found.raw)) folds.spoilt();
    return filledIn;
  };
  for (const part of markdownParts(body, (found) => inlineHtml(bodyPiece(found)))) {
    if ("html" in part) folds.add(prose(part.html));
    else {
      const at = inBody(part.shortcode);
      const found = bodyPiece(part.shortcode);
      const isBlock = found !== undefined && !("text" in found);
      const fault = folds.add(isBlock ? found : prose(`<p>${inlineHtml(found)}</p>`), at);
      if (fault !== undefined) faults.push(diagnostic(fault, at));
    }
  }
  for (const { text, at } of [
    { text: record.summary, at: () => placeOf(["summary"]) },
    { text: record.reply?.text ?? "", at: () => placeOf(["reply", "text"]) },
    { text: body, at: inBody },
  ])
    for (const found of otherBrackets(text, NAMES))
      faults.push(diagnostic(inOtherBrackets(found.raw), at(found)));
  const { blocks, open } = folds.all();
  if (open !== undefined)
    faults.push(
      diagnostic(
        {
          message: "Missing endfold for the fold that opens here: it stands on a line of its own",
          actual: "nothing",
          expected: "its endfold, on a line of its own",
        },
        open,
      ),
    );
  return { summary: asMarkup(summary), summaryText, replyText, blocks, faults };
}

/** What a page is made from, in another language's words. It is not copied, since a copy would have read all of it. */
function inLanguage(context: PageContext, language: Language): PageContext {
  const words = wordsIn(language, context.records.knowledge.said);
  return Object.create(context, { words: { value: words } }) as PageContext;
}

const NAMES = SHORTCODES.map(({ name }) => name);

function inOtherBrackets(raw: string): ShortcodeFault {
  const inside = raw.replace(/^[\s{%]+|[\s}%]+$/g, "");
  return {
    message: `A shortcode stands between {% and %}, and ${raw} would be printed as it is`,
    actual: raw,
    expected: `{% ${inside} %}`,
    hint: `written so: {% ${inside} %}`,
  };
}

/** A shortcode that would begin a fold. */
const OPENS_FOLD = /^\{%\s*fold\b/;

function prose(html: string): BlockPiece {
  return { blocks: [{ kind: "prose", body: asMarkup(html) }] };
}

/** What a shortcode stands for; every fault is told to its room, so that nothing means a fault. */
function filled(
  found: FoundShortcode,
  room: ShortcodeRoom,
  isTold: () => boolean,
): InlinePiece | BlockPiece | undefined {
  if (!found.raw.endsWith("%}"))
    return room.fault({
      message: `The shortcode ${found.raw} is not closed by %} before the next begins`,
      actual: found.raw,
      expected: "its end, %}, before the next begins",
    });
  const call = shortcodeCall(found.raw);
  if ("message" in call) return room.fault(call);
  const shortcode = SHORTCODES.find(({ name }) => name === call.name);
  if (shortcode === undefined) {
    return room.fault({
      message: `There is no shortcode "${call.name}"`,
      actual: call.name,
      expected: NAMES.join(" | "),
      hint: nearestHint(call.name, NAMES),
    });
  }
  if (shortcode.place === "on a line of its own" && !found.alone)
    return room.fault({
      message: `The shortcode ${call.name} needs a line of its own between empty lines, and stands beside text`,
      actual: `${call.name} beside text`,
      expected: shortcode.place,
    });
  const args = checkedArgs(shortcode, call, room);
  if (args === undefined) return undefined;
  return (
    shortcode.render(args, room) ??
    (isTold()
      ? undefined
      : room.fault({
          message: `${found.raw} names figures that can't be shown in this way`,
          actual: found.raw,
          expected: "figures that can be shown so",
        }))
  );
}

function diagnostic(
  { rule = "answers/shortcode", ...fault }: ShortcodeFault,
  place: Diagnostic["place"],
): Diagnostic {
  return errorAt(place, rule, fault);
}

function inlineText(piece: InlinePiece | BlockPiece | undefined): string {
  return piece !== undefined && "text" in piece ? piece.text : NO_VALUE;
}

/** The same mark that tables set beside a figure; its word for screen readers. */
function inlineHtml(piece: InlinePiece | BlockPiece | undefined): string {
  if (piece === undefined || !("text" in piece)) return NO_VALUE;
  const { text, standing, href } = piece;
  if (href !== undefined) return `<a href="${escapedMarkup(href)}">${escapedMarkup(text)}</a>`;
  if (standing === undefined) return escapedMarkup(text);
  const mark = `<svg class="standing__mark" viewBox="0 0 16 12" width="16" height="12" aria-hidden="true"><use href="#mark-${standing.kind.replace(" ", "-")}"></use></svg>`;
  return `<span class="live">${escapedMarkup(text)}<span class="standing standing--brief">${mark}<span class="hidden">${escapedMarkup(standing.word)}</span></span></span>`;
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
