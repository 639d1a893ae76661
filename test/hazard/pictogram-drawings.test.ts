import { describe, expect, test } from "vitest";
import {
  HAZARD_CLASSES,
  PICTOGRAM_CODES,
  type ClassElements,
} from "../../lib/hazard/classify/hazard-class.ts";
import { PICTOGRAM_DRAWINGS, PICTOGRAM_FRAME } from "../../lib/hazard/label/pictogram-drawings.ts";

/** Every end point of a path: absolute commands only, so that a drawing can be scaled and printed as it stands. */
function points(d: string): [number, number][] {
  const found: [number, number][] = [];
  let x = 0,
    y = 0;
  for (const [, command = "", rest = ""] of d.matchAll(/([A-Z])([^A-Za-z]*)/g)) {
    const n = (rest.match(/-?\d+(?:\.\d+)?/g) ?? []).map(Number);
    if (command === "H") x = n.at(-1) ?? NaN;
    else if (command === "V") y = n.at(-1) ?? NaN;
    else if (command !== "Z") {
      const size = { M: 2, L: 2, C: 6, A: 7 }[command] ?? NaN;
      expect(n.length % (command === "M" || command === "L" ? 2 : size)).toBe(0);
      const step = command === "M" || command === "L" ? 2 : size;
      for (let i = step; i <= n.length; i += step) found.push([n[i - 2] ?? NaN, n[i - 1] ?? NaN]);
      [x, y] = found.at(-1) ?? [x, y];
      continue;
    }
    found.push([x, y]);
  }
  return found;
}

describe.each(PICTOGRAM_CODES)("%s", (code) => {
  const { nameKey, paths } = PICTOGRAM_DRAWINGS[code];

  test("stands inside the frame of the diamond", () => {
    expect(paths.length).toBeGreaterThan(0);
    for (const { d } of paths) {
      expect(d).toMatch(/^M[MLHVCAZ\d .-]+Z$/);
      // The frame's inner edge lies where |x - 50| + |y - 50| = 42.
      for (const [x, y] of points(d))
        expect(Math.abs(x - 50) + Math.abs(y - 50)).toBeLessThanOrEqual(42);
    }
  });

  test("has a name of its own", () => {
    expect(
      Object.values(PICTOGRAM_DRAWINGS).filter((other) => other.nameKey === nameKey),
    ).toHaveLength(1);
    expect(PICTOGRAM_DRAWINGS[code].code).toBe(code);
  });
});

test("every pictogram that a class can call for is drawn", () => {
  const called = Object.values(HAZARD_CLASSES).flatMap(
    (elements: ClassElements) => elements.pictogram ?? [],
  );
  for (const code of called) expect(PICTOGRAM_DRAWINGS[code].paths.length).toBeGreaterThan(0);
});

test("the frame is a ring: outer and inner diamond", () => {
  expect(PICTOGRAM_FRAME.match(/M/g)).toHaveLength(2);
});
