import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { sphereEfficiencies, type SphereEfficiencies } from "../../lib/optics/theory/lorenz-mie.ts";
import { checkTable, type Check } from "../support/checks.ts";
import { efficienciesByFractions } from "./mie-by-fractions.ts";

type Quantity = keyof SphereEfficiencies;
interface Sphere {
  readonly x: number;
  readonly n: number;
  readonly k: number;
  readonly of: Quantity;
}

/** The 22 published cases: source, locator, n, k, x, then what each prints, half its last digit the tolerance. */
const PUBLISHED: readonly (readonly [
  string,
  string,
  number,
  number,
  number,
  Partial<Record<Quantity, number>>,
  number,
])[] = [
  // x is printed to 7 decimals, and the figures to 5.
  [
    "bohren-huffman-1983",
    "appendix A, sample",
    1.55,
    0,
    5.2128197,
    { ext: 3.10543, sca: 3.10543, back: 2.92534, g: 0.63314 },
    5e-6,
  ],
  [
    "wiscombe-1979",
    "test case 5",
    0.75,
    0,
    0.099,
    { ext: 0.000007, sca: 0.000007, g: 0.001448 },
    5e-7,
  ],
  [
    "wiscombe-1979",
    "test case 6",
    0.75,
    0,
    0.101,
    { ext: 0.000008, sca: 0.000008, g: 0.001507 },
    5e-7,
  ],
  [
    "wiscombe-1979",
    "test case 7",
    0.75,
    0,
    10,
    { ext: 2.232265, sca: 2.232265, g: 0.896473 },
    5e-7,
  ],
  [
    "wiscombe-1979",
    "test case 8",
    0.75,
    0,
    1000,
    { ext: 1.997908, sca: 1.997908, g: 0.844944 },
    5e-7,
  ],
  ["wiscombe-1979", "test case 9", 1.33, 1e-5, 1, { sca: 0.093923, g: 0.184517 }, 5e-7],
  ["wiscombe-1979", "test case 10", 1.33, 1e-5, 100, { sca: 2.096594, g: 0.868959 }, 5e-7],
  ["wiscombe-1979", "test case 11", 1.33, 1e-5, 10000, { sca: 1.723857, g: 0.90784 }, 1e-6],
  [
    "wiscombe-1979",
    "test case 12",
    1.5,
    1,
    0.055,
    { ext: 0.101491, sca: 0.000011, g: 0.000491 },
    5e-7,
  ],
  [
    "wiscombe-1979",
    "test case 13",
    1.5,
    1,
    0.056,
    { ext: 0.103347, sca: 0.000012, g: 0.000509 },
    5e-7,
  ],
  ["wiscombe-1979", "test case 14", 1.5, 1, 1, { ext: 2.336321, sca: 0.663454, g: 0.192136 }, 5e-7],
  [
    "wiscombe-1979",
    "test case 15",
    1.5,
    1,
    100,
    { ext: 2.097502, sca: 1.283697, g: 0.850252 },
    5e-7,
  ],
  [
    "wiscombe-1979",
    "test case 16",
    1.5,
    1,
    10000,
    { ext: 2.004368, sca: 1.236575, g: 0.846309 },
    1e-6,
  ],
  ["wiscombe-1979", "test case 17", 10, 10, 1, { sca: 2.049405, g: -0.110664 }, 5e-7],
  ["wiscombe-1979", "test case 18", 10, 10, 100, { sca: 1.836785, g: 0.556215 }, 5e-7],
  ["wiscombe-1979", "test case 19", 10, 10, 10000, { sca: 1.795393, g: 0.548194 }, 5e-7],
  ["wiscombe-1979", "older table, n = 1.5", 1.5, 0, 10, { sca: 2.882 }, 5e-5],
  ["wiscombe-1979", "older table, n = 1.5", 1.5, 0, 100, { sca: 2.0944 }, 5e-5],
  ["wiscombe-1979", "older table, n = 1.5", 1.5, 0, 1000, { sca: 2.0139 }, 5e-5],
  ["wiscombe-1979", "older table, n = 1.5", 1.5, 0, 5000, { sca: 2.0086 }, 5e-5],
  [
    "a reference library's regression figures, no publication",
    "m = 1.5 + 0.5i",
    1.5,
    0.5,
    2.5,
    { ext: 2.562873497, sca: 1.097071819, back: 0.123586468, g: 0.748905979 },
    1e-9,
  ],
  // Its own x carries more digits than are printed: half a unit of the last one moves Q by so much.
  [
    "a reference library's regression figures, no publication",
    "m = 1.55 + 0.1i",
    1.55,
    0.1,
    5.2128197,
    { ext: 2.861651882, sca: 1.66424912, back: 0.205995341, g: 0.801289726 },
    3e-8,
  ],
];
const CHECKS = PUBLISHED.flatMap(([source, locator, n, k, x, printed, tolerance]) =>
  Object.entries(printed).map(([of, expected]): Check<Sphere, number> => ({
    basis: "published",
    source,
    locator,
    input: { x, n, k, of: of as Quantity },
    expected,
    tolerance,
  })),
);
checkTable(
  "published efficiencies of spheres",
  ({ x, n, k, of }) => sphereEfficiencies(x, n, k)[of],
  CHECKS,
);

