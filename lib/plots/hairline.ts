import { element, polyline, type Point, type SvgNode } from "./svg.ts";

/** A thin neutral line; `role` is its class. */
export function hairline(
  from: Point,
  to: Point,
  role: "axis" | "grid" | "reference" | "leader" | "whisker",
  dashes?: string,
): SvgNode {
  const opacity = { axis: 0.6, grid: 0.18, reference: 0.7, leader: 0.7, whisker: 0.85 }[role];
  return element("path", {
    class: `plot__${role}`,
    d: polyline([from, to]),
    fill: "none",
    stroke: "currentColor",
    "stroke-width": role === "leader" ? 0.75 : 1,
    "stroke-opacity": opacity,
    "stroke-dasharray": dashes,
  });
}
