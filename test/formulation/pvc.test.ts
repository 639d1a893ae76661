import { describe, expect, test } from "vitest";
import { pigmentVolumeConcentration, reducedPvc } from "../../lib/formulation/pvc.ts";
import { checkTable, type Check } from "../support/checks.ts";

const BY_HAND = {
  basis: "derived",
  source: "bierwagen-hay-1975",
  locator: "PVC = (mp/rhop) / (mp/rhop + mb/rhob)",
} as const;

checkTable<readonly [number, number, number, number]>(
  "pigmentVolumeConcentration [mp, rhop, mb, rhob]",
  ([mp, rhop, mb, rhob]) => pigmentVolumeConcentration(mp, rhop, mb, rhob),
  [
    {
      ...BY_HAND,
      input: [100, 4, 23.25, 0.93],
      expected: 0.5,
      tolerance: 1e-12,
      note: "25 cm3 of each",
    },
    {
      ...BY_HAND,
      input: [100, 4.2, 20, 0.93],
      expected: 0.525424,
      tolerance: 5e-7,
      note: "23.8095 / (23.8095 + 21.5054)",
    },
    { ...BY_HAND, input: [300, 2, 50, 1], expected: 0.75, tolerance: 1e-12, note: "150 / 200" },
  ] satisfies Check<readonly [number, number, number, number], number>[],
);

describe("ordinary recipes lie where oil pastes do (reduced PVC .6-1.0; worked from recipes of the trade, memory)", () => {
  // oil absorption, density, oil index; invented but plausible
  test.each([
    ["lead white", 10.5, 6.7, 14],
    ["titanium white", 20, 4.2, 30],
    ["black iron oxide", 25, 4.7, 31],
    ["viridian", 52, 3.32, 54],
  ])("%s", (_, oa, rho, oilIndex) => {
    const lambda = reducedPvc(
      pigmentVolumeConcentration(100, rho, oilIndex, 0.93),
      1 / (1 + (oa * rho) / 93.5),
    );
    expect(lambda).toBeGreaterThan(0.6);
    expect(lambda).toBeLessThan(1);
  });
});

describe("reducedPvc", () => {
  test("is 1 at the critical concentration", () => expect(reducedPvc(0.5, 0.5)).toBe(1));
  test.each([
    [0, 0.5],
    [0.5, 0],
    [1, 0.5],
    [0.5, NaN],
  ])("refuses %s over %s", (pvc, cpvc) => expect(() => reducedPvc(pvc, cpvc)).toThrow(/The C?PVC/));
});

test.each([
  [0, 4, 20, 0.93],
  [100, NaN, 20, 0.93],
  [100, 4, -1, 0.93],
  [100, 4, 20, Infinity],
])("pigmentVolumeConcentration refuses %s, %s, %s, %s", (mp, rhop, mb, rhob) => {
  expect(() => pigmentVolumeConcentration(mp, rhop, mb, rhob)).toThrow(RangeError);
});
