import { expect, test } from "vitest";
import { eanCheckDigit, eanFault } from "../../lib/records/ean.ts";
import { checkTable } from "../support/checks.ts";

checkTable("check digit of an EAN-13", eanCheckDigit, [
  {
    basis: "published",
    source: "gs1-check-digit",
    locator: "table: how a GTIN-13 check digit is calculated, 60 - 57",
    input: "629104150021",
    expected: 3,
    tolerance: 0,
  },
  {
    basis: "published",
    source: "gs1-check-digit",
    locator: "GS1 Sweden, Så beräknas kontrollsiffran, 30 - 23",
    input: "730001100001",
    expected: 7,
    tolerance: 0,
  },
  {
    basis: "derived",
    source: "gs1-check-digit",
    locator: "a sum that is a multiple of ten",
    input: "100000000003",
    expected: 0,
    tolerance: 0,
    note: "1 x 1 + 3 x 3 = 10, nothing is missing",
  },
]);

test("every single wrong digit of a number is found", () => {
  const sound = "6291041500213";
  expect(eanFault(sound)).toBeUndefined();
  for (let at = 0; at < sound.length; at++)
    for (const digit of "0123456789") {
      const wrong = sound.slice(0, at) + digit + sound.slice(at + 1);
      if (wrong !== sound) expect(eanFault(wrong), wrong).toContain("check digit");
    }
});

test.each(["629104150021", "62910415002133", "629104150021x", ""])("refuses %j", (written) => {
  expect(eanFault(written)).toBe("13 digits, the last of them the check digit of an EAN-13");
});

test("works out of twelve digits alone", () => {
  expect(() => eanCheckDigit("62910415002")).toThrow(RangeError);
});

test.each(["6.29104E+12", "6,29104E+12", "6E+12"])(
  "%s is what a spreadsheet makes of one",
  (written) => {
    expect(eanFault(written)).toMatch(/^13 digits, which a spreadsheet has rounded: /);
  },
);
