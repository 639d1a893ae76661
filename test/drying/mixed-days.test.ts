import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { MIXTURE_SPREAD, mixedDays } from "../../lib/drying/mixed-days.ts";
import { earthChemistry } from "../../lib/drying/earth-chemistry.ts";
import { KNOWN } from "../support/known.ts";

const WHITE = { touchDryDays: 9, massFraction: 0.95, fullFromMassFraction: 0.25 };
const CARBON = { touchDryDays: 8, massFraction: 0.05, fullFromMassFraction: 0.02 };

describe("two paints mixed", () => {
  /** Common practice, no source: what takes 8 days and what takes 9 do not take 15 to 47 together. */
  test("carbon that takes 8 days in a white that takes 9 stays near both", () => {
    const [earlier, later] = mixedDays(WHITE, CARBON);
    expect(earlier).toBeGreaterThan(6);
    expect(later).toBeLessThan(12);
  });
  /** By hand: w from .05 to 1 / (1 + 1); 9 ^ .5 x 4 ^ .5 = 6, 9 ^ .95 x 4 ^ .05 = 8.64. */
  test("by hand", () => {
    const [earlier, later] = mixedDays(WHITE, { ...CARBON, touchDryDays: 4 });
    expect(earlier).toBeCloseTo(6 / 1.25, 6);
    expect(later).toBeCloseTo(9 ** 0.95 * 4 ** 0.05 * 1.25, 6);
  });
  test("is never further from its parts than the spread", () => {
    const days = fc.double({ min: 0.5, max: 60, noNaN: true });
    const share = fc.double({ min: 0.01, max: 1, noNaN: true });
    fc.assert(
      fc.property(days, days, share, share, share, (one, other, mass, full, otherFull) => {
        const [earlier, later] = mixedDays(
          { touchDryDays: one, massFraction: 1 - mass / 2, fullFromMassFraction: full },
          { touchDryDays: other, massFraction: mass / 2, fullFromMassFraction: otherFull },
        );
        expect(earlier).toBeGreaterThanOrEqual(Math.min(one, other) / MIXTURE_SPREAD - 1e-9);
        expect(later).toBeLessThanOrEqual(Math.max(one, other) * MIXTURE_SPREAD + 1e-9);
      }),
      { seed: 1 },
    );
  });
  test.each([
    [{ touchDryDays: 0 }, /days to touch dry/],
    [{ touchDryDays: NaN }, /days to touch dry/],
    [{ massFraction: 1.1 }, /share of the dry pigment/],
    [{ fullFromMassFraction: 0 }, /share that acts in full/],
  ])("refuses %o", (wrong, message) =>
    expect(() => mixedDays({ ...WHITE, ...wrong }, CARBON)).toThrow(message),
  );
});

/** Common practice, no source: umbers are rich in manganese, siennas are not. */
test("a sienna is no umber, though both are PBr 7", () => {
  const { chemistry } = KNOWN.pigment("PBr 7");
  expect(earthChemistry(chemistry, "Burnt umber")).toBe("manganese");
  expect(earthChemistry(chemistry, "Raw sienna")).toBe("manganese trace");
  expect(earthChemistry(chemistry, "Brown earth")).toBe("manganese");
});
