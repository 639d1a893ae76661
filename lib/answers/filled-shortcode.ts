import { nearestHint } from "../diagnostics/nearest-word.ts";
import { escapedMarkup } from "../exchange/escaped-markup.ts";
import { NO_VALUE } from "../words/no-value.ts";
import type { FoundShortcode } from "./answer-markdown.ts";
import { checkedArgs } from "./checked-args.ts";
import type { BlockPiece, InlinePiece, ShortcodeFault, ShortcodeRoom } from "./shortcode.ts";
import { otherBrackets, shortcodeCall } from "./shortcode-syntax.ts";
import { SHORTCODES } from "./shortcode-table.ts";

/** What a shortcode stands for; undefined where something is wrong with it. */
export type Filled = InlinePiece | BlockPiece | undefined;

/** What a shortcode stands for, and all that is wrong with it. */
export function filledShortcode(
  found: FoundShortcode,
  room: Omit<ShortcodeRoom, "fault" | "begins">,
): { readonly piece: Filled; readonly faults: readonly ShortcodeFault[] } {
  const faults: ShortcodeFault[] = [];
  const fault = (one: ShortcodeFault): undefined => {
    faults.push(one);
  };
  const piece = filled(found, { ...room, begins: found.begins, fault });
  if (piece === undefined && faults.length === 0)
    fault({
      message: `${found.raw} names figures that can't be shown in this way`,
      actual: found.raw,
      expected: "figures that can be shown so",
    });
  return { piece, faults };
}

/** @returns nothing where a fault was told to the room, or none can be named */
function filled(found: FoundShortcode, room: ShortcodeRoom): Filled {
  if (!found.raw.endsWith("%}"))
    return room.fault({
      message: `The shortcode ${found.raw} is not closed by %} before the next begins`,
      actual: found.raw,
      expected: "its end, %}, before the next begins",
    });
  const call = shortcodeCall(found.raw);
  if ("message" in call) return room.fault(call);
  const shortcode = SHORTCODES.find(({ name }) => name === call.name);
  if (shortcode === undefined)
    return room.fault({
      message: `There is no shortcode "${call.name}"`,
      actual: call.name,
      expected: NAMES.join(" | "),
      hint: nearestHint(call.name, NAMES),
    });
  if (shortcode.place === "on a line of its own" && !found.alone)
    return room.fault({
      message: `The shortcode ${call.name} needs a line of its own between empty lines, and stands beside text`,
      actual: `${call.name} beside text`,
      expected: shortcode.place,
    });
  const args = checkedArgs(shortcode, call, room);
  return args && shortcode.render(args, room);
}

const NAMES = SHORTCODES.map(({ name }) => name);

/** What would be printed as it is, since it stands in other brackets than a shortcode's. */
export function unreadShortcodes(
  text: string,
): { readonly fault: ShortcodeFault; readonly line: number; readonly column: number }[] {
  return otherBrackets(text, NAMES).map(({ raw, line, column }) => {
    const inside = raw.replace(/^[\s{%]+|[\s}%]+$/g, "");
    return {
      line,
      column,
      fault: {
        message: `A shortcode stands between {% and %}, and ${raw} would be printed as it is`,
        actual: raw,
        expected: `{% ${inside} %}`,
        hint: `written so: {% ${inside} %}`,
      },
    };
  });
}

export function inlineText(piece: Filled): string {
  return piece !== undefined && "text" in piece ? piece.text : NO_VALUE;
}

/** The same mark that tables set beside a figure; its word for screen readers. */
export function inlineHtml(piece: Filled): string {
  if (piece === undefined || !("text" in piece)) return NO_VALUE;
  const { text, standing, href } = piece;
  if (href !== undefined) return `<a href="${escapedMarkup(href)}">${escapedMarkup(text)}</a>`;
  if (standing === undefined) return escapedMarkup(text);
  const mark = `<svg class="standing__mark" viewBox="0 0 16 12" width="16" height="12" aria-hidden="true"><use href="#mark-${standing.kind.replace(" ", "-")}"></use></svg>`;
  return `<span class="live">${escapedMarkup(text)}<span class="standing standing--brief">${mark}<span class="hidden">${escapedMarkup(standing.word)}</span></span></span>`;
}
