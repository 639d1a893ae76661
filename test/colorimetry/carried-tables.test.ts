/** Every row of the carried CIE tables, by what it follows from: a wrong digit in one of them moves no sum far enough to be seen. */
import { describe, expect, test } from "vitest";
import { CONE_OBSERVER } from "../../lib/colorimetry/cone-observer.ts";
import { LAMP_ILLUMINANTS } from "../../lib/colorimetry/lamp-illuminants.ts";
import { STANDARD_ILLUMINANTS } from "../../lib/colorimetry/standard-illuminants.ts";
import { STANDARD_OBSERVERS } from "../../lib/colorimetry/standard-observers.ts";

type Row = readonly number[];

/** First wavelength that is integrated [nm]; the carried daylight drifts below it. */
const FROM_NM = 380;
const INTEGRATED: readonly Row[] = STANDARD_ILLUMINANTS.filter(([nm]) => nm >= FROM_NM);

// basis: published, cie-15-2004, illuminant A: 100 (560/nm)^5 (exp(1.435e7/(2848 560)) - 1) / (exp(1.435e7/(2848 nm)) - 1).
test.each(INTEGRATED.map(([nm = NaN, A = NaN]) => ({ nm, A })))(
  "illuminant A at $nm nm is a full radiator of 2848 K",
  ({ nm, A }) => {
    const exponential = (at: number): number => Math.exp(1.435e7 / (2848 * at)) - 1;
    const expected = (100 * (560 / nm) ** 5 * exponential(560)) / exponential(nm);
    expect(Math.abs(A / expected - 1)).toBeLessThan(0.0015);
  },
);

/**
 * S0, S1 and S2 of daylight at 10 nm from 380 nm on. basis: memory, of cie-15-2004, components of daylight:
 * both D50 and D65 follow from the same figures at every wavelength, which a slip of memory would not give.
 */
const COMPONENTS: readonly (readonly [number, number, number])[] = [
  [63.4, 38.5, 3],
  [65.8, 35, 1.2],
  [94.8, 43.4, -1.1],
  [104.8, 46.3, -0.5],
  [105.9, 43.9, -0.7],
  [96.8, 37.1, -1.2],
  [113.9, 36.7, -2.6],
  [125.6, 35.9, -2.9],
  [125.5, 32.6, -2.8],
  [121.3, 27.9, -2.6],
  [121.3, 24.3, -2.6],
  [113.5, 20.1, -1.8],
  [113.1, 16.2, -1.5],
  [110.8, 13.2, -1.3],
  [106.5, 8.6, -1.2],
  [108.8, 6.1, -1],
  [105.3, 4.2, -0.5],
  [104.4, 1.9, -0.3],
  [100, 0, 0],
  [96, -1.6, 0.2],
  [95.1, -3.5, 0.5],
  [89.1, -3.5, 2.1],
  [90.5, -5.8, 3.2],
  [90.3, -7.2, 4.1],
  [88.4, -8.6, 4.7],
  [84, -9.5, 5.1],
  [85.1, -10.9, 6.7],
  [81.9, -10.7, 7.3],
  [82.6, -12, 8.6],
  [84.9, -14, 9.8],
  [81.3, -13.6, 10.2],
  [71.9, -12, 8.3],
  [74.3, -13.3, 9.6],
  [76.4, -12.9, 8.5],
  [63.3, -10.6, 7],
  [71.7, -11.6, 7.6],
  [77, -12.2, 8],
  [65.2, -10.2, 6.7],
  [47.7, -7.8, 5.2],
  [68.6, -11.2, 7.4],
  [65, -10.4, 6.8],
];

/** M1 and M2 of a phase of daylight, by its column. basis: memory, of cie-15-2004. */
describe.each([
  ["D50", 3, -1.04, 0.367],
  ["D65", 4, -0.296, -0.688],
] as const)("%s is S0 + M1 S1 + M2 S2", (_, column, M1, M2) => {
  test("of as many rows", () => {
    expect(COMPONENTS).toHaveLength(INTEGRATED.length);
  });

  test.each(COMPONENTS.map((components, i) => ({ nm: FROM_NM + 10 * i, components })))(
    "at $nm nm",
    ({ nm, components: [S0, S1, S2] }) => {
      const power = INTEGRATED.find((row) => row[0] === nm)?.[column] ?? NaN;
      expect(Math.abs(power / (S0 + M1 * S1 + M2 * S2) - 1)).toBeLessThan(0.001);
    },
  );
});

/** How far ln of each row lies from the cubic through the two before and the two behind it; rows of five figures above 0. */
function roughness(rows: readonly Row[], column: number): { nm: number; off: number }[] {
  const at = (i: number): number => Math.log(rows[i]?.[column] ?? NaN);
  return rows
    .map((row, i) => ({
      nm: row[0] ?? NaN,
      off: Math.abs(at(i) - (4 * (at(i - 1) + at(i + 1)) - at(i - 2) - at(i + 2)) / 6),
    }))
    .filter(({ off }) => Number.isFinite(off));
}

