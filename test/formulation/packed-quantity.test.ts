import { describe, expect, test } from "vitest";
import {
  isPackedSize,
  isShort,
  packedMasses,
  tolerableShortfallMl,
} from "../../lib/formulation/packed-quantity.ts";

/** Source: packed-quantity-76-211-eec, the table of Annex I, 2.4; shares rounded up to a tenth. */
describe("how far contents may fall short", () => {
  test.each([
    [5, 0.5],
    [15, 1.4],
    [37, 3.4],
    [40, 3.6],
    [50, 4.5],
    [50.1, 4.5],
    [100, 4.5],
    [100.1, 4.6],
    [150, 6.8],
    [200, 9],
    [200.1, 9],
    [300, 9],
    [300.1, 9.1],
    [400, 12],
    [500, 15],
    [500.1, 15],
    [1_000, 15],
    [1_000.1, 15.1],
    [10_000, 150],
  ])("of %d ml %d ml", (nominalMl, shortfallMl) => {
    expect(tolerableShortfallMl(nominalMl)).toBe(shortfallMl);
  });

  test.each([4.99, 10_000.1, NaN])("of %d ml the law of packages says nothing", (nominalMl) => {
    expect(() => tolerableShortfallMl(nominalMl)).toThrow("5 <= Qn <= 10000 ml");
    expect(isPackedSize(nominalMl)).toBe(false);
  });

  test.each([5, 40, 10_000])("of %d ml it speaks", (nominalMl) => {
    expect(isPackedSize(nominalMl)).toBe(true);
  });

  // Our own choice: what weighing does not tell from the volume that is stated is not short.
  test.each([
    [39.94, true],
    [39.96, false],
    [40, false],
  ])("%d ml in a package of 40 ml are short: %s", (heldMl, short) => {
    expect(isShort(heldMl, 40)).toBe(short);
  });
});

test("what 40 ml of a paint of 1.5 g/cm3 weigh, on the mean, of all but few, and of every one", () => {
  // 40 x 1.5; (40 - 3.6) x 1.5; (40 - 7.2) x 1.5
  const { meanG, fewBelowG, noneBelowG } = packedMasses(40, 1.5);
  expect(meanG).toBeCloseTo(60, 9);
  expect(fewBelowG).toBeCloseTo(54.6, 9);
  expect(noneBelowG).toBeCloseTo(49.2, 9);
});
