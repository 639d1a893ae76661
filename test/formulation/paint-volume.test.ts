import { describe, expect, test } from "vitest";
import {
  paintDensityGPerCm3,
  paintVolumeMl,
  volumeSolids,
} from "../../lib/formulation/paint-volume.ts";

const pigment = { massG: 100, densityGPerCm3: 4, volatile: false };
const oil = { massG: 25, densityGPerCm3: 1, volatile: false };
const thinner = { massG: 40, densityGPerCm3: 0.8, volatile: true };

describe("a paint's volume, worked by hand", () => {
  test("adds its components'", () => expect(paintVolumeMl([pigment, oil])).toBe(50));
  test("gives its density", () => expect(paintDensityGPerCm3([pigment, oil])).toBe(2.5));
  test("is all solid where nothing evaporates", () => expect(volumeSolids([pigment, oil])).toBe(1));
  test("is half solid when half of it is thinner", () =>
    expect(volumeSolids([pigment, oil, thinner])).toBe(0.5));
  test("does not depend on the order", () =>
    expect(volumeSolids([thinner, oil, pigment])).toBe(volumeSolids([pigment, oil, thinner])));
});

test("no component is no paint", () => {
  expect(() => paintVolumeMl([])).toThrow(
    new RangeError("The paint has no components; right would be at least one"),
  );
});
test.each([
  { ...oil, massG: 0 },
  { ...oil, densityGPerCm3: NaN },
  { ...oil, densityGPerCm3: -1 },
])("refuses %o", (component) => {
  expect(() => paintDensityGPerCm3([pigment, component])).toThrow(/of a component/);
});
