/** Common practice of the trade, no source: what dries fast and is lean goes below, what is slow and fat above. */
import { expect, test } from "vitest";
import { layeringOrder } from "../../lib/mixing/layering-order.ts";
import type { PaintFacts } from "../../lib/mixing/mixing-paint.ts";
import type { Interval } from "../../lib/quantities/interval.ts";

interface Tube {
  readonly name: string;
  readonly facts: PaintFacts;
}

/** A tube of which nothing is told but days to touch dry and oil, each where it is known. */
function tube(name: string, days?: Interval, gPer100g?: number): Tube {
  return {
    name,
    facts: {
      warning: { signal: null, statements: [], isUnknown: false },
      metals: [],
      isRestricted: false,
      ...(days && { drying: { days, isTried: false, fullFrom: 0.1, text: "" } }),
      ...(gPer100g !== undefined && { oil: { gPer100g, text: "" } }),
    },
  };
}

const names = (tubes: readonly Tube[]): string[] => layeringOrder(tubes).map(({ name }) => name);

test("the quicker to dry lies below, by the middle of its days as they multiply: 1 to 9 days is 3", () => {
  expect(names([tube("slow", [4, 4]), tube("fast", [1, 9])])).toEqual(["fast", "slow"]);
  expect(names([tube("fast", [2, 4]), tube("slow", [3, 5])])).toEqual(["fast", "slow"]);
});

test("of those that dry alike the leaner lies below", () => {
  expect(names([tube("fat", [3, 5], 60), tube("lean", [3, 5], 20)])).toEqual(["lean", "fat"]);
});

test("days come before oil", () => {
  expect(names([tube("slow and lean", [8, 12], 15), tube("fast and fat", [2, 4], 90)])).toEqual([
    "fast and fat",
    "slow and lean",
  ]);
});

test("what is not known lies on top: days first, then oil, and neither in the order that it came", () => {
  expect(
    names([
      tube("no days, no oil"),
      tube("no days", undefined, 30),
      tube("no oil", [3, 5]),
      tube("both", [3, 5], 30),
      tube("neither"),
    ]),
  ).toEqual(["both", "no oil", "no days", "no days, no oil", "neither"]);
});
