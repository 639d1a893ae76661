import fc from "fast-check";
import { expect, test } from "vitest";
import {
  addObservation,
  addSharedObservation,
  arrowSystem,
  clearSystem,
  ownStep,
  sharedCurvature,
  sharedStep,
} from "../../lib/optics/fit/normal-equations.ts";

/** One observation: its group, or none; residual and slopes. */
type Observation = readonly [group: number | undefined, r: number, byShared: number, byOwn: number];

function steps(observations: readonly Observation[], groups: number) {
  const system = arrowSystem(groups);
  // What was left of an earlier step counts for nothing.
  addObservation(system, 0, 7, 3, 2);
  clearSystem(system);
  for (const [group, residual, byShared, byOwn] of observations)
    if (group === undefined) addSharedObservation(system, residual, byShared);
    else addObservation(system, group, residual, byShared, byOwn);
  const shared = sharedStep(system);
  return {
    shared,
    own: Array.from({ length: groups }, (_, group) => ownStep(system, group, shared)),
    curvature: sharedCurvature(system),
  };
}

// By hand: r = x + y twice over, 3 = x + y and 1 = x: x = 1, y = 2; without y the curvature of x is 2 - 1/1.
test("two observations of two unknowns are met", () => {
  const { shared, own, curvature } = steps(
    [
      [0, 3, 1, 1],
      [undefined, 1, 1, 0],
    ],
    1,
  );
  expect([shared, ...own, curvature]).toEqual([1, 2, 1]);
});

// Derived: of a least-squares step what is left is orthogonal to the slopes by each unknown.
test("what is left is orthogonal to every slope", () => {
  const slope = fc.double({ min: 0.1, max: 3, noNaN: true });
  const residual = fc.double({ min: -5, max: 5, noNaN: true });
  fc.assert(
    fc.property(
      fc.array(fc.tuple(residual, slope, slope), { minLength: 6, maxLength: 12 }),
      (rows) => {
        const observations = rows.map(([r, byShared, byOwn], i): Observation => [
          i % 2,
          r,
          byShared,
          byOwn,
        ]);
        const known: Observation = [undefined, 1, 5, 0];
        const all = [...observations, known];
        const { shared, own } = steps(all, 2);
        const left = all.map(([group, r, byShared, byOwn]) =>
          group === undefined
            ? r - byShared * shared
            : r - byShared * shared - byOwn * (own[group] ?? NaN),
        );
        const product = (weight: (row: Observation) => number): number =>
          all.reduce((sum, row, i) => sum + weight(row) * (left[i] ?? NaN), 0);
        expect(product(([, , byShared]) => byShared)).toBeCloseTo(0, 7);
        for (const wanted of [0, 1])
          expect(product(([group, , , byOwn]) => (group === wanted ? byOwn : 0))).toBeCloseTo(0, 7);
      },
    ),
    { seed: 1 },
  );
});
