import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { earthChemistry } from "../../lib/drying/brown-earth.ts";
import { daysOfParts, TRIAL_SPREAD, type PartAlone } from "../../lib/drying/days-of-parts.ts";
import { KNOWN } from "../support/known.ts";

const tried = (
  touchDryDays: number,
  massFraction: number | undefined,
  full: number,
): PartAlone => ({
  name: `${touchDryDays} days`,
  touchDryDays,
  isTried: true,
  massFraction,
  fullFromMassFraction: full,
});
const WHITE = tried(9, 0.95, 0.25);
const CARBON = tried(8, 0.05, 0.02);

describe("parts mixed", () => {
  /** Common practice, no source: what takes 8 days and what takes 9 do not take 15 to 47 together. */
  test("carbon that takes 8 days in a white that takes 9 stays near both", () => {
    const [earlier, later] = daysOfParts([WHITE, CARBON]).touchDryDays;
    expect(earlier).toBeGreaterThan(6);
    expect(later).toBeLessThan(12);
    expect(later).toBe(9);
  });
  /** By hand: w from .05 to 1 / (1 + 1); 9 ^ .5 x 4 ^ .5 = 6, 9 ^ .95 x 4 ^ .05 = 8.64. */
  test("by hand", () => {
    const [earlier, later] = daysOfParts([WHITE, { ...CARBON, touchDryDays: 4 }]).touchDryDays;
    expect(earlier).toBeCloseTo(6 / 1.25, 6);
    expect(later).toBe(9);
  });
  /** By hand: half of what acts in full acts half: w from .01 to .5 / (1 + .5); 9 ^ 2/3 x 4 ^ 1/3 = 324 ^ 1/3 = 6.868. */
  test("a part acts in full from its share on, and no more above it", () => {
    const [earlier] = daysOfParts([tried(9, 0.99, 0.25), tried(4, 0.01, 0.02)]).touchDryDays;
    expect(earlier).toBeCloseTo(Math.cbrt(324) / 1.25, 6);
  });
  test("what the rules expect of a part is no further widened", () => {
    const byRules: PartAlone = { ...WHITE, touchDryDays: [6, 12], isTried: false };
    expect(daysOfParts([byRules]).touchDryDays).toEqual([6, 12]);
  });
  test("where the parts are not recorded, from the fastest to the slowest", () => {
    const unknown = { massFraction: undefined };
    expect(
      daysOfParts([
        { ...tried(2, undefined, 0.1), ...unknown },
        { ...WHITE, ...unknown },
      ]).touchDryDays,
    ).toEqual([2 / TRIAL_SPREAD, 9]);
  });
  test("tells of each part what it takes alone, and how that is known", () =>
    expect(
      daysOfParts([WHITE, { ...CARBON, isTried: false }]).statements.map(
        ({ rule, standing, values }) => [rule, standing, values.daysAlone],
      ),
    ).toEqual([
      ["part-as-tried", "measured", 9],
      ["part-by-the-rules", "estimated", 8],
    ]));
  // Of two paints stirred together neither holds the other up beyond its own days.
  test("is never later than the slowest alone, nor sooner than the fastest with its spread", () => {
    const days = fc.double({ min: 0.5, max: 60, noNaN: true });
    const share = fc.double({ min: 0.01, max: 1, noNaN: true });
    fc.assert(
      fc.property(days, days, share, share, share, (one, other, mass, full, otherFull) => {
        const [earlier, later] = daysOfParts([
          tried(one, 1 - mass / 2, full),
          tried(other, mass / 2, otherFull),
        ]).touchDryDays;
        expect(earlier).toBeGreaterThanOrEqual(Math.min(one, other) / TRIAL_SPREAD - 1e-9);
        expect(later).toBeLessThanOrEqual(Math.max(one, other));
        expect(earlier).toBeLessThanOrEqual(later);
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
    expect(() => daysOfParts([{ ...WHITE, ...wrong }, CARBON])).toThrow(message),
  );
});

/** Common practice, no source: umbers are rich in manganese, siennas are not; parted at three in a hundred. */
describe("a sienna is no umber, though both are PBr 7", () => {
  const { chemistry } = KNOWN.pigment("PBr 7");
  test.each([
    [{ manganeseDioxideFraction: 0.11 }, "manganese"],
    [{ manganeseDioxideFraction: 0.008 }, "manganese trace"],
    [{ manganeseDioxideFraction: 0.03 }, "manganese"],
    [{ manganeseDioxideFraction: 0.03 - 1e-6 }, "manganese trace"],
    [{ manganeseDioxideFraction: [0.05, 0.2] }, "manganese"],
    [{ manganeseDioxideFraction: [0.002, 0.2] }, "brown earth"],
    [{ manganeseDioxideFraction: [0.002, 0.2], earth: "umber" }, "manganese"],
    [{ manganeseDioxideFraction: 0.11, earth: "sienna" }, "manganese"],
    [{ earth: "umber" }, "manganese"],
    [{ earth: "sienna" }, "manganese trace"],
    [{}, "brown earth"],
  ] as const)("%o: %s", (record, expected) =>
    expect(earthChemistry(chemistry, record)).toBe(expected),
  );
  test("and nothing else is asked for its manganese", () => {
    expect(earthChemistry("iron oxide", { earth: "umber" })).toBe("iron oxide");
    expect(earthChemistry(undefined, { earth: "umber" })).toBeUndefined();
  });
  test("a share of 1 is all of it, and of 0 none", () => {
    expect(earthChemistry(chemistry, { manganeseDioxideFraction: 1 })).toBe("manganese");
    expect(earthChemistry(chemistry, { manganeseDioxideFraction: 0 })).toBe("manganese trace");
  });
  test.each([-0.1, 1.1, NaN])("refuses a share of %s", (manganeseDioxideFraction) =>
    expect(() => earthChemistry(chemistry, { manganeseDioxideFraction })).toThrow(
      /share of manganese dioxide/,
    ),
  );
  test("what is not told covers both", () => {
    const days = (one: string) =>
      KNOWN.tables.chemistryDrying.find(({ chemistry: name }) => name === one)?.daysInLinseed ?? [];
    const [umber, sienna, either] = [
      days("manganese"),
      days("manganese trace"),
      days("brown earth"),
    ];
    expect(either).toEqual([Math.min(...umber, ...sienna), Math.max(...umber, ...sienna)]);
  });
});
