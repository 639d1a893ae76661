import type { Standing } from "../quantities/figure.ts";
import { plainLine } from "./plain-line.ts";
import { inOwnColour, type ScreenColour } from "./screen-colour.ts";
import { element, polyline, type Attributes, type Point, type SvgNode } from "./svg.ts";
import { textLine } from "./text-label.ts";

export type ShownStanding = Standing | "not stated";

/** Lines that are not measured are never solid: long dashes for what was worked out, short ones for the rest. */
export const DERIVED_DASHES = "9 3";
export const DASHES = "4 3";
/** Where theory says from where to where something lies: a broken outline, faintly filled. */
export const BAND_LOOK = {
  fill: "currentColor",
  "fill-opacity": 0.14,
  stroke: "currentColor",
  "stroke-width": 1,
  "stroke-dasharray": DASHES,
} as const;

/** Half the width of the widest mark, ring counted. */
export const MARK_RADIUS = 5.5;

/** Outlines of marks that tell series of one drawing apart. */
export const MARK_SHAPES = ["round", "square", "triangle", "diamond"] as const;
export type MarkShape = (typeof MARK_SHAPES)[number];

/**
 * How a figure is known, by filling and never by colour alone: measured a filled mark,
 * derived a filled mark with a ring, estimated an open one, stated one in quotes,
 * not stated a dash.
 * @param colour the paint's own colour, with a neutral rim; absent: neutral.
 * @param shape which series it belongs to, where a drawing has several.
 */
export function standingMark(
  standing: ShownStanding,
  at: Point,
  colour?: ScreenColour,
  shape: MarkShape = "round",
): SvgNode {
  return element(
    "g",
    { class: `plot__mark plot__mark--${standing.replace(" ", "-")}` },
    markParts(standing, at, colour, shape),
  );
}

function markParts(
  standing: ShownStanding,
  at: Point,
  colour: ScreenColour | undefined,
  shape: MarkShape,
): SvgNode[] {
  switch (standing) {
    case "measured":
      return [filled(shape, at, 4.5, colour)];
    case "derived":
      return [outline(shape, at, MARK_RADIUS, 1), filled(shape, at, 3, colour)];
    case "estimated":
      return colour === undefined
        ? [outline(shape, at, 4, 1.25)]
        : [outline(shape, at, 4, 3.2), ownOutline(shape, at, 4, colour)];
    case "stated":
      return [
        filled(shape, at, 2.4, colour),
        textLine("\u201c", { x: at.x - 2.8, y: at.y + 5 }, { role: "word", anchor: "end" }),
        textLine("\u201d", { x: at.x + 2.8, y: at.y + 5 }, { role: "word" }),
      ];
    case "not stated":
      return [
        plainLine(
          [
            { x: at.x - 5, y: at.y },
            { x: at.x + 5, y: at.y },
          ],
          { width: 1.5 },
        ),
      ];
  }
}

/** Corners of the shapes, for a round mark's radius of 1: areas look alike. */
const CORNERS: Readonly<
  Record<Exclude<MarkShape, "round">, readonly (readonly [number, number])[]>
> = {
  square: [
    [-0.89, -0.89],
    [0.89, -0.89],
    [0.89, 0.89],
    [-0.89, 0.89],
  ],
  triangle: [
    [0, -1.35],
    [1.17, 0.8],
    [-1.17, 0.8],
  ],
  diamond: [
    [0, -1.25],
    [1.25, 0],
    [0, 1.25],
    [-1.25, 0],
  ],
};

function outlined(shape: MarkShape, { x, y }: Point, r: number, look: Attributes): SvgNode {
  return shape === "round"
    ? element("circle", { cx: x, cy: y, r, ...look })
    : element("path", {
        d: `${polyline(CORNERS[shape].map(([dx, dy]) => ({ x: x + r * dx, y: y + r * dy })))}Z`,
        ...look,
      });
}

function filled(shape: MarkShape, at: Point, r: number, colour: ScreenColour | undefined): SvgNode {
  if (colour === undefined) return outlined(shape, at, r, { fill: "currentColor" });
  return inOwnColour(colour, "fill", (fill) =>
    outlined(shape, at, r, { stroke: "currentColor", "stroke-width": 0.75, ...fill }),
  );
}

function outline(shape: MarkShape, at: Point, r: number, width: number): SvgNode {
  return outlined(shape, at, r, {
    fill: "none",
    stroke: "currentColor",
    "stroke-width": width,
  });
}

function ownOutline(shape: MarkShape, at: Point, r: number, colour: ScreenColour): SvgNode {
  return inOwnColour(colour, "stroke", (stroke) =>
    outlined(shape, at, r, { fill: "none", "stroke-width": 1.8, ...stroke }),
  );
}

/** How a line of that standing is broken; undefined draws it solid, which only what was measured may be. */
export function dashesOf(standing: ShownStanding): string | undefined {
  if (standing === "measured") return undefined;
  return standing === "derived" ? DERIVED_DASHES : DASHES;
}
