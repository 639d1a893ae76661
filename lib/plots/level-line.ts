import type { PlotFrame } from "./plot-frame.ts";
import { element, polyline, type Point, type SvgNode } from "./svg.ts";
import { textLine } from "./text-label.ts";

/** A line across a plot at one value. @param look dashes, and the weight where it is not 1, in user units. */
export function levelLine(
  { area, y }: PlotFrame,
  value: number,
  look: { readonly dashes: string; readonly weight?: number },
): SvgNode {
  const ends: readonly Point[] = [area.left, area.right].map((x) => ({ x, y: y(value) }));
  return element("path", {
    d: polyline(ends),
    fill: "none",
    stroke: "currentColor",
    "stroke-width": look.weight,
    "stroke-dasharray": look.dashes,
  });
}

/** Its name, at the right above it. */
export function levelName({ area, y }: PlotFrame, value: number, name: string): SvgNode {
  return textLine(
    name,
    { x: area.right - 5, y: y(value) - 4 },
    { role: "label", anchor: "end", rim: true },
  );
}
