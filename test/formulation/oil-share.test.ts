import { expect, test } from "vitest";
import { oilIndexOfShare } from "../../lib/formulation/oil-share.ts";

// basis: derived. 31 g of oil in 100 g of paint lie with 69 g of pigment: 31/69 x 100 = 44.9; 49 with 51: 96.1.
test.each([
  [31, 45],
  [49, 96],
  [50, 100],
])("%d %% of the paint are %d g to 100 g of pigment", (percent, oilIndex) =>
  expect(oilIndexOfShare(percent)).toBe(oilIndex),
);

test.each([0, 100, -1, NaN])("%d %% is no share of oil in a paint", (percent) =>
  expect(() => oilIndexOfShare(percent)).toThrow(RangeError),
);
