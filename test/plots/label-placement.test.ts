import fc from "fast-check";
import { expect, test } from "vitest";
import { areaOutside, boxAround, sharedArea } from "../../lib/plots/box.ts";
import {
  drawnLabels,
  placedLabels,
  spotsAround,
  type LabelWish,
} from "../../lib/plots/label-placement.ts";
import { element, writtenSvg } from "../../lib/plots/svg.ts";

const BOUNDS = { left: 0, top: 0, right: 300, bottom: 300 };
const wish = (x: number, y: number, mayDrop: boolean, text = "Raw sienna"): LabelWish => ({
  text,
  mayDrop,
  spots: spotsAround(text, { x, y }, [8, 20]),
});

test("a label alone stands to the right of its mark, without a leader", () => {
  const [spot] = placedLabels(
    [wish(100, 100, false)],
    { boxes: [boxAround({ x: 100, y: 100 }, 5)], segments: [] },
    BOUNDS,
  );
  expect(spot?.anchor).toBe("start");
  expect(spot?.box.left).toBe(108);
  expect(spot?.leader).toBeUndefined();
});

test("at the right edge it stands to the left", () => {
  const [spot] = placedLabels([wish(290, 100, false)], { boxes: [], segments: [] }, BOUNDS);
  expect(spot?.anchor).toBe("end");
});

test("a line through the first spot sends it elsewhere", () => {
  const [spot] = placedLabels(
    [wish(100, 100, false)],
    {
      boxes: [],
      segments: [
        [
          { x: 105, y: 100 },
          { x: 300, y: 100 },
        ],
      ],
    },
    BOUNDS,
  );
  expect(spot?.anchor).not.toBe("start");
});

test("a faint line through the first spot sends it elsewhere where that is near, and never far", () => {
  const faint = (x: number) =>
    [
      [
        { x, y: 0 },
        { x, y: 300 },
      ],
    ] as const;
  const placed = (label: LabelWish) =>
    placedLabels([label], { boxes: [], segments: [], faint: faint(140) }, BOUNDS)[0];
  expect(placed(wish(100, 100, false))?.anchor).not.toBe("start");
  // Where nothing but the far spots is clear, behind its rim the line can be followed.
  const [first, ...others] = wish(100, 100, false).spots;
  const far = others.slice(-1);
  const fillers = Array.from({ length: 60 }, () => first).flatMap((spot) => spot ?? []);
  expect(placed({ ...wish(100, 100, false), spots: [...fillers, ...far] })).toBe(first);
});

test("labels that may be dropped never overlap marks, edges or each other", () => {
  const points = fc.array(
    fc.record({ x: fc.integer({ min: 5, max: 295 }), y: fc.integer({ min: 5, max: 295 }) }),
    { minLength: 1, maxLength: 25 },
  );
  let drawn = 0;
  fc.assert(
    fc.property(points, (marks) => {
      const boxes = marks.map((mark) => boxAround(mark, 5));
      const spots = placedLabels(
        marks.map(({ x, y }) => wish(x, y, true)),
        { boxes, segments: [] },
        BOUNDS,
      ).filter((spot) => spot !== undefined);
      drawn += spots.length;
      spots.forEach((spot, i) => {
        // 1: what "may drop" lets pass, in square units.
        expect(areaOutside(spot.box, BOUNDS)).toBeLessThanOrEqual(1);
        for (const box of boxes) expect(sharedArea(spot.box, box)).toBeLessThanOrEqual(1);
        for (const other of spots.slice(i + 1))
          expect(sharedArea(spot.box, other.box)).toBeLessThanOrEqual(1);
      });
    }),
    { seed: 1, numRuns: 60 },
  );
  expect(drawn).toBeGreaterThan(100);
});

test("one that may not be dropped is drawn even where there is no room", () => {
  const crowd = { boxes: [BOUNDS], segments: [] };
  expect(
    placedLabels([wish(150, 150, false), wish(150, 150, true)], crowd, BOUNDS).map(
      (spot) => spot !== undefined,
    ),
  ).toEqual([true, false]);
});

test("a farther spot has a line that leads back", () => {
  const wishes = [
    { text: "a", mayDrop: false, spots: spotsAround("a", { x: 50, y: 50 }, [8, 20]).slice(8) },
  ];
  const svg = writtenSvg(
    element("g", {}, drawnLabels(wishes, { boxes: [], segments: [] }, BOUNDS)),
  );
  expect(svg).toContain("plot__leader");
});
