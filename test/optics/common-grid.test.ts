import { describe, expect, test } from "vitest";
import { commonGrid, onCommonGrid } from "../../lib/optics/fit/common-grid.ts";
import type { Measurement } from "../../lib/optics/fit/measurement.ts";
import { wavelengthsNm, type WavelengthGrid } from "../../lib/quantities/spectrum.ts";

const FINE = { startNm: 380, stepNm: 5, count: 73 };
const COARSE = { startNm: 400, stepNm: 10, count: 31 };

describe("commonGrid", () => {
  test.each<[readonly WavelengthGrid[], WavelengthGrid | undefined]>([
    [[FINE, COARSE], COARSE],
    [[FINE, { startNm: 360, stepNm: 10, count: 42 }], { startNm: 380, stepNm: 10, count: 37 }],
    [
      [
        { startNm: 398, stepNm: 4, count: 90 },
        { startNm: 390, stepNm: 10, count: 36 },
      ],
      { startNm: 400, stepNm: 10, count: 35 },
    ],
    [[COARSE, { startNm: 402, stepNm: 5, count: 80 }], undefined],
    [[COARSE, { startNm: 400, stepNm: 5, count: 60 }], undefined],
  ])("%j -> %j", (grids, expected) => {
    expect(commonGrid(grids)).toEqual(expected);
  });
});

describe("onCommonGrid", () => {
  const smooth = (nm: number): number => 0.4 + 0.3 * Math.sin(nm / 60);
  const reading = (grid: WavelengthGrid): Measurement => ({
    spectrum: { grid, values: wavelengthsNm(grid).map(smooth) },
    geometry: "45/0",
  });
  const tint = { id: "a", white: "w", massRatio: 0.1, reading: reading(FINE) };

  test("takes the coarser readings as they are, and points of the finer", () => {
    const coarse = reading(COARSE);
    const set = onCommonGrid({
      masstone: reading(FINE),
      whites: [
        { slug: "w", masstone: coarse },
        { slug: "unused", masstone: reading(FINE) },
      ],
      tints: [tint],
    });
    expect(set.whites).toEqual([{ slug: "w", masstone: coarse }]);
    expect(set.tints[0]?.reading.spectrum.grid).toEqual(COARSE);
    for (const [i, nm] of wavelengthsNm(COARSE).entries())
      expect(set.masstone?.spectrum.values[i]).toBeCloseTo(smooth(nm), 12);
  });

  test("interpolates where points fall between", () => {
    const set = onCommonGrid({
      masstone: reading({ startNm: 398, stepNm: 4, count: 90 }),
      whites: [],
      tints: [{ ...tint, reading: reading({ startNm: 390, stepNm: 10, count: 36 }) }],
    });
    for (const [i, value] of (set.masstone?.spectrum.values ?? []).entries())
      expect(value).toBeCloseTo(smooth(400 + 10 * i), 3);
  });

  test("leaves one grid alone, and what cannot be brought together", () => {
    const one = {
      masstone: reading(FINE),
      whites: [{ slug: "w", masstone: reading(FINE) }],
      tints: [tint],
    };
    expect(onCommonGrid(one)).toBe(one);
    const apart = {
      masstone: reading({ startNm: 400, stepNm: 10, count: 30 }),
      whites: [],
      tints: [tint],
    };
    expect(onCommonGrid(apart)).toBe(apart);
    expect(onCommonGrid({ whites: [], tints: [] })).toEqual({ whites: [], tints: [] });
  });
});
