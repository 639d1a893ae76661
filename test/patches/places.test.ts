import { describe, expect, test } from "vitest";
import { lightFall } from "../../lib/patches/even-light.ts";
import {
  gridOf,
  isConvex,
  projected,
  type Quadrilateral,
} from "../../lib/patches/quadrilateral.ts";

const SQUARE: Quadrilateral = [
  [0, 0],
  [60, 0],
  [60, 40],
  [0, 40],
];

describe("patches by the corners of a chart", () => {
  test("of a chart seen square on they are equal", () => {
    const patches = gridOf(SQUARE, 6, 4);
    expect(patches).toHaveLength(24);
    expect(patches[7]?.flat()).toEqual(
      [10, 10, 20, 10, 20, 20, 10, 20].map((n) => expect.closeTo(n, 9) as number),
    );
  });

  /** By hand: the diagonals of a square meet in its middle, also in perspective. */
  test("in perspective the middle lies where the diagonals cross", () => {
    const quad: Quadrilateral = [
      [10, 0],
      [50, 0],
      [60, 30],
      [0, 30],
    ];
    const [x, y] = projected(quad)(0.5, 0.5);
    expect(x).toBeCloseTo(30, 9);
    // Lines (10,0)-(60,30) and (50,0)-(0,30) cross where 3/5 (x - 10) = 3/5 (50 - x): at x = 30, y = 12.
    expect(y).toBeCloseTo(12, 9);
  });

  test("corners go round from the top left as a clock does", () => {
    expect(isConvex(SQUARE)).toBe(true);
    expect(isConvex([SQUARE[1], SQUARE[0], SQUARE[3], SQUARE[2]])).toBe(false);
    expect(
      isConvex([
        [0, 0],
        [60, 0],
        [10, 5],
        [0, 40],
      ]),
    ).toBe(false);
    expect(() =>
      projected([
        [0, 0],
        [1, 1],
        [2, 2],
        [3, 3],
      ]),
    ).toThrow("span no area");
  });
});

describe("uneven light", () => {
  const spots = (light: (x: number, y: number) => number) =>
    [0, 100, 200, 300].flatMap((x) =>
      [0, 100, 200].map((y) => ({ at: [x, y] as const, light: light(x, y) })),
    );

  test("a fall from left to right is told, as a share of the mean", () => {
    const own = (x: number): number => 0.8 * Math.exp(-x / 1000);
    const fall = lightFall(spots(own));
    expect(fall(0, 50) / fall(300, 50)).toBeCloseTo(Math.exp(0.3), 6);
    const all = spots((x, y) => fall(x, y)).map(({ light }) => light);
    expect(all.reduce((sum, share) => sum + share, 0) / all.length).toBeCloseTo(1, 2);
  });

  test("of few spots nothing is told", () => {
    expect(lightFall(spots((x) => 1 + x).slice(0, 5))(300, 0)).toBe(1);
  });
});
