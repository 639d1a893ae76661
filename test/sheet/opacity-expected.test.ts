import { expect, test } from "vitest";
import { EXPECTED_OPACITIES } from "../../lib/optics/films/expected-opacity.ts";
import { isKnown } from "../../lib/quantities/figure.ts";
import { SHEETS } from "./demonstration-sheets.ts";

/** A class from films or let-downs beside the class that handbooks lead one to expect of the pigment. */
const BOTH = SHEETS.flatMap(({ slug, pigments, optics: { opacityClass } }) => {
  const [pigment] = pigments;
  const expected = pigment?.expectedOpacity;
  return pigments.length === 1 &&
    expected !== undefined &&
    isKnown(expected) &&
    isKnown(opacityClass)
    ? [{ slug, measured: step(opacityClass.value), expected: step(expected.value) }]
    : [];
});

function step(word: string): number {
  return EXPECTED_OPACITIES.findIndex((each) => each === word);
}
test.each(BOTH)(
  "$slug: the class lies within a step of what is expected of its pigment",
  ({ measured, expected }) => expect(Math.abs(measured - expected)).toBeLessThanOrEqual(1),
);

test("and most of them agree", () => {
  expect(BOTH.length).toBeGreaterThan(20);
  expect(BOTH.filter(({ measured, expected }) => measured === expected).length).toBeGreaterThan(
    BOTH.length / 2,
  );
});
