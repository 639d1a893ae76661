import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  criticalPigmentVolumeConcentration,
  oilDemandStatements,
} from "../../lib/formulation/cpvc.ts";
import { checkTable, type Check } from "../support/checks.ts";

const ARITHMETIC = {
  basis: "derived",
  source: "asbeck-van-loo-1949",
  locator: "CPVC = 1 / (1 + OA rho / 93.5)",
  tolerance: 5e-7,
} as const;

checkTable<readonly [number, number]>(
  "criticalPigmentVolumeConcentration [OA, density]",
  ([oa, rho]) => criticalPigmentVolumeConcentration(oa, rho),
  [
    { ...ARITHMETIC, input: [20, 4.2], expected: 0.526761, note: "1 / (1 + 84 / 93.5)" },
    {
      ...ARITHMETIC,
      input: [11, 6.7],
      expected: 0.559211,
      note: "93.5 / 167.2; a list that prints .559208 errs in the sixth digit",
    },
    { ...ARITHMETIC, input: [45, 3.2], expected: 0.393684, note: "1 / (1 + 144 / 93.5)" },
    { ...ARITHMETIC, input: [100, 1.8], expected: 0.341865, note: "1 / (1 + 180 / 93.5)" },
  ] satisfies Check<readonly [number, number], number>[],
);

describe("the pigment that drinks more oil", () => {
  test("has the lower CPVC, at every density", () => {
    const oa = fc.double({ min: 3, max: 300, noNaN: true });
    const rho = fc.double({ min: 1, max: 10, noNaN: true });
    fc.assert(
      fc.property(
        oa,
        fc.double({ min: 1.001, max: 3, noNaN: true }),
        rho,
        (absorption, times, density) =>
          criticalPigmentVolumeConcentration(absorption * times, density) <
          criticalPigmentVolumeConcentration(absorption, density),
      ),
      { seed: 1, numRuns: 200 },
    );
  });

  test("fills a volume of pigment with the oil that the rub-out takes, at .935 g/cm3", () => {
    // By definition: at the critical concentration the gaps hold the rub-out's oil and no more.
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 300, noNaN: true }),
        fc.double({ min: 1, max: 10, noNaN: true }),
        (oa, rho) => {
          const cpvc = criticalPigmentVolumeConcentration(oa, rho);
          expect((1 - cpvc) / cpvc).toBeCloseTo(oa / 0.935 / (100 / rho), 9);
        },
      ),
      { seed: 1, numRuns: 200 },
    );
  });
});

describe("oilDemandStatements", () => {
  test.each([
    [0.4499, ["high-oil-demand-low-cpvc"]],
    [0.45, ["middling-oil-demand"]],
    [0.5499, ["middling-oil-demand"]],
    [0.55, ["low-oil-demand-high-cpvc"]],
    [0.9, ["low-oil-demand-high-cpvc"]],
    [[0.3, 0.4499], ["high-oil-demand-low-cpvc"]],
    [[0.45, 0.5], ["middling-oil-demand"]],
    [[0.5, 0.56], []],
    [[0.55, 0.6], ["low-oil-demand-high-cpvc"]],
    [[0.4, 0.45], []],
  ] as const)("CPVC %o: %o", (cpvc, rules) => {
    expect(oilDemandStatements(cpvc).map(({ rule }) => rule)).toEqual(rules);
  });

  test("carries the oil that 100 cm3 of pigment hold", () => {
    expect(oilDemandStatements(0.4)[0]?.values.oilCm3Per100Cm3).toBeCloseTo(150, 9);
    expect(oilDemandStatements([0.3, 0.4])[0]?.values).toMatchObject({
      cpvc: [0.3, 0.4],
      oilCm3Per100Cm3: [expect.closeTo(150, 9) as number, expect.closeTo(700 / 3, 9) as number],
    });
  });

  test.each([0, 1, NaN])("refuses %s", (cpvc) => {
    expect(() => oilDemandStatements(cpvc)).toThrow(
      new RangeError(`The CPVC is ${cpvc}; right would be 0 < CPVC < 1`),
    );
  });
});

describe("outside the domain", () => {
  test.each([0, -1, NaN, Infinity])("oil absorption %s is refused", (oa) => {
    expect(() => criticalPigmentVolumeConcentration(oa, 4)).toThrow(
      new RangeError(
        `The oil absorption is ${oa}; right would be 0 < oil absorption < Infinity g/100 g`,
      ),
    );
  });
  test.each([0, -1, NaN, Infinity])("density %s is refused", (rho) => {
    expect(() => criticalPigmentVolumeConcentration(20, rho)).toThrow(/The density of the pigment/);
  });
});