/**
 * basis: derived, cie-15-2004: matching functions are smooth, as are the arc and the phosphor that these lights stand
 * for, but where one dips to almost nothing and is printed with few digits. A figure a tenth off is .095 out of line.
 */
test.each<
  readonly [string, readonly Row[], number, number, readonly (readonly [number, number])[]]
>([
  ["x of 2 degrees", STANDARD_OBSERVERS, 1, 0.06, [[480, 520]]],
  ["y of 2 degrees", STANDARD_OBSERVERS, 2, 0.045, []],
  ["z of 2 degrees", STANDARD_OBSERVERS, 3, 0.08, [[560, 630]]],
  ["x of 10 degrees", STANDARD_OBSERVERS, 4, 0.04, [[480, 520]]],
  ["y of 10 degrees", STANDARD_OBSERVERS, 5, 0.03, []],
  ["z of 10 degrees", STANDARD_OBSERVERS, 6, 0.05, []],
  ["x of the cones", CONE_OBSERVER, 1, 0.04, [[485, 510]]],
  ["y of the cones", CONE_OBSERVER, 2, 0.02, []],
  ["z of the cones", CONE_OBSERVER, 3, 0.03, []],
  ["the power of C", STANDARD_ILLUMINANTS, 2, 0.02, []],
  ["the power of LED-B3", LAMP_ILLUMINANTS, 1, 0.06, []],
])("%s runs smoothly from row to row", (_, rows, column, most, dips) => {
  const judged = roughness(rows, column).filter(
    ({ nm }) => nm > 430 && !dips.some(([from, to]) => nm >= from && nm <= to),
  );
  expect(judged.length).toBeGreaterThan(8);
  for (const { nm, off } of judged) expect(off, `${nm} nm`).toBeLessThan(most);
  // Up to 430 nm the functions rise by tenfold within a few rows, and are that much rougher.
  for (const { nm, off } of roughness(rows, column))
    if (nm <= 430) expect(off, `${nm} nm`).toBeLessThan(0.09);
});

test.each([
  ["2 degrees", STANDARD_OBSERVERS, [1, 2, 3]],
  ["10 degrees", STANDARD_OBSERVERS, [4, 5, 6]],
  ["the cones", CONE_OBSERVER, [1, 2, 3]],
] as const)("the functions of %s fall to nothing in the red and stay there", (_, rows, columns) => {
  for (const column of columns) {
    const red = rows.filter(([nm]) => nm >= 680).map((row) => row[column] ?? NaN);
    expect(red).toEqual(red.toSorted((one, other) => other - one));
  }
});

// basis: derived, cie-15-2004: in the far red the functions die away as the long-wave cones do, evenly in ln.
test.each([
  ["2 degrees", STANDARD_OBSERVERS, [1, 2]],
  ["10 degrees", STANDARD_OBSERVERS, [4, 5]],
  ["the cones", CONE_OBSERVER, [1, 2]],
] as const)("x and y of %s end as they went on before", (_, rows, columns) => {
  for (const column of columns) {
    const ends = rows.slice(-5).map((row) => Math.log(row[column] ?? NaN));
    for (const [a = NaN, b = NaN, c = NaN, d = NaN] of [ends.slice(0, 4), ends.slice(1)])
      expect(Math.abs(d - 3 * c + 3 * b - a)).toBeLessThan(0.05);
  }
});

// basis: published, cie-15-2004 and cie-170-2: the tables print no more of z beyond these wavelengths.
test.each([
  ["2 degrees", STANDARD_OBSERVERS, 3, 650],
  ["10 degrees", STANDARD_OBSERVERS, 6, 560],
  ["the cones", CONE_OBSERVER, 3, 620],
] as const)("z of %s is 0 where the tables print none", (_, rows, column, fromNm) => {
  const beyond = rows.filter(([nm]) => nm >= fromNm).map((row) => row[column]);
  expect(beyond.length).toBeGreaterThan(15);
  expect(beyond.filter((z) => z !== 0)).toEqual([]);
});

// basis: published, cie-15-2004 and cie-170-2: the tables go on in even steps.
test.each([
  ["illuminants", STANDARD_ILLUMINANTS, 10],
  ["lamps", LAMP_ILLUMINANTS, 5],
  ["observers", STANDARD_OBSERVERS, 10],
  ["the cones", CONE_OBSERVER, 5],
] as const)("wavelengths of %s stand evenly apart", (_, rows, stepNm) => {
  const [[firstNm] = [NaN]] = rows;
  expect(rows.map(([nm]) => nm)).toEqual(rows.map((_row, i) => firstNm + i * stepNm));
});
