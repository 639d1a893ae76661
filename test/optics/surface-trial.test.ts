import { describe, expect, test } from "vitest";
import type { DrawdownSet } from "../../lib/optics/fit/drawdown.ts";
import type { Geometry, Measurement } from "../../lib/optics/fit/measurement.ts";
import { surfaceTrial } from "../../lib/optics/fit/surface-trial.ts";
import { usableDrawdowns } from "../../lib/optics/fit/usable-drawdowns.ts";
import { certain } from "../../lib/quantities/at.ts";
import { LAMP, NO_NOISE, syntheticSet, TITANIUM } from "./synthetic-drawdowns.ts";

/** Fresnel at right angles of an oil film of index 1.5, and what such a film throws back inside. */
const SURFACE = { k1: 0.04, k2: 0.596 };

const setIn = (geometry: Geometry): DrawdownSet =>
  syntheticSet(LAMP, [{ slug: "titanium", white: TITANIUM, massRatios: [0.5, 0.1, 0.02] }], {
    geometry,
    surface: SURFACE,
    noise: NO_NOISE,
    seed: 1,
  });

/** The reading with a value of its own at its first wavelengths. */
const lowered = (reading: Measurement, count: number, value: number): Measurement => ({
  ...reading,
  spectrum: {
    ...reading.spectrum,
    values: reading.spectrum.values.map((own, i) => (i < count ? value : own)),
  },
});

const tried = (set: DrawdownSet) => surfaceTrial(certain(usableDrawdowns(set).usable), SURFACE);

/** By hand: gloss included, a reading holds k1 of what it is lit by, so that none below can be the paint's. */
describe("a reading no higher than the surface over it", () => {
  const included = setIn("d/8 included");
  const masstone = certain(included.masstone);

  test("of a masstone is remarked on at less than half of 31 wavelengths, and refused beyond", () => {
    for (const value of [SURFACE.k1, 0.01]) {
      expect(tried({ ...included, masstone: lowered(masstone, 15, value) })).toMatchObject({
        kind: "tried",
        remarks: [
          { rule: "masstone-not-told-from-surface", values: { k1: 0.04, wavelengths: 15 } },
        ],
      });
      expect(tried({ ...included, masstone: lowered(masstone, 16, value) })).toMatchObject({
        kind: "refused",
        reason: {
          rule: "reflectance-not-above-surface",
          values: { drawdown: "masstone", wavelengthNm: 400, reflectance: value, wavelengths: 16 },
        },
      });
    }
  });

  test("of a let-down is refused at a single wavelength, and named", () => {
    const [first, ...others] = included.tints;
    const low = certain(first);
    expect(
      tried({
        ...included,
        tints: [{ ...low, reading: lowered(low.reading, 1, 0.04) }, ...others],
      }),
    ).toMatchObject({
      kind: "refused",
      reason: { values: { drawdown: low.id, wavelengthNm: 400, wavelengths: 1 } },
    });
  });

  test("is nothing to remark on just above it", () => {
    expect(tried({ ...included, masstone: lowered(masstone, 16, 0.0401) })).toMatchObject({
      kind: "tried",
      remarks: [],
    });
  });

  test("without gloss is the darkness of the paint, down to nothing", () => {
    const without = setIn("45/0");
    expect(
      tried({ ...without, masstone: lowered(certain(without.masstone), 31, 0) }),
    ).toMatchObject({ kind: "tried", remarks: [] });
  });
});
