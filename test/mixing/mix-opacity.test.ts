import { describe, expect, test } from "vitest";
import { mixPasses } from "../../lib/mixing/finding/judged-mix.ts";
import type { Mix } from "../../lib/mixing/mix.ts";
import { mixOpacity } from "../../lib/mixing/prediction/mix-opacity.ts";
import { predictedMix } from "../../lib/mixing/prediction/predicted-mix.ts";
import { notRefused } from "../../lib/quantities/statement.ts";
import { sheetOf } from "../sheet/demonstration-sheets.ts";
import { DATA, RANGE } from "./demonstration-range.ts";

const alone = (slug: string): Mix => ({
  by: "mass",
  colours: [{ slug, parts: 1 }],
  white: { slug: "titanium-white", parts: 0 },
});
const opacityOf = (mix: Mix) => mixOpacity(notRefused(predictedMix(mix, RANGE)), RANGE);

/** Derived: a mixture of one colour is the colour, so that the bench says what the sheet says. */
describe("a mixture of one dark colour", () => {
  test.each(["burnt-umber", "burnt-sienna", "iron-oxide-black", "prussian-blue"])(
    "%s is of the class that its sheet has, by what it scatters",
    (slug) => {
      const { class: word, isDark } = opacityOf(alone(slug)) ?? {};
      expect(isDark).toBe(true);
      expect(sheetOf(slug).optics.opacityClass).toMatchObject({ value: word });
    },
  );

  test("is not found among what has to hide by its body, though it hides a chart", () => {
    const mix = alone("burnt-umber");
    expect(opacityOf(mix)?.contrastRatio).toBeGreaterThan(0.98);
    const limits = { withoutMetals: [], isUnlabelled: false };
    expect(mixPasses(mix, { ...limits, opacity: 1 }, RANGE)).toBe(false);
    expect(mixPasses(mix, { ...limits, opacity: 4 }, RANGE)).toBe(true);
  });
});

test("a pale mixture goes by its contrast ratio", () => {
  const found = opacityOf({
    by: "mass",
    colours: [{ slug: "burnt-umber", parts: 1 }],
    white: { slug: "titanium-white", parts: 20 },
  });
  expect(found).toMatchObject({ isDark: false, class: "opaque" });
  expect(DATA.paints.length).toBeGreaterThan(20);
});
