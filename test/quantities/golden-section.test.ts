import { describe, expect, test } from "vitest";
import { leastAt } from "../../lib/quantities/golden-section.ts";

describe("where a function of one valley is least", () => {
  // School mathematics: the vertex of a parabola, the trough of the cosine, 1/e where x ln x turns, an end where it only falls.
  test.each([
    ["(x - 2)^2", (x: number) => (x - 2) ** 2, 0, 5, 2],
    ["cos x", Math.cos, 2, 4, Math.PI],
    ["x ln x", (x: number) => x * Math.log(x), 0.01, 1, 1 / Math.E],
    ["-x", (x: number) => -x, 0, 1, 1],
    ["x", (x: number) => x, 0, 1, 0],
  ] as const)("%s", (_, of, from, to, least) => {
    expect(Math.abs(leastAt(of, from, to, 1e-6) - least)).toBeLessThan(1e-6);
  });

  test("each step but the last asks once: 24 steps from 1 to below .00001, after the first two", () => {
    let asked = 0;
    leastAt(
      (x) => {
        asked += 1;
        return x * x;
      },
      0,
      1,
      1e-5,
    );
    expect(asked).toBe(1 + Math.ceil(Math.log(1e-5) / Math.log((Math.sqrt(5) - 1) / 2)));
  });

  test.each([0, -1, NaN])("a width of %s is refused", (within) =>
    expect(() => leastAt(Math.cos, 2, 4, within)).toThrow(
      new RangeError(`A stretch is never narrower than ${within}`),
    ),
  );
});
