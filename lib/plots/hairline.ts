import type { Box } from "./box.ts";
import { element, polyline, type Point, type SvgNode } from "./svg.ts";

type HairlineRole = "axis" | "grid" | "reference" | "leader" | "whisker";

/** A thin neutral line; `role` is its class. */
export function hairline(from: Point, to: Point, role: HairlineRole): SvgNode {
  const opacity = { axis: 0.6, grid: 0.18, reference: 0.7, leader: 0.7, whisker: 0.85 }[role];
  return element("path", {
    class: `plot__${role}`,
    d: polyline([from, to]),
    fill: "none",
    stroke: "currentColor",
    "stroke-width": role === "leader" ? 0.75 : 1,
    "stroke-opacity": opacity,
  });
}

/** A hairline from the left edge of an area to the right one. */
export function lineAcross({ left, right }: Box, y: number, role: HairlineRole): SvgNode {
  return hairline({ x: left, y }, { x: right, y }, role);
}

/** A hairline from the top of an area to its foot. */
export function lineDown({ top, bottom }: Box, x: number, role: HairlineRole): SvgNode {
  return hairline({ x, y: top }, { x, y: bottom }, role);
}
