import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { deltaE00 } from "../../lib/colorimetry/difference.ts";
import { labNotations } from "../../lib/colorimetry/lab-notations.ts";
import { lamplight } from "../../lib/colorimetry/lamplight.ts";
import { labOfMunsell } from "../../lib/colorimetry/munsell-inversion.ts";
import { parseMunsell } from "../../lib/colorimetry/munsell-notation.ts";
import { readingNotations } from "../../lib/colorimetry/reading-notations.ts";
import { VIEWINGS, type LabViewing } from "../../lib/colorimetry/viewing.ts";
import { flatSpectrum } from "../../lib/quantities/spectrum.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import { converter, parseHex } from "culori";
import { CURVES, gridOf, sampled } from "./spectra.ts";

/** Every number anywhere in a value. */
function numbersIn(value: unknown): number[] {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

describe("readingNotations", () => {
  test("each notation comes from the viewing that it is defined for", () => {
    const found = readingNotations(sampled(CURVES["red edge"], gridOf(400, 700, 10)));
    expect(Object.keys(found.lab)).toEqual(VIEWINGS);
    if (isStatement(found.munsell)) throw new Error(found.munsell.rule);
    const chip = labOfMunsell(found.munsell);
    expect(deltaE00(chip, found.lab["C/2"])).toBeLessThan(0.01);
    const shown = converter("lab65")(parseHex(found.screen.srgb.hex));
    expect(found.screen.srgb.inGamut).toBe(true);
    expect(
      deltaE00({ L: shown?.l ?? NaN, a: shown?.a ?? NaN, b: shown?.b ?? NaN }, found.lab["D65/2"]),
    ).toBeLessThan(0.4);
  });

  test("a black of L* 3 claims no hue", () => {
    // R .0033: Y .33 %, L* = 903.3 * .0033 = 2.98
    const tilted = {
      ...flatSpectrum(gridOf(400, 700, 10), 0),
      values: Array.from({ length: 31 }, (_, i) => 0.0033 * (1.3 - 0.02 * i)),
    };
    expect(readingNotations(tilted).munsell).toMatchObject({ hue: null, text: "N 0.3/" });
  });

  test("a cool black of L* 12 keeps its coolness", () => {
    const tilted = {
      ...flatSpectrum(gridOf(400, 700, 10), 0),
      values: Array.from({ length: 31 }, (_, i) => 0.0145 * (1.1 - 0.0067 * i)),
    };
    expect(readingNotations(tilted).munsell).toMatchObject({
      form: "near-neutral",
      text: "N 1.2/(PB 0.2)",
    });
  });

  test("no accepted reading gives NaN or a fault, only a ruling", () => {
    const step = fc.constantFrom(1, 2, 5, 10, 20);
    const reading = step.chain((stepNm) => {
      const grid = gridOf(380, 740, stepNm);
      return fc
        .array(fc.double({ min: -0.005, max: 1.2, noNaN: true }), {
          minLength: grid.count,
          maxLength: grid.count,
        })
        .map((values) => ({ grid, values }));
    });
    const even = fc
      .double({ min: -0.005, max: 1.2, noNaN: true })
      .map((R) => flatSpectrum(gridOf(400, 700, 10), R));
    const spike = fc
      .tuple(fc.integer({ min: 0, max: 30 }), fc.double({ min: 0, max: 1.2, noNaN: true }))
      .map(([at, R]) => ({
        grid: gridOf(400, 700, 10),
        values: Array.from({ length: 31 }, (_, i) => (i === at ? R : 0)),
      }));
    fc.assert(
      fc.property(fc.oneof(reading, even, spike), (spectrum) => {
        const found = [readingNotations(spectrum), lamplight(spectrum)];
        for (const number of numbersIn(found)) expect(Number.isFinite(number)).toBe(true);
      }),
      { seed: 1, numRuns: 300 },
    );
  });
});

describe("labNotations: a Lab without its spectrum", () => {
  test.each([
    ["C/2", false, true],
    ["D65/2", true, false],
    ["D65/10", true, true],
    ["D50/2", true, true],
    ["D50/10", true, true],
  ] as const)(
    "under %s: Munsell approximate %s, screen approximate %s",
    (viewing, munsell, screen) => {
      const found = labNotations({ L: 40, a: 10, b: 12 }, viewing);
      expect(found.munsell).toMatchObject({ approximate: munsell });
      expect(found.screen).toMatchObject({ approximate: screen });
    },
  );

  test("under lamplight nothing follows", () => {
    const found = labNotations({ L: 40, a: 10, b: 12 }, "A/10");
    for (const part of [found.munsell, found.screen])
      expect(part).toMatchObject({ rule: "lamplight-needs-a-spectrum" });
  });

  test("a grey under D65/10 is an untinted grey on a screen", () => {
    const { screen } = labNotations({ L: 51.837, a: 0, b: 0 }, "D65/10");
    expect(screen).toMatchObject({ notation: { srgb: { hex: "#7c7c7c" } }, approximate: true });
  });

  test("whatever Lab a record may state, no fault and no NaN", () => {
    const viewing = fc.constantFrom<LabViewing>(
      "A/2",
      "C/2",
      "D50/2",
      "D65/2",
      "A/10",
      "C/10",
      "D50/10",
      "D65/10",
    );
    const coordinate = fc.double({ min: -150, max: 150, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 100, noNaN: true }),
        coordinate,
        coordinate,
        viewing,
        (L, a, b, under) => {
          for (const number of numbersIn(labNotations({ L, a, b }, under)))
            expect(Number.isFinite(number)).toBe(true);
        },
      ),
      { seed: 1, numRuns: 500 },
    );
  });
});

