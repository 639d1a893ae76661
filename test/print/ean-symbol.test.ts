import { describe, expect, test } from "vitest";
import { eanBars, eanPath, eanText } from "../../lib/print/ean-symbol.ts";

/**
 * Reads bars back by the code tables of EAN-13, written down here from memory of
 * ISO/IEC 15420: odd-parity codes of the left half; even-parity ones are the right half's
 * read backwards; the right half's are the odd ones inverted; parities tell the first digit.
 */
const ODD = "0001101 0011001 0010011 0111101 0100011 0110001 0101111 0111011 0110111 0001011".split(
  " ",
);
const RIGHT = ODD.map((code) => code.replace(/[01]/g, (bit) => (bit === "0" ? "1" : "0")));
const EVEN = RIGHT.map((code) => Array.from(code).reverse().join(""));
const PARITIES = "OOOOOO OOEOEE OOEEOE OOEEEO OEOOEE OEEOOE OEEEOO OEOEOE OEOEEO OEEOEO".split(" ");

function readBack(bars: readonly boolean[]): string {
  const bits = bars.map((dark) => (dark ? "1" : "0")).join("");
  const sevens = (from: number): string[] =>
    Array.from({ length: 6 }, (_, i) => bits.slice(from + 7 * i, from + 7 * i + 7));
  expect([bits.slice(0, 3), bits.slice(45, 50), bits.slice(92)]).toEqual(["101", "01010", "101"]);
  const left = sevens(3).map((code) =>
    ODD.includes(code) ? ["O", ODD.indexOf(code)] : ["E", EVEN.indexOf(code)],
  );
  const first = PARITIES.indexOf(left.map(([parity]) => parity).join(""));
  return [
    first,
    ...left.map(([, digit]) => digit),
    ...sevens(50).map((code) => RIGHT.indexOf(code)),
  ].join("");
}

describe("the bars of an EAN-13", () => {
  test.each([
    "6291041500213",
    "7300011000017",
    "2000000000015",
    "0000000000000",
    "1234567890128",
    "9876543210982",
    "3456789012340",
    "4567890123456",
    "5678901234562",
    "8901234567890",
  ])("%s reads back", (ean) => {
    expect(eanBars(ean)).toHaveLength(95);
    expect(readBack(eanBars(ean))).toBe(ean);
  });

  test("a number whose check digit is wrong is not drawn", () => {
    expect(() => eanBars("6291041500214")).toThrow(/6291041500213/);
  });

  test("dark modules are drawn once each, neighbours joined, across or down", () => {
    const bars = [true, false, true, true, false];
    expect(eanPath(bars, 10, "across")).toBe("M0 0H1V10H0ZM2 0H4V10H2Z");
    expect(eanPath(bars, 10, "down")).toBe("M0 0H10V1H0ZM0 2H10V4H0Z");
  });

  test("digits stand in the groups that they are printed in", () => {
    expect(eanText("6291041500213")).toBe("6 291041 500213");
  });
});
