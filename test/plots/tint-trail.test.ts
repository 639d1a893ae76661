import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  fittedFrame,
  tintTrail,
  type TintTrail,
  type TrailPoint,
} from "../../lib/plots/tint-trail.ts";
import { TEXT_SIZE } from "../../lib/plots/picture.ts";
import { textWidth } from "../../lib/plots/text-width.ts";
import { certain } from "../../lib/quantities/at.ts";
import { hasClass, numberOf, parsedSvg, seenTexts } from "./parsed-svg.ts";

const FRAME: Omit<TintTrail, "trails"> = {
  idPrefix: "t",
  title: "t",
  description: "d",
  ends: { plusA: "red", minusA: "green", plusB: "yellow", minusB: "blue" },
};
const point = (
  a: number,
  b: number,
  standing: TrailPoint["standing"] = "measured",
): TrailPoint => ({ a, b, standing, colour: { hex: "#446688" } });
const trail = (...points: TrailPoint[]): string =>
  tintTrail({ ...FRAME, trails: [{ label: "lead white", points }] });

function markPlaces(svg: string): { x: number; y: number }[] {
  return parsedSvg(svg)
    .all.filter((element) => hasClass(element, "plot__mark"))
    .map((mark) => {
      const circle =
        mark.children[0]?.name === "circle" ? mark.children[0] : mark.children[0]?.children[0];
      if (circle === undefined) throw new Error("Unexpected mark without a circle");
      return { x: numberOf(circle, "cx"), y: numberOf(circle, "cy") };
    });
}

test("a* goes right, b* up, in equal units", () => {
  const [neutral, red, yellow, blue] = markPlaces(
    trail(point(0, 0), point(5, 0), point(0, 5), point(0, -5)),
  );
  if (neutral === undefined || red === undefined || yellow === undefined || blue === undefined)
    throw new Error("Unexpected missing mark");
  expect(red.x - neutral.x).toBeGreaterThan(50);
  expect(red.y).toBe(neutral.y);
  expect(neutral.y - yellow.y).toBeCloseTo(red.x - neutral.x, 2);
  expect(blue.y - neutral.y).toBeCloseTo(red.x - neutral.x, 2);
});

test("holds every point and the neutral cross, wherever they lie", () => {
  const coordinate = fc.double({ min: -110, max: 110, noNaN: true });
  fc.assert(
    fc.property(
      fc.array(fc.tuple(coordinate, coordinate), { minLength: 1, maxLength: 4 }),
      (points) => {
        const svg = trail(...points.map(([a, b]) => point(a, b)));
        const frame = parsedSvg(svg).all.find((element) => hasClass(element, "panel"));
        if (frame === undefined) throw new Error("Unexpected picture without a panel");
        const [left, top] = [numberOf(frame, "x"), numberOf(frame, "y")];
        const [right, bottom] = [left + numberOf(frame, "width"), top + numberOf(frame, "height")];
        for (const { x, y } of markPlaces(svg))
          expect(x > left && x < right && y > top && y < bottom).toBe(true);
        expect(seenTexts(svg)).toContain("0");
      },
    ),
    { seed: 1, numRuns: 100 },
  );
});

// Derived: points, the cross and half a unit beyond them on both sides, in the least of the squares.
test.each([
  [4, 6],
  [4.01, 8],
  [8.01, 14],
  [28.01, 40],
  [78.01, 240],
])("b* from 0 to %s is drawn in a square of %s", (b, side) => {
  const { b: frame, a } = fittedFrame([{ points: [point(0, 0), point(0, b)] }]);
  expect([frame[1] - frame[0], a[1] - a[0]]).toEqual([side, side]);
});
test("a predicted line counts as well as the marks", () => {
  const predicted = [
    { a: 0, b: 0 },
    { a: 0, b: 15 },
  ];
  const { b } = fittedFrame([{ points: [point(1, 1)], predicted }]);
  expect(b[1] - b[0]).toBe(20);
});

describe("lines", () => {
  const dashes = (svg: string): boolean[] =>
    parsedSvg(svg)
      .all.filter((element) => hasClass(element, "plot__line"))
      .map(({ attributes }) => attributes["stroke-dasharray"] !== undefined);
  test("solid only from reading to reading", () => {
    expect(dashes(trail(point(0, 0), point(1, 1), point(2, 1, "derived"), point(3, 2)))).toEqual([
      false,
      true,
      true,
    ]);
  });
  test("a predicted path is one dashed line, and readings are not joined", () => {
    expect(
      dashes(
        tintTrail({
          ...FRAME,
          trails: [
            {
              label: "w",
              points: [point(0, 0), point(2, 2)],
              predicted: [
                { a: 0, b: 0 },
                { a: 1, b: 2 },
                { a: 2, b: 2 },
              ],
            },
          ],
        }),
      ),
    ).toEqual([true]);
  });
  test("readings are drawn over predicted marks", () => {
    const marks = parsedSvg(trail(point(0, 0), point(0.1, 0, "derived"), point(0.2, 0))).all.filter(
      (element) => hasClass(element, "plot__mark"),
    );
    expect(marks.map(({ attributes }) => attributes.class)).toEqual([
      "plot__mark plot__mark--derived",
      "plot__mark plot__mark--measured",
      "plot__mark plot__mark--measured",
    ]);
  });
});

test.each([
  ["blue", point(-1, -9.5), point(1, -9.5)],
  ["yellow", point(-1, 9.2), point(1, 9.2)],
  ["green", point(-9, 0.5), point(-9, -0.5)],
  ["red", point(9, 0.5), point(9, -0.5)],
])("%s stands on the side of its axis where no reading lies", (end, ...readings) => {
  for (const reading of readings) {
    const svg = trail(point(0, 0), reading);
    const mark = certain(markPlaces(svg)[1]);
    const word = certain(
      parsedSvg(svg).all.find(({ name, text }) => name === "text" && text === end),
    );
    const width = textWidth(end);
    const left = numberOf(word, "x") - (word.attributes["text-anchor"] === "end" ? width : 0);
    const baseline = numberOf(word, "y");
    const isBeside = mark.x < left || mark.x > left + width;
    expect(isBeside || mark.y > baseline || mark.y < baseline - TEXT_SIZE).toBe(true);
  }
});

test("every trail is named, however close", () => {
  const trails = ["titanium white", "zinc white", "lead white"].map((label, i) => ({
    label,
    points: [point(0, 0), point(-0.3 * i, -2), point(-0.2 * i, -4)],
  }));
  expect(seenTexts(tintTrail({ ...FRAME, trails }))).toEqual(
    expect.arrayContaining(trails.map(({ label }) => label)),
  );
});

test("refuses nothing to draw and figures that are no figures", () => {
  expect(() => tintTrail({ ...FRAME, trails: [] })).toThrow("The points of a trail, none");
  expect(() => trail()).toThrow("The points of a trail, none");
  for (const bad of [NaN, Infinity])
    expect(() => trail(point(0, 0), point(bad, 0))).toThrow(/The a\* or b\*/);
});
