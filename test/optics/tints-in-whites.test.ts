import { expect, test } from "vitest";
import { isStatement } from "../../lib/quantities/statement.ts";
import { predictedAtLightness } from "../../lib/optics/tints/equal-lightness.ts";
import { ladderModel, type LadderModel } from "../../lib/optics/tints/ladder.ts";
import {
  fitOf,
  LAMP,
  LEAD,
  QUIET_BENCH,
  READING_NOISE,
  syntheticSet,
  TITANIUM,
  YELLOW,
  ZINC,
  type SyntheticPigment,
} from "./synthetic-drawdowns.ts";

function inWhites(colour: SyntheticPigment, massRatios: readonly number[]): LadderModel[] {
  const fit = fitOf(
    syntheticSet(
      colour,
      [
        { slug: "titanium", white: TITANIUM, massRatios },
        { slug: "lead", white: LEAD, massRatios },
        { slug: "zinc", white: ZINC, massRatios },
      ],
      { ...QUIET_BENCH, noise: READING_NOISE, seed: 2 },
    ),
  );
  return fit.whites.map(({ slug }) => ladderModel(fit, slug));
}

test("a black is bluer at L* 50 in the white that scatters the shorter waves more", () => {
  // S of titanium falls as lambda^-1.4, of zinc as lambda^-2.2, of lead as lambda^-.2: b* in that order.
  const [titanium, lead, zinc] = inWhites(LAMP, [0.05, 0.01, 0.002]).map((ladder) => {
    const tint = predictedAtLightness(ladder, 50);
    return isStatement(tint) ? NaN : tint.b;
  });
  expect(zinc).toBeLessThan(titanium ?? NaN);
  expect(titanium).toBeLessThan(lead ?? NaN);
});

test("a pale colour's ladder reaches no L* 50", () => {
  for (const ladder of inWhites(YELLOW, [0.5, 0.1, 0.02]))
    expect(predictedAtLightness(ladder, 50)).toMatchObject({
      rule: "ladder-does-not-reach",
      values: { L: 50 },
    });
});
