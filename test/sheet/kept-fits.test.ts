/** Fits of a few of the demonstration's colours, each kept by its own drawdowns. */
import { expect, test } from "vitest";
import type { Keep } from "../../lib/kept/kept-result.ts";
import { withOilIndex } from "./few-colours.ts";
import { allFits } from "../../lib/sheet/all-sheets.ts";

/** So many of the few are let down, and fitted: the others are whites. */
const LET_DOWN = 2;

/** Whatever is made, kept by what it was made from; and how much had to be made since that was asked last. */
function keeping(): { readonly kept: Keep; readonly made: () => number } {
  const known = new Map<string, unknown>();
  let count = 0;
  return {
    kept: <V>(origin: unknown, made: () => V): V => {
      const key = JSON.stringify(origin);
      if (!known.has(key)) {
        count += 1;
        known.set(key, made());
      }
      return known.get(key) as V;
    },
    made: () => {
      const own = count;
      count = 0;
      return own;
    },
  };
}

test("a colour whose oil index is another is fitted anew, and no other, to the same as without what was kept", () => {
  const { kept, made } = keeping();
  expect(allFits(withOilIndex(70), kept)).toEqual(allFits(withOilIndex(70)));
  const ofAll = made();
  expect(allFits(withOilIndex(70), kept)).toEqual(allFits(withOilIndex(70)));
  expect(made()).toBe(0);
  expect(allFits(withOilIndex(71), kept)).toEqual(allFits(withOilIndex(71)));
  expect(made()).toBe(ofAll / LET_DOWN);
});
