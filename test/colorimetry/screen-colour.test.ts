import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { labToXyz } from "../../lib/colorimetry/lab.ts";
import { screenColours } from "../../lib/colorimetry/screen-colour.ts";
import { tristimulus } from "../../lib/colorimetry/tristimulus.ts";
import { flatSpectrum } from "../../lib/quantities/spectrum.ts";
import { gridOf } from "./spectra.ts";

const GRIDS = [
  gridOf(380, 780, 5),
  gridOf(400, 700, 10),
  gridOf(360, 740, 10),
  gridOf(400, 700, 20),
];
const flat = (R: number, grid = gridOf(400, 700, 10)) =>
  screenColours(tristimulus(flatSpectrum(grid, R), "D65/2"));

const channels = (hex: string): number[] =>
  [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
const numbers = (css: string): number[] => (css.match(/-?\d+(\.\d+)?/g) ?? []).map(Number);
/** Channels of `color(display-p3 r g b)`, without the 3 of its name. */
const p3Numbers = (css: string): number[] => numbers(css.replace("display-p3", ""));

describe("neutrals", () => {
  test.each(GRIDS)("the perfect diffuser on %j is #ffffff and shown", (grid) => {
    const { srgb, displayP3, oklch } = flat(1, grid);
    expect(srgb).toEqual({ hex: "#ffffff", inGamut: true });
    expect(displayP3).toEqual({ css: "color(display-p3 1 1 1)", inGamut: true });
    expect(oklch.css).toBe("oklch(100% 0 none)");
  });

  test.each(GRIDS)("a flat 0.2 on %j has equal R, G and B", (grid) => {
    const [r, g, b] = channels(flat(0.2, grid).srgb.hex);
    // IEC 61966-2-1: 1.055 * 0.2^(1/2.4) - 0.055 = 0.48453, times 255 = 123.55
    expect([r, g, b]).toEqual([124, 124, 124]);
    expect(new Set(p3Numbers(flat(0.2, grid).displayP3.css)).size).toBe(1);
  });

  test("black is #000000", () => {
    expect(flat(0).srgb).toEqual({ hex: "#000000", inGamut: true });
  });

  test("D65/10 fed in would tint a mid grey: why it is not", () => {
    const [r, g, b] = channels(
      screenColours(tristimulus(flatSpectrum(gridOf(400, 700, 10), 0.2), "D65/10")).srgb.hex,
    );
    expect(new Set([r, g, b]).size).toBeGreaterThan(1);
  });
});

/**
 * Lab under D65, 2 degree: sRGB, Display P3 and OKLCH by colorjs.io 0.7.1, an
 * independent library (its D65 white differs from CIE's in the fourth digit, which Lab takes out).
 */
const COLORJS = [
  [
    [50, 20, -30],
    "#7f6daa",
    true,
    [0.485273, 0.431701, 0.650692],
    true,
    [57.6807, 0.092982, 296.352],
  ],
  [
    [52, 60, 40],
    "#e0433b",
    true,
    [0.810529, 0.311152, 0.264055],
    true,
    [60.9299, 0.194958, 27.4275],
  ],
  [
    [70, -20, 10],
    "#8bb598",
    true,
    [0.57779, 0.704733, 0.605592],
    true,
    [73.4129, 0.06124, 155.049],
  ],
  [
    [20, 5, -10],
    "#302f3f",
    true,
    [0.18821, 0.182718, 0.241666],
    true,
    [31.2227, 0.029075, 289.564],
  ],
  [
    [95, -1, 2],
    "#f0f1ed",
    true,
    [0.942958, 0.945185, 0.929797],
    true,
    [95.6531, 0.005785, 114.1635],
  ],
  [
    [85, 5, 90],
    "#ffcd00",
    false,
    [0.987334, 0.813444, 0.249263],
    true,
    [87.2595, 0.183234, 89.5956],
  ],
  [[60, -90, 20], "#00a376", false, [0, 0.655993, 0.454744], false, [62.6039, 0.2388, 167.8745]],
  [[40, 10, -90], "#006786", false, [0, 0.403816, 0.552989], false, [47.1274, 0.400317, 221.5996]],
] as const;

describe("against an independent library", () => {
  test.each(COLORJS)("Lab %j is %s", ([L, a, b], hex, inSrgb, p3, inP3, oklch) => {
    const found = screenColours(labToXyz({ L, a, b }, "D65/2"));
    expect(found.srgb.inGamut).toBe(inSrgb);
    expect(found.displayP3.inGamut).toBe(inP3);
    // Inside, to the last digit; mapped, the two stop their search for chroma a hair apart.
    const bytes = channels(found.srgb.hex).map((byte, i) =>
      Math.abs(byte - (channels(hex)[i] ?? NaN)),
    );
    expect(Math.max(...bytes), found.srgb.hex).toBeLessThanOrEqual(inSrgb ? 0 : 2);
    for (const [i, channel] of p3Numbers(found.displayP3.css).entries())
      expect(Math.abs(channel - (p3[i] ?? NaN))).toBeLessThanOrEqual(inP3 ? 6e-5 : 8e-3);
    const [lightness, chroma, hue] = numbers(found.oklch.css);
    expect(lightness).toBeCloseTo(oklch[0], 1);
    expect(chroma).toBeCloseTo(oklch[1], 3);
    expect(hue).toBeCloseTo(oklch[2], 0);
  });
});

test("whatever colour comes in, what goes out is a colour that CSS takes", () => {
  const channel = fc.double({ min: 0, max: 130, noNaN: true });
  fc.assert(
    fc.property(channel, channel, channel, (X, Y, Z) => {
      const { srgb, displayP3, oklch } = screenColours({ X, Y, Z });
      expect(srgb.hex).toMatch(/^#[0-9a-f]{6}$/);
      expect(displayP3.css).toMatch(
        /^color\(display-p3 (?:[01]|0\.\d{1,4})(?: (?:[01]|0\.\d{1,4})){2}\)$/,
      );
      expect(oklch.css).toMatch(/^oklch\(\d+(\.\d+)?% \d(\.\d+)? (none|\d+(\.\d+)?)\)$/);
    }),
    { seed: 1, numRuns: 200 },
  );
});

test.each([
  [-0.01, "XYZ >= 0"],
  [NaN, "a finite number"],
  [Infinity, "a finite number"],
])("a tristimulus value of %s is refused", (bad, expected) => {
  expect(() => screenColours({ X: bad, Y: 10, Z: 10 })).toThrow(
    new RangeError(`The tristimulus value is ${bad}; right would be ${expected}`),
  );
});
