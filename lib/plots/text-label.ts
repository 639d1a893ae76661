import { LINE_HEIGHT, PANEL_GREY, TEXT_SIZE } from "./picture.ts";
import { element, type Point, type SvgNode } from "./svg.ts";

/** From the middle of a line of text down to its baseline [user units]. */
export const TO_BASELINE = TEXT_SIZE * 0.35;

interface TextLook {
  /** Class beside `plot__text`, a hook for the style sheet. */
  readonly role: "tick" | "label" | "heading" | "caption" | "word" | "axis-label";
  readonly anchor?: "start" | "middle" | "end" | undefined;
  readonly bold?: boolean | undefined;
  /** A rim in the panel's grey, for a text that crosses lines. */
  readonly rim?: boolean | undefined;
}

/** One line of text, `at` its baseline. */
export function textLine(text: string, at: Point, look: TextLook): SvgNode {
  return element(
    "text",
    {
      class: `plot__text plot__${look.role}`,
      x: at.x,
      y: at.y,
      "text-anchor": look.anchor === "start" ? undefined : look.anchor,
      "font-weight": look.bold === true ? 600 : undefined,
      ...(look.rim === true && {
        stroke: PANEL_GREY,
        "stroke-width": 3,
        "stroke-linejoin": "round",
        "paint-order": "stroke",
      }),
    },
    [text],
  );
}

/** Lines under each other, `at` the baseline of the first. */
export function textLines(lines: readonly string[], at: Point, look: TextLook): SvgNode[] {
  return lines.map((line, i) => textLine(line, { x: at.x, y: at.y + i * LINE_HEIGHT }, look));
}
