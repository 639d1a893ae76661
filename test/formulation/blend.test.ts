import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  blendDensityGPerCm3,
  blendOilAbsorptionGPer100g,
  volumeFractions,
  type OilDemandPart,
} from "../../lib/formulation/blend.ts";
import { criticalPigmentVolumeConcentration } from "../../lib/formulation/cpvc.ts";

const half = [
  { massFraction: 0.5, densityGPerCm3: 2, oilAbsorptionGPer100g: 80 },
  { massFraction: 0.5, densityGPerCm3: 4, oilAbsorptionGPer100g: 20 },
];

describe("half and half by mass, worked by hand", () => {
  test("the lighter takes two thirds of the volume", () => {
    expect(volumeFractions(half)[0]).toBeCloseTo(2 / 3, 12);
    expect(volumeFractions(half)[1]).toBeCloseTo(1 / 3, 12);
  });
  test("density: 100 g over 25 + 12.5 cm3", () =>
    expect(blendDensityGPerCm3(half)).toBeCloseTo(100 / 37.5, 12));
  test("oil: 40 g for the one half, 10 g for the other", () =>
    expect(blendOilAbsorptionGPer100g(half)).toBeCloseTo(50, 12));
});

const parts = fc
  .array(
    fc.record({
      weight: fc.double({ min: 0.01, max: 1, noNaN: true }),
      densityGPerCm3: fc.double({ min: 1.2, max: 9, noNaN: true }),
      oilAbsorptionGPer100g: fc.double({ min: 6, max: 200, noNaN: true }),
    }),
    { minLength: 1, maxLength: 5 },
  )
  .map((rows): OilDemandPart[] => {
    const whole = rows.reduce((total, { weight }) => total + weight, 0);
    return rows.map(({ weight, ...rest }) => ({ ...rest, massFraction: weight / whole }));
  });

describe("any blend", () => {
  test("lies between its parts", () => {
    fc.assert(
      fc.property(parts, (blend) => {
        const density = blendDensityGPerCm3(blend);
        const oil = blendOilAbsorptionGPer100g(blend);
        const within = (value: number, ends: number[]): boolean =>
          value >= Math.min(...ends) * (1 - 1e-9) && value <= Math.max(...ends) * (1 + 1e-9);
        return (
          within(
            density,
            blend.map((part) => part.densityGPerCm3),
          ) &&
          within(
            oil,
            blend.map((part) => part.oilAbsorptionGPer100g),
          )
        );
      }),
      { seed: 1, numRuns: 200 },
    );
  });
  test("holds in its gaps, at the critical concentration, the oil of its parts' volumes", () => {
    fc.assert(
      fc.property(parts, (blend) => {
        const volumes = volumeFractions(blend);
        const gaps = (oa: number, rho: number): number =>
          1 / criticalPigmentVolumeConcentration(oa, rho) - 1;
        const apart = blend.reduce(
          (total, part, i) =>
            total + (volumes[i] ?? NaN) * gaps(part.oilAbsorptionGPer100g, part.densityGPerCm3),
          0,
        );
        expect(
          gaps(blendOilAbsorptionGPer100g(blend), blendDensityGPerCm3(blend)) / apart,
        ).toBeCloseTo(1, 9);
      }),
      { seed: 1, numRuns: 200 },
    );
  });
  test("does not depend on the order", () => {
    fc.assert(
      fc.property(parts, (blend) => {
        expect(
          blendOilAbsorptionGPer100g(blend.toReversed()) / blendOilAbsorptionGPer100g(blend),
        ).toBeCloseTo(1, 9);
      }),
      { seed: 1, numRuns: 200 },
    );
  });
  test("of a pigment with itself changes nothing", () => {
    const one = { densityGPerCm3: 3.3, oilAbsorptionGPer100g: 52 };
    const twice = [
      { ...one, massFraction: 0.3 },
      { ...one, massFraction: 0.7 },
    ];
    expect(blendDensityGPerCm3(twice)).toBeCloseTo(3.3, 12);
    expect(blendOilAbsorptionGPer100g(twice)).toBeCloseTo(52, 12);
  });
});

describe("parts that are no whole", () => {
  test("are refused with their sum", () => {
    expect(() =>
      blendDensityGPerCm3([
        { massFraction: 0.5, densityGPerCm3: 2 },
        { massFraction: 0.25, densityGPerCm3: 3 },
      ]),
    ).toThrow(new RangeError("The sum of mass fraction is 0.75; right would be 1"));
  });
  // Our own limit: a millionth is what rounding leaves of shares that are written to six places.
  test("a sum may stray from 1 by a millionth, and no further", () => {
    const withMore = (more: number) => () =>
      blendDensityGPerCm3([
        { massFraction: 0.5, densityGPerCm3: 2 },
        { massFraction: 0.5 + more, densityGPerCm3: 3 },
      ]);
    for (const more of [0.99e-6, -0.99e-6]) expect(withMore(more)()).toBeCloseTo(2.4, 5);
    for (const more of [1.01e-6, -1.01e-6]) expect(withMore(more)).toThrow(/sum of mass fraction/);
  });
  test.each([-0.1, 1.1, NaN])("a fraction of %s is refused", (massFraction) => {
    expect(() =>
      blendDensityGPerCm3([
        { massFraction, densityGPerCm3: 2 },
        { massFraction: 1 - massFraction, densityGPerCm3: 3 },
      ]),
    ).toThrow(/mass fraction/);
  });
  test("a part of nothing changes nothing", () => {
    expect(
      blendDensityGPerCm3([
        { massFraction: 1, densityGPerCm3: 2 },
        { massFraction: 0, densityGPerCm3: 9 },
      ]),
    ).toBe(2);
  });
  test("no part at all is refused", () =>
    expect(() => blendDensityGPerCm3([])).toThrow(/sum of mass fraction/));
  test("a density of 0 is refused", () =>
    expect(() => blendDensityGPerCm3([{ massFraction: 1, densityGPerCm3: 0 }])).toThrow(
      /density of the pigment/,
    ));
  test("an oil absorption of NaN is refused", () => {
    expect(() =>
      blendOilAbsorptionGPer100g([
        { massFraction: 1, densityGPerCm3: 2, oilAbsorptionGPer100g: NaN },
      ]),
    ).toThrow(/oil absorption/);
  });
});
