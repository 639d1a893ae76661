import { describe, expect, test } from "vitest";
import {
  areaOutside,
  doCross,
  lengthInside,
  sharedArea,
  type Box,
  type Segment,
} from "../../lib/plots/box.ts";

const box = (left: number, top: number, right: number, bottom: number): Box => ({
  left,
  top,
  right,
  bottom,
});
const line = (x1: number, y1: number, x2: number, y2: number): Segment => [
  { x: x1, y: y1 },
  { x: x2, y: y2 },
];
const UNIT = box(0, 0, 10, 10);

test.each([
  [box(5, 5, 15, 15), 25],
  [box(2, 2, 4, 4), 4],
  [box(10, 0, 20, 10), 0],
  [box(20, 20, 30, 30), 0],
])("sharedArea with %o is %s, and the rest lies outside", (other, area) => {
  expect(sharedArea(UNIT, other)).toBe(area);
  expect(areaOutside(other, UNIT)).toBe(
    (other.right - other.left) * (other.bottom - other.top) - area,
  );
});

test.each([
  ["through", line(-5, 5, 15, 5), 10],
  ["inside", line(2, 2, 5, 6), 5],
  ["aslant", line(-10, -10, 20, 20), Math.hypot(10, 10)],
  ["half in", line(5, 5, 5, 50), 5],
  ["beside", line(-1, -5, -1, 20), 0],
  ["past the corner", line(-5, 8, 3, 18), 0],
  ["short of it", line(-9, 5, -1, 5), 0],
] as const)("lengthInside: %s", (_, segment, length) => {
  expect(lengthInside(segment, UNIT)).toBeCloseTo(length, 9);
});

describe("doCross", () => {
  test.each([
    [line(0, 0, 10, 10), line(0, 10, 10, 0), true],
    [line(0, 0, 4, 4), line(0, 10, 10, 0), false],
    [line(0, 0, 10, 0), line(5, 0, 5, 5), true],
    [line(0, 0, 10, 0), line(0, 1, 10, 1), false],
  ])("%o and %o: %s", (one, other, expected) => {
    expect(doCross(one, other)).toBe(expected);
    expect(doCross(other, one)).toBe(expected);
  });
});
