import { spectrumLab } from "../../lib/colorimetry/spectrum-lab.ts";
import { describe, expect, test } from "vitest";
import { differenceParts } from "../../lib/lots/difference-parts.ts";
import { lotStrength } from "../../lib/lots/lot-strength.ts";
import type { Measurement } from "../../lib/optics/fit/measurement.ts";
import { wavelengthsNm } from "../../lib/quantities/spectrum.ts";
import { checkTable } from "../support/checks.ts";

const GRID = { startNm: 400, stepNm: 10, count: 31 };
const SURFACE = { k1: 0.04, k2: 0.6 };
const BENCH = { grid: GRID, geometry: "d/8 excluded", surface: SURFACE } as const;
const read = (of: (nm: number) => number): Measurement => ({
  spectrum: { grid: GRID, values: wavelengthsNm(GRID).map(of) },
  geometry: "d/8 excluded",
  surface: SURFACE,
});
// The readings of test/lots/strength.py.
const STANDARD = read((nm) => 0.12 + 0.45 / (1 + Math.exp((560 - nm) / 25)));
const LOT = read((nm) => 0.11 + 0.46 / (1 + Math.exp((557 - nm) / 24)));
const WHITE = read(() => 0.88);

/** Pair 1 of Sharma's table: C'1 79.8200, h'1 271.9222; C'2 82.7485, h'2 270.0. */
checkTable(
  "parts of a CIEDE2000 difference",
  (part: "deltaE00" | "deltaL" | "deltaC" | "deltaH") =>
    differenceParts({ L: 50, a: 2.6772, b: -79.7751 }, { L: 50, a: 0, b: -82.7485 })[part],
  [
    {
      basis: "published",
      source: "sharma-2005",
      locator: "Table 1, pair 1",
      input: "deltaE00",
      expected: 2.0425,
      tolerance: 5e-5,
    },
    {
      basis: "derived",
      source: "sharma-2005",
      locator: "Table 1, pair 1, eq. 8",
      input: "deltaL",
      expected: 0,
      tolerance: 1e-12,
    },
    {
      basis: "derived",
      source: "sharma-2005",
      locator: "Table 1, pair 1, eq. 9",
      input: "deltaC",
      expected: 82.7485 - 79.82,
      tolerance: 1e-4,
      note: "of the printed C'",
    },
    {
      basis: "derived",
      source: "sharma-2005",
      locator: "Table 1, pair 1, eq. 11",
      input: "deltaH",
      expected: 2 * Math.sqrt(79.82 * 82.7485) * Math.sin(((270 - 271.9222) / 2) * (Math.PI / 180)),
      tolerance: 2e-4,
      note: "of the printed C' and h'",
    },
  ],
);

/** What python3 test/lots/strength.py prints: another language, its own CIEDE2000, sums at 10 nm. */
const found = lotStrength(STANDARD, LOT, WHITE, BENCH);
const difference = differenceParts(spectrumLab(STANDARD.spectrum), spectrumLab(LOT.spectrum));
const PRINTED: Readonly<Record<string, readonly [ours: number, theirs: number, within: number]>> = {
  "wavelength of strongest absorption": [found.strongestNm, 400, 0],
  "strength there, %": [found.percent, 113.26, 0.001],
  "weighted strength, %": [found.weightedPercent, 110.324, 0.05],
  difference: [difference.deltaE00, 1.3252, 0.02],
  "difference in lightness": [difference.deltaL, 0.2433, 0.02],
  "difference in chroma": [difference.deltaC, 2.8551, 0.05],
  "difference in hue": [difference.deltaH, 1.213, 0.05],
  "residual difference": [found.residual.deltaE00, 1.6043, 0.02],
  "residual in lightness": [found.residual.deltaL, 1.2338, 0.02],
  "residual in chroma": [found.residual.deltaC, 2.1746, 0.05],
};
test.each(Object.entries(PRINTED))(
  "%s, as another program works it out",
  (_, [ours, theirs, within]) => {
    expect(Math.abs(ours - theirs), `${ours} against ${theirs}`).toBeLessThanOrEqual(within);
  },
);

describe("strength", () => {
  test("of the standard against itself is 100 %, nothing left", () => {
    const { percent, weightedPercent, residual } = lotStrength(STANDARD, STANDARD, WHITE, BENCH);
    expect([percent, weightedPercent]).toEqual([100, 100]);
    expect(residual.deltaE00).toBeLessThan(1e-9);
  });

  test("turns over when lot and standard change places", () => {
    const other = lotStrength(LOT, STANDARD, WHITE, BENCH);
    expect((other.weightedPercent * found.weightedPercent) / 1e4).toBeCloseTo(1, 10);
  });

  test("refuses readings of another geometry, and a standard that does not absorb", () => {
    expect(() => lotStrength(STANDARD, { ...LOT, geometry: "45/0" }, WHITE, BENCH)).toThrow(
      "The readings are of several grids or geometries",
    );
    expect(() => lotStrength(WHITE, LOT, WHITE, BENCH)).toThrow(/absorption of the standard/);
  });
});
