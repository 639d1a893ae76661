import { element, polyline, refusal, type Attributes, type Point, type SvgNode } from "./svg.ts";
import { sides, type Box } from "./box.ts";
import { PANEL_GREY } from "./picture.ts";

/** A paint as screens can show it: `srgb.hex` and `displayP3.css` of a sheet. */
export interface ScreenColour {
  readonly hex: string;
  readonly displayP3?: string | undefined;
}

const HEX = /^#[0-9a-f]{6}$/i;
const DISPLAY_P3 = /^color\(display-p3(?: -?\d*\.?\d+(?:e-?\d+)?){3}\)$/;

/**
 * Shapes in a paint's own colour. The sRGB value stands on the group and the Display P3
 * value on the shape: where the second is not understood, the first is inherited.
 * @throws RangeError when either is not written as CSS Color 4 writes it.
 */
export function inOwnColour(
  colour: ScreenColour,
  paint: "fill" | "stroke",
  shape: (attributes: Attributes) => SvgNode,
  attributes: Attributes = {},
): SvgNode {
  if (!HEX.test(colour.hex)) throw refusal("sRGB colour", colour.hex, "#rrggbb");
  if (colour.displayP3 !== undefined && !DISPLAY_P3.test(colour.displayP3)) {
    throw refusal("Display P3 colour", colour.displayP3, "color(display-p3 r g b)");
  }
  return element("g", { ...attributes, [paint]: colour.hex.toLowerCase() }, [
    shape({ [paint]: colour.displayP3 }),
  ]);
}

/** Nearer than this to the panel, in steps of 255 of any channel, a swatch has no visible edge. */
const LOST_ON_PANEL = 14;

/**
 * A swatch: no border, no round corner, no shadow. Only one that would be lost on N 6
 * (a neutral tint at L* 70) has a hairline, so that it is seen to be there; and any on the page
 * itself, of which nobody knows how dark it is.
 */
export function swatch(colour: ScreenColour, box: Box, isOnPage = false): SvgNode {
  const hairline =
    isOnPage || isLostOnPanel(colour)
      ? { stroke: "currentColor", "stroke-width": 0.75, "stroke-opacity": 0.5 }
      : {};
  return inOwnColour(
    colour,
    "fill",
    (fill) => element("rect", { ...sides(box), ...fill, ...hairline }),
    { class: "swatch" },
  );
}

function isLostOnPanel({ hex }: ScreenColour): boolean {
  return [1, 3, 5].every(
    (at) =>
      Math.abs(parseInt(hex.slice(at, at + 2), 16) - parseInt(PANEL_GREY.slice(at, at + 2), 16)) <
      LOST_ON_PANEL,
  );
}

/** A line in the paint's own colour, with a dark rim that keeps a grey of the panel's own lightness visible. */
export function ownColourLine(
  colour: ScreenColour,
  points: readonly Point[],
  dashes?: string,
): SvgNode[] {
  const line = {
    d: polyline(points),
    fill: "none",
    "stroke-linejoin": "round",
    "stroke-dasharray": dashes,
  } as const;
  return [
    element("path", { class: "plot__rim", ...line, stroke: "currentColor", "stroke-width": 3 }),
    inOwnColour(colour, "stroke", (stroke) =>
      element("path", { class: "plot__curve", ...line, "stroke-width": 2, ...stroke }),
    ),
  ];
}
