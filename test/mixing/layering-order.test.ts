/** Common practice of the trade, no source: what dries fast and is lean goes below, what is slow and fat above. */
import { expect, test } from "vitest";
import { fatterBelow, layeringOrder } from "../../lib/mixing/layering-order.ts";
import type { PaintFacts } from "../../lib/mixing/mixing-paint.ts";
import { ends, type Interval } from "../../lib/quantities/interval.ts";

interface Tube {
  readonly name: string;
  readonly facts: PaintFacts;
}

/** A tube of which nothing is told but days to touch dry and oil, each where it is known. */
function tube(name: string, days?: Interval, oil?: number | Interval): Tube {
  return {
    name,
    facts: {
      warning: { signal: null, statements: [], isUnknown: false },
      metals: [],
      isRestricted: false,
      ...(days && { drying: { days, isTried: false, fullFrom: 0.1, text: "" } }),
      ...(oil !== undefined && { oil: { volumeFraction: ends(oil), text: "" } }),
    },
  };
}

const names = (tubes: readonly Tube[]): string[] => layeringOrder(tubes).map(({ name }) => name);

test("the quicker to dry lies below, by the middle of its days as they multiply: 1 to 9 days is 3", () => {
  expect(names([tube("slow", [4, 4]), tube("fast", [1, 9])])).toEqual(["fast", "slow"]);
  expect(names([tube("fast", [2, 4]), tube("slow", [3, 5])])).toEqual(["fast", "slow"]);
});

test("of those that dry alike the leaner lies below", () => {
  expect(names([tube("fat", [3, 5], 0.7), tube("lean", [3, 5], 0.4)])).toEqual(["lean", "fat"]);
});

test("days come before oil", () => {
  expect(names([tube("slow and lean", [8, 12], 0.4), tube("fast and fat", [2, 4], 0.74)])).toEqual([
    "fast and fat",
    "slow and lean",
  ]);
});

test("what is not known lies on top: days first, then oil, and neither in the order that it came", () => {
  expect(
    names([
      tube("no days, no oil"),
      tube("no days", undefined, 0.5),
      tube("no oil", [3, 5]),
      tube("both", [3, 5], 0.5),
      tube("neither"),
    ]),
  ).toEqual(["both", "no oil", "no days", "no days, no oil", "neither"]);
});

// The rule of fat over lean, common practice: each layer at least as fat as what lies below.
test("marks what is leaner than any below it, with the fattest of these, and only where the ranges leave no doubt", () => {
  const below = (...tubes: readonly Tube[]): (string | undefined)[] =>
    fatterBelow(tubes).map((one) => one?.name);
  const [umber, lean, earth] = [
    tube("umber", undefined, 0.74),
    tube("lean", undefined, 0.45),
    tube("earth", undefined, 0.7),
  ];
  expect(below(umber, lean, earth)).toEqual([undefined, "umber", "umber"]);
  expect(below(lean, earth, umber)).toEqual([undefined, undefined, undefined]);
  expect(below(earth, umber, lean)).toEqual([undefined, undefined, "umber"]);
  // Ranges that meet, and less than a hundredth between two, tell nothing; nor does what is not known.
  expect(below(umber, tube("", undefined, [0.4, 0.73]))).toEqual([undefined, undefined]);
  expect(below(umber, tube("", undefined, [0.4, 0.72]))).toEqual([undefined, "umber"]);
  expect(below(tube("", undefined, [0.6, 0.9]), tube("", undefined, 0.6))[1]).toBeUndefined();
  expect(below(umber, tube("unknown"), lean)).toEqual([undefined, undefined, "umber"]);
});
