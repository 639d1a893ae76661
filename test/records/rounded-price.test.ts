import { expect, test } from "vitest";
import { roundedPrice } from "../../lib/records/rounded-price.ts";

/** Worked by hand. */
test.each([
  { price: 8.3, rule: undefined, expected: 8.3 },
  { price: 8.3, rule: { addPercent: 5 }, expected: 8.72 },
  { price: 8.3, rule: { addPercent: 5, roundTo: 0.5 }, expected: 8.5 },
  { price: 8.3, rule: { addPercent: 5, roundTo: 0.5, rounding: "up" }, expected: 9 },
  { price: 8.3, rule: { addPercent: -10, roundTo: 0.05, rounding: "down" }, expected: 7.45 },
  // 1.1 x 3 is 3.3000000000000003 in binary: already on the step.
  { price: 3, rule: { addPercent: 10, roundTo: 0.1, rounding: "up" }, expected: 3.3 },
  { price: 0.35, rule: { roundTo: 0.05, rounding: "down" }, expected: 0.35 },
  { price: 0, rule: { addPercent: 20, roundTo: 1, rounding: "up" }, expected: 0 },
] as const)("$price by $rule is $expected", ({ price, rule, expected }) => {
  expect(roundedPrice(price, rule)).toBe(expected);
});

/** ISO 4217: a yen has no smaller coin, of a dinar of Kuwait a thousandth is one. */
test.each([
  { currency: "JPY", price: 830, expected: 872 },
  { currency: "KWD", price: 8.305, expected: 8.72 },
  { currency: "KWD", price: 8.315, expected: 8.731 },
  { currency: "EUR", price: 8.315, expected: 8.73 },
])("$price $currency and five per cent on it is $expected", ({ currency, price, expected }) => {
  expect(roundedPrice(price, { addPercent: 5 }, currency)).toBe(expected);
});
