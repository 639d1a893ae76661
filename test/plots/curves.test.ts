import { describe, expect, test } from "vitest";
import { coefficientCurves, type CoefficientCurve } from "../../lib/plots/coefficient-curves.ts";
import { hidingCurve, type HidingPoint } from "../../lib/plots/hiding-curve.ts";
import { spectralCurve, type DrawnSpectrum } from "../../lib/plots/spectral-curve.ts";
import { hasClass, parsedSvg, seenTexts } from "./parsed-svg.ts";

const WORDS = { idPrefix: "c", title: "t", description: "d" };
const colour = { hex: "#335577" };
const GRID = { startNm: 360, stepNm: 10, count: 39 };

/** Points of the curves, rims left out. */
function curvePoints(svg: string): { readonly x: number; readonly y: number }[][] {
  return parsedSvg(svg)
    .all.filter((element) => hasClass(element, "plot__curve"))
    .map(({ attributes }) =>
      [...(attributes.d ?? "").matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => ({
        x: Number(x),
        y: Number(y),
      })),
    );
}

describe("spectralCurve", () => {
  const curve = (values: readonly number[], grid = GRID): DrawnSpectrum => ({
    label: "Smalt",
    colour,
    standing: "measured",
    spectrum: { grid, values },
  });
  const flat = (R: number): readonly number[] => Array.from({ length: GRID.count }, () => R);
  const drawn = (...curves: DrawnSpectrum[]): string =>
    spectralCurve({
      ...WORDS,
      wavelengthLabel: "nm",
      reflectanceLabel: (end) => `to ${end}`,
      curves,
    });

  test.each([
    [0, "to 0.01"],
    [0.01, "to 0.01"],
    [0.0101, "to 0.02"],
    [0.1, "to 0.1"],
    [0.1001, "to 0.2"],
    [0.5001, "to 1"],
    [1, "to 1"],
    [1.0001, "to 1.2"],
    [1.2, "to 1.2"],
  ])("R = %s is drawn %s, and the axis says so", (R, label) => {
    expect(seenTexts(drawn(curve(flat(R))))).toContain(label);
  });
  test.each([4.0001, -0.0051, NaN, Infinity])("refuses R = %s", (R) => {
    expect(() => drawn(curve(flat(R)))).toThrow(`The reflectance factor is ${R}`);
  });
  test("a slightly negative reading is drawn as read, below zero", () => {
    const [line] = curvePoints(
      drawn(curve([...flat(0).slice(0, 20), -0.005, ...flat(0).slice(21)])),
    );
    const zero = line?.[0]?.y ?? NaN;
    expect(Math.max(...(line ?? []).map(({ y }) => y))).toBeGreaterThan(zero);
  });
  test("draws 400 to 700 nm whatever the instrument's ends", () => {
    const [line] = curvePoints(drawn(curve(flat(0.5))));
    expect(line).toHaveLength(31);
    expect(seenTexts(drawn(curve(flat(0.5)))).filter((text) => /^\d{3}$/.test(text))).toEqual([
      "400",
      "450",
      "500",
      "550",
      "600",
      "650",
      "700",
    ]);
  });
  test("equal steps of reflectance are equal steps upwards", () => {
    const [low = NaN, middle = NaN, high = NaN] = curvePoints(
      drawn(curve(flat(0.2)), curve(flat(0.4)), curve(flat(0.6))),
    ).map((line) => line[0]?.y);
    expect(low - middle).toBeCloseTo(middle - high, 2);
    expect(low).toBeGreaterThan(high);
  });
  test("solid when measured, dashed when not", () => {
    const { all } = parsedSvg(
      drawn(curve(flat(0.2)), { ...curve(flat(0.4)), standing: "estimated" }),
    );
    expect(
      all
        .filter((element) => hasClass(element, "plot__curve"))
        .map(({ attributes }) => attributes["stroke-dasharray"]),
    ).toEqual([undefined, "4 3"]);
  });
  test("refuses nothing to draw", () => {
    expect(() => drawn()).toThrow("The curves, none");
    expect(() => drawn(curve([0.5, 0.5], { startNm: 690, stepNm: 20, count: 2 }))).toThrow(
      "The readings of Smalt in 400-700 nm, 1",
    );
  });
});

