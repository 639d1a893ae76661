import { element, polyline, type Point, type SvgNode } from "./svg.ts";

/** A line in the picture's own ink, solid unless it has dashes. @param look its class, width [user units] and dashes. */
export function plainLine(
  points: readonly Point[],
  look: { readonly role?: string; readonly width?: number; readonly dashes?: string | undefined },
): SvgNode {
  return element("path", {
    class: look.role,
    d: polyline(points),
    fill: "none",
    stroke: "currentColor",
    "stroke-width": look.width,
    "stroke-dasharray": look.dashes,
  });
}
