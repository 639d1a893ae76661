import { plainLine } from "./plain-line.ts";
import type { PlotFrame } from "./plot-frame.ts";
import type { SvgNode } from "./svg.ts";
import { textLine } from "./text-label.ts";

/** A line across a plot at one value. */
export function levelLine(
  { area, y }: PlotFrame,
  value: number,
  look: { readonly width?: number; readonly dashes: string },
): SvgNode {
  return plainLine(
    [area.left, area.right].map((x) => ({ x, y: y(value) })),
    look,
  );
}

/** Its name, at the right above it. */
export function levelName({ area, y }: PlotFrame, value: number, name: string): SvgNode {
  return textLine(
    name,
    { x: area.right - 5, y: y(value) - 4 },
    { role: "label", anchor: "end", rim: true },
  );
}