/**
 * A chip by eye to a screen: Debian r-cran-munsell 0.5.0, an independent table of
 * Munsell notations as sRGB. It adapts by Bradford and takes Y relative to magnesium
 * oxide (2.5 % more), which alone is worth up to Delta-E00 0.6 (1.2 in a neutral).
 */
describe("a chip's screen colour", () => {
  test.each([
    ["5R 4/10", "#A83C40"],
    ["5YR 6/8", "#CD844C"],
    ["5Y 8/10", "#E9C938"],
    ["10YR 5/6", "#9D7338"],
    ["5GY 7/8", "#A0BA4E"],
    ["5G 5/6", "#3B8968"],
    ["10G 4/4", "#356B5D"],
    ["5BG 6/4", "#63A099"],
    ["5B 5/6", "#2E859C"],
    ["5PB 3/6", "#2A4973"],
    ["10PB 4/8", "#645994"],
    ["5P 5/6", "#8C719B"],
    ["5RP 6/8", "#CA7E9B"],
    ["2.5R 3/4", "#693B40"],
    ["5R 7/4", "#D1A5A1"],
    ["10R 3/4", "#693C34"],
    ["2.5Y 7/8", "#D4AA49"],
    ["7.5YR 8/4", "#E9C49F"],
    ["10B 2/2", "#25333E"],
    ["2.5PB 8/4", "#B3CDE5"],
  ])("%s is near %s", (text, hex) => {
    const chip = parseMunsell(text);
    if (chip === undefined) throw new Error(text);
    const { screen } = labNotations(labOfMunsell(chip), "C/2");
    if (isStatement(screen)) throw new Error(screen.rule);
    const [found, expected] = [screen.notation.srgb.hex, hex].map((colour) =>
      converter("lab65")(parseHex(colour)),
    );
    expect(
      deltaE00(
        { L: found?.l ?? NaN, a: found?.a ?? NaN, b: found?.b ?? NaN },
        { L: expected?.l ?? NaN, a: expected?.a ?? NaN, b: expected?.b ?? NaN },
      ),
    ).toBeLessThanOrEqual(1);
  });
});