test("twenty-two cases are held", () => expect(PUBLISHED).toHaveLength(22));

describe("against continued fractions and Miller's recurrence", () => {
  const indices = [
    [1.32, 0.45],
    [1.95 / 1.48, 0.66 / 1.48],
    [1.05, 0.31],
    [1.86, 0],
    [1.38, 0],
    [1.65, 0.45],
    [1.75, 0.001],
  ] as const;
  test.each(
    indices.flatMap(([n, k]) =>
      [0.05, 0.3, 1, 2.7, 8, 31, 120, 400, 1000].map((x) => ({ n, k, x })),
    ),
  )("m = $n + $k i, x = $x", ({ n, k, x }) => {
    const [one, other] = [sphereEfficiencies(x, n, k), efficienciesByFractions(x, n, k)];
    for (const of of ["ext", "sca", "g"] as const)
      expect(Math.abs(one[of] - other[of]) / Math.abs(other[of]), of).toBeLessThan(2e-7);
  });
});

describe("limits", () => {
  test.each([
    [1.5, 1],
    [1.3, 0.45],
    [1.86, 0],
    [1.1, 0.01],
  ] as const)("a small sphere of m = %d + %d i is Rayleigh's", (n, k) => {
    const x = 0.01;
    // (m^2 - 1)/(m^2 + 2)
    const [re, im] = [n * n - k * k, 2 * n * k];
    const square = (re + 2) ** 2 + im * im;
    const [pRe, pIm] = [((re - 1) * (re + 2) + im * im) / square, (3 * im) / square];
    const { abs, sca, g } = sphereEfficiencies(x, n, k);
    // bohren-huffman-1983, equations 5.8 and 5.11; the next term is of order x^2.
    expect(sca / ((8 / 3) * x ** 4 * (pRe * pRe + pIm * pIm))).toBeCloseTo(1, 3);
    if (k > 0) expect(abs / (4 * x * pIm)).toBeCloseTo(1, 3);
    expect(Math.abs(g)).toBeLessThan(1e-3);
  });
  test.each([
    [1.5, 0.1],
    [1.32, 0.45],
    [2, 1],
  ] as const)("a large sphere of m = %d + %d i takes out twice its shadow", (n, k) => {
    const away = [100, 1000, 10000].map((x) => sphereEfficiencies(x, n, k).ext - 2);
    expect(away[2]).toBeGreaterThan(0);
    // The edge term falls as x^(-2/3): 1.99 x^(-2/3) (Nussenzveig & Wiscombe 1980, Phys. Rev. Lett. 45, 1490; memory).
    for (const [i, x] of [100, 1000, 10000].entries())
      expect(Math.abs((away[i] ?? NaN) / (1.99 * x ** (-2 / 3)) - 1), String(x)).toBeLessThan(
        [0.12, 0.06, 0.03][i] ?? NaN,
      );
  });
});

test("energy: what is not scattered is absorbed, and g is a mean cosine", () => {
  fc.assert(
    fc.property(
      fc.double({ min: -3, max: 6.5, noNaN: true }),
      fc.double({ min: 1.01, max: 3, noNaN: true }),
      fc.option(fc.double({ min: 1e-4, max: 2, noNaN: true }), { nil: 0 }),
      (logX, n, k) => {
        const { ext, sca, abs, g } = sphereEfficiencies(Math.exp(logX), n, k);
        expect(ext).toBeGreaterThan(0);
        expect(sca).toBeGreaterThan(0);
        expect(ext).toBeCloseTo(sca + abs, 12);
        // Extinction and scattering are summed apart: of a clear sphere they meet.
        if (k === 0) expect(Math.abs(ext - sca) / ext).toBeLessThan(1e-9);
        else expect(abs).toBeGreaterThan(0);
        expect(Math.abs(g)).toBeLessThanOrEqual(1);
      },
    ),
    { seed: 1, numRuns: 200 },
  );
});

describe("domain", () => {
  test.each([
    [0, 1.5, 0],
    [-1, 1.5, 0],
    [NaN, 1.5, 0],
    [1.0001e5, 1.5, 0],
  ] as const)("x = %d is refused", (x, n, k) => {
    expect(() => sphereEfficiencies(x, n, k)).toThrow("The size parameter x");
  });
  test.each([
    [0, 0],
    [-1, 0],
    [NaN, 0],
    [Infinity, 0],
  ] as const)("n = %d is refused", (n, k) =>
    expect(() => sphereEfficiencies(1, n, k)).toThrow("The real part of m"),
  );
  test.each([-1e-9, NaN, Infinity])("k = %d is refused", (k) =>
    expect(() => sphereEfficiencies(1, 1.5, k)).toThrow("The imaginary part of m"),
  );
  test("its edges are accepted", () => {
    expect(sphereEfficiencies(1e5, 1.5, 0.1).ext).toBeCloseTo(2, 2);
    expect(sphereEfficiencies(1e-3, 1e-1, 0).ext).toBeGreaterThan(0);
    expect(() => sphereEfficiencies(1e5, 20, 0)).toThrow("The |mx|");
  });
});
