import { spectrumLab } from "../../lib/colorimetry/spectrum-lab.ts";
import { expect, test } from "vitest";
import { letDownNoise } from "../../lib/optics/fit/let-down-noise.ts";
import { predictionUncertainty } from "../../lib/optics/fit/prediction-uncertainty.ts";

const GRID = { startNm: 400, stepNm: 10, count: 31 };
const flat = (R: number): number[] => Array.from({ length: GRID.count }, () => R);
const noiseAt = (R: number): number =>
  letDownNoise(
    { measured: flat(R), lab: spectrumLab({ grid: GRID, values: flat(R) }) },
    { measured: flat(0.97) },
    { grid: GRID, geometry: "d/8 excluded", masstone: { measured: flat(0.002) } },
  );

// Derived by hand, of greys under a white that hardly absorbs and a black that hardly reflects: 3 % of K/S is
// dR = .03 K/S / ((1 - R^2) / 2 R^2), a film .01 R, the reading little beside them; L* = 116 R^(1/3) - 16, so that
// dL* = 38.7 R^(-2/3) dR; divided by S_L of CIEDE2000 at that lightness. R .2: .0040 and .0020 are .51 of L* 51.8
// (S_L 1.01); R .05: .0014 and .0005 are .41 of L* 26.7 (S_L 1.34).
test.each([
  [0.2, 0.5],
  [0.05, 0.31],
])("a grey let-down that reflects %s differs by Delta-E00 %s when it is made again", (R, by) => {
  expect(noiseAt(R) / by).toBeGreaterThan(0.93);
  expect(noiseAt(R) / by).toBeLessThan(1.12);
});

test("no workshop's left-out let-downs make a prediction surer than a let-down made again", () => {
  const experience = { p68: 0.1, p90: 0.2, count: 200 };
  const { p68, p90 } = predictionUncertainty(0, { experience, letDownNoise: 0.4 });
  expect(p68).toBeCloseTo(0.4, 9);
  expect(p90).toBeCloseTo(0.658, 9);
  expect(predictionUncertainty(0, { experience }).p68).toBeCloseTo(0.08, 9);
  expect(predictionUncertainty(0, { letDownNoise: 0.4 }).p68).toBeCloseTo(0.8, 9);
});