describe("hidingCurve", () => {
  const drawn = (...points: HidingPoint[]): string =>
    hidingCurve({
      ...WORDS,
      filmLabel: "film",
      contrastLabel: "contrast",
      label: "Smalt",
      colour,
      standing: "derived",
      points,
      limit: { contrastRatio: 0.98, label: "hides" },
    });
  const bare: HidingPoint = { filmUm: 0, contrastRatio: 0.05 };
  test.each([
    [20, "20"],
    [20.01, "50"],
    [100, "100"],
    [100.01, "200"],
    [5000, "5000"],
  ])("a film of %s um is drawn to %s", (filmUm, end) => {
    const svg = drawn(bare, { filmUm, contrastRatio: 0.5 });
    expect(Math.max(...seenTexts(svg).map(Number).filter(Number.isFinite))).toBe(Number(end));
  });
  test.each([
    [-1, 0.5, /film thickness/],
    [NaN, 0.5, /film thickness/],
    [5001, 0.5, /film thickness/],
    [1, -0.01, /contrast ratio/],
    [1, 1.01, /contrast ratio/],
    [1, NaN, /contrast ratio/],
  ])("refuses film %s, ratio %s", (filmUm, contrastRatio, message) => {
    expect(() => drawn(bare, { filmUm, contrastRatio })).toThrow(message);
  });
  test("refuses nothing to draw", () => expect(() => drawn(bare)).toThrow("The films, 1"));
});

describe("coefficientCurves", () => {
  const grid = { startNm: 400, stepNm: 100, count: 4 };
  const curve = (change: Partial<CoefficientCurve> = {}): CoefficientCurve => ({
    label: "Smalt",
    colour,
    standing: "derived",
    grid,
    values: [1, 2, 3, 4],
    ...change,
  });
  const drawn = (
    K: readonly CoefficientCurve[],
    S: readonly CoefficientCurve[] = [curve()],
  ): string =>
    coefficientCurves({
      ...WORDS,
      wavelengthLabel: "nm",
      absorption: { axisLabel: "K", curves: K },
      scattering: { axisLabel: "S", curves: S },
    });

  test("each half has its own scale of 1, 2, 5", () => {
    const texts = seenTexts(
      drawn([curve({ values: [30, 31, 32, 33] })], [curve({ values: [0.1, 0.1, 0.1, 0.1] })]),
    );
    expect(texts).toEqual(expect.arrayContaining(["50", "0.10"]));
  });
  test("the wavelengths of both halves stand under each other", () => {
    const { all } = parsedSvg(
      drawn([curve({ values: [30, 31, 32, 33] })], [curve({ values: [0.1, 0.1, 0.1, 0.1] })]),
    );
    const places = all.filter(({ text }) => text === "400").map(({ attributes }) => attributes.x);
    expect(places).toHaveLength(2);
    expect(places[0]).toBe(places[1]);
  });
  test("bounds are a band; without values no line is drawn as if there were one", () => {
    const svg = drawn(
      [curve()],
      [
        curve({
          values: undefined,
          bounds: [
            [0, 1],
            [0, 1],
            [0, 1],
            [0, 1],
          ],
        }),
      ],
    );
    expect(curvePoints(svg)).toHaveLength(1);
    expect(parsedSvg(svg).all.filter((element) => hasClass(element, "plot__bounds"))).toHaveLength(
      1,
    );
  });
  test.each([
    [{ values: [1, 2, 3] }, /The coefficients of Smalt is 3/],
    [{ values: [1, 2, 3, -1] }, /The coefficient is -1/],
    [{ values: [1, 2, NaN, 4] }, /The coefficient/],
    [{ values: undefined }, /The coefficients of Smalt, none/],
    [{ bounds: [[0, 1]] }, /The coefficients of Smalt is 1/],
    [
      {
        bounds: [
          [2, 3],
          [0, 9],
          [0, 9],
          [0, 9],
        ],
      },
      /The bounds of a coefficient, 2, 3/,
    ],
  ] as const)("refuses %o", (change, message) => {
    expect(() => drawn([curve(change)])).toThrow(message);
  });
  test("refuses an empty half", () =>
    expect(() => drawn([curve()], [])).toThrow("The curves of S, none"));
});
