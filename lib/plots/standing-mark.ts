import type { Standing } from "../quantities/figure.ts";
import { inOwnColour, type ScreenColour } from "./screen-colour.ts";
import { element, polyline, type Point, type SvgNode } from "./svg.ts";
import { textLine } from "./text-label.ts";

export type ShownStanding = Standing | "not stated";

/** Lines that are not measured are never solid: long dashes for what was worked out, short ones for the rest. */
export const DERIVED_DASHES = "9 3";
export const DASHES = "4 3";

/** Half the width of the widest mark, ring counted. */
export const MARK_RADIUS = 5.5;

/**
 * How a figure is known, by shape and never by colour alone: measured a filled mark,
 * derived a filled mark with a ring, estimated an open one, stated one in quotes,
 * not stated a dash.
 * @param colour the paint's own colour, with a neutral rim; absent: neutral.
 */
export function standingMark(standing: ShownStanding, at: Point, colour?: ScreenColour): SvgNode {
  return element(
    "g",
    { class: `plot__mark plot__mark--${standing.replace(" ", "-")}` },
    markParts(standing, at, colour),
  );
}

function markParts(
  standing: ShownStanding,
  at: Point,
  colour: ScreenColour | undefined,
): SvgNode[] {
  switch (standing) {
    case "measured":
      return [disc(at, 4.5, colour)];
    case "derived":
      return [ring(at, MARK_RADIUS, 1), disc(at, 3, colour)];
    case "estimated":
      return colour === undefined
        ? [ring(at, 4, 1.25)]
        : [ring(at, 4, 3.2), ownRing(at, 4, colour)];
    case "stated":
      return [
        disc(at, 2.4, colour),
        textLine("\u201c", { x: at.x - 2.8, y: at.y + 5 }, { role: "word", anchor: "end" }),
        textLine("\u201d", { x: at.x + 2.8, y: at.y + 5 }, { role: "word" }),
      ];
    case "not stated":
      return [
        element("path", {
          d: polyline([
            { x: at.x - 5, y: at.y },
            { x: at.x + 5, y: at.y },
          ]),
          fill: "none",
          stroke: "currentColor",
          "stroke-width": 1.5,
        }),
      ];
  }
}

function disc({ x, y }: Point, r: number, colour: ScreenColour | undefined): SvgNode {
  if (colour === undefined) return element("circle", { cx: x, cy: y, r, fill: "currentColor" });
  return inOwnColour(colour, "fill", (fill) =>
    element("circle", { cx: x, cy: y, r, stroke: "currentColor", "stroke-width": 0.75, ...fill }),
  );
}

function ring({ x, y }: Point, r: number, width: number): SvgNode {
  return element("circle", {
    cx: x,
    cy: y,
    r,
    fill: "none",
    stroke: "currentColor",
    "stroke-width": width,
  });
}

function ownRing({ x, y }: Point, r: number, colour: ScreenColour): SvgNode {
  return inOwnColour(colour, "stroke", (stroke) =>
    element("circle", { cx: x, cy: y, r, fill: "none", "stroke-width": 1.8, ...stroke }),
  );
}

/** How a line of that standing is broken; undefined draws it solid, which only what was measured may be. */
export function dashesOf(standing: ShownStanding): string | undefined {
  if (standing === "measured") return undefined;
  return standing === "derived" ? DERIVED_DASHES : DASHES;
}
