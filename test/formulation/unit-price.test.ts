/** Directive 98/6/EC, Article 2(b): the price of one litre, or of another single quantity. The rows are divisions by hand. */
import { describe, expect, test } from "vitest";
import { unitPrice } from "../../lib/formulation/unit-price.ts";

describe("the price of a unit of measurement", () => {
  test.each([
    { price: 8, ml: 40, unitMl: 1000, digits: 2, cost: 200 },
    { price: 18, ml: 120, unitMl: 100, digits: 2, cost: 15 },
    // 9.90 / 37 = .267567..., to whole cents.
    { price: 9.9, ml: 37, unitMl: 1000, digits: 2, cost: 267.57 },
    { price: 9.9, ml: 37, unitMl: 100, digits: 2, cost: 26.76 },
    // 1.005 is 1.00499... as a machine holds it, and half a cent goes up.
    { price: 2.01, ml: 200, unitMl: 100, digits: 2, cost: 1.01 },
    { price: 900, ml: 37, unitMl: 100, digits: 0, cost: 2432 },
    { price: 1.2, ml: 37, unitMl: 100, digits: 3, cost: 3.243 },
    { price: 0, ml: 40, unitMl: 1000, digits: 2, cost: 0 },
  ] as const)("of $price for $ml ml is $cost for $unitMl ml", (row) => {
    expect(unitPrice(row.price, row.ml, row.unitMl, row.digits)).toBe(row.cost);
  });

  test.each([
    [-1, 40],
    [NaN, 40],
    [8, 0],
    [8, NaN],
  ])("refuses %d for %d ml", (price, ml) => {
    expect(() => unitPrice(price, ml, 1000, 2)).toThrow(RangeError);
  });
});
