import type { Point } from "./svg.ts";

/** A rectangle in user units, y downwards. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export type Segment = readonly [Point, Point];

/** Area that two rectangles share. */
export function sharedArea(one: Box, other: Box): number {
  const width = Math.min(one.right, other.right) - Math.max(one.left, other.left);
  const height = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top);
  return width > 0 && height > 0 ? width * height : 0;
}

/** Area of `box` that lies outside `bounds`. */
export function areaOutside(box: Box, bounds: Box): number {
  return (box.right - box.left) * (box.bottom - box.top) - sharedArea(box, bounds);
}

/** A rectangle as attributes of an SVG `rect`. */
export function sides({ left, top, right, bottom }: Box): {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
} {
  return { x: left, y: top, width: right - left, height: bottom - top };
}

/** A rectangle without a margin at its left and right, and one at its top and bottom. */
export function within({ left, top, right, bottom }: Box, across: number, down: number): Box {
  return { left: left + across, top: top + down, right: right - across, bottom: bottom - down };
}

/** A rectangle grown by `by` on each side. */
export function grown(box: Box, by: number): Box {
  return { left: box.left - by, top: box.top - by, right: box.right + by, bottom: box.bottom + by };
}

export function boxAround({ x, y }: Point, radius: number): Box {
  return { left: x - radius, top: y - radius, right: x + radius, bottom: y + radius };
}

/** Length of a line that lies inside a rectangle (parametric clipping, side by side). */
export function lengthInside([from, to]: Segment, box: Box): number {
  // Nearly every line of a plot is nowhere near a label: asked a million times a sheet.
  if (
    Math.max(from.x, to.x) < box.left ||
    Math.min(from.x, to.x) > box.right ||
    Math.max(from.y, to.y) < box.top ||
    Math.min(from.y, to.y) > box.bottom
  )
    return 0;
  const run = { x: to.x - from.x, y: to.y - from.y };
  let [enter, leave] = [0, 1];
  for (const [direction, distance] of [
    [-run.x, from.x - box.left],
    [run.x, box.right - from.x],
    [-run.y, from.y - box.top],
    [run.y, box.bottom - from.y],
  ] as const) {
    if (direction === 0 && distance < 0) return 0;
    if (direction < 0) enter = Math.max(enter, distance / direction);
    if (direction > 0) leave = Math.min(leave, distance / direction);
  }
  return leave > enter ? (leave - enter) * Math.hypot(run.x, run.y) : 0;
}

/** Whether two lines cross, or one ends on the other. */
export function doCross([a, b]: Segment, [c, d]: Segment): boolean {
  return side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b);
}

/** On which side of a line a point lies: -1, 0 on it, 1. Asked a million times a sheet, so no closure of its caller. */
function side(from: Point, to: Point, at: Point): number {
  return Math.sign((to.x - from.x) * (at.y - from.y) - (to.y - from.y) * (at.x - from.x));
}

/** The lines between successive points. */
export function segmentsThrough(points: readonly Point[]): Segment[] {
  return points.slice(1).map((point, i) => [points[i] ?? point, point]);
}
