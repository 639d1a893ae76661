import { sides, type Box } from "./box.ts";
import { LINE_HEIGHT, PANEL_GREY, TEXT_SIZE } from "./picture.ts";
import { coordinate, element, type SvgNode } from "./svg.ts";
import { textLines } from "./text-label.ts";
import { widestWidth, wrappedLines } from "./text-width.ts";

/** Between two strokes of the hatching, along the side. */
const STROKE_GAP = 10;

/** Where a swatch would stand if its colour were known: an outline, hatched, with a word. */
export function hatchedOutline(box: Box, word: string): SvgNode[] {
  const { x: left, y: top, width, height } = sides(box);
  const strokes: string[] = [];
  for (let reach = STROKE_GAP; reach < width + height; reach += STROKE_GAP) {
    const [startX, startY] = [Math.min(reach, width), Math.max(0, reach - width)];
    const [endX, endY] = [Math.max(0, reach - height), Math.min(reach, height)];
    strokes.push(
      `M${coordinate(left + startX)} ${coordinate(top + startY)}L${coordinate(left + endX)} ${coordinate(top + endY)}`,
    );
  }
  const line = { fill: "none", stroke: "currentColor" } as const;
  return [
    element("g", { class: "swatch swatch--missing" }, [
      element("path", {
        d: strokes.join(""),
        ...line,
        "stroke-width": 0.75,
        "stroke-opacity": 0.4,
      }),
      element("rect", { ...sides(box), ...line, "stroke-width": 1 }),
      ...wordOnHatching(box, word),
    ]),
  ];
}

function wordOnHatching(box: Box, word: string): SvgNode[] {
  const lines = wrappedLines(word, box.right - box.left - 8);
  if (lines.length === 0) return [];
  const width = widestWidth(lines) + 8;
  const centre = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
  const height = lines.length * LINE_HEIGHT + 2;
  return [
    element("rect", {
      x: centre.x - width / 2,
      y: centre.y - height / 2,
      width,
      height,
      fill: PANEL_GREY,
    }),
    ...textLines(
      lines,
      { x: centre.x, y: centre.y - height / 2 + TEXT_SIZE * 0.98 },
      { role: "word", anchor: "middle" },
    ),
  ];
}
