import { describe, expect, test } from "vitest";
import {
  DISPERSION_FACTORS,
  dispersionFactorRuling,
  dispersionRuling,
  effectiveCpvc,
  type Dispersion,
} from "../../lib/formulation/dispersion.ts";
import { particleClass, type ParticleClass } from "../../lib/formulation/particle-class.ts";

describe("dispersionFactorRuling (estimates of the trade: x 1.0 milled or coarse, x .9 mulled, x .7-.8 mulled fine carbon)", () => {
  test.each<[Dispersion | undefined, ParticleClass, readonly [number, number], string]>([
    ["milled", "fine carbon", [1, 1], "pigment-opened"],
    ["milled", "fine", [1, 1], "pigment-opened"],
    ["mulled", "coarse", [1, 1], "coarse-pigment-opens"],
    ["mulled", "fine", [0.9, 0.9], "agglomerates-hold-oil"],
    ["mulled", "fine carbon", [0.7, 0.8], "agglomerates-hold-oil"],
    [undefined, "fine", [0.9, 1], "dispersion-unknown"],
    [undefined, "fine carbon", [0.7, 1], "dispersion-unknown"],
  ])("%s, %s -> %s by %s", (dispersion, particle, factor, rule) => {
    const ruling = dispersionFactorRuling(dispersion, particle);
    expect(ruling.factor).toEqual(factor);
    expect(ruling.reason).toMatchObject({
      rule,
      standing: "estimated",
      source: "practice-formulation",
    });
  });

  test("lists the grain and the factor that it went by", () =>
    expect(dispersionFactorRuling("mulled", "fine").reason.values).toEqual({
      particle: "fine",
      factor: [0.9, 0.9],
    }));

  test("has one row for each way of making and each grain, none above 1", () => {
    expect(
      new Set(DISPERSION_FACTORS.map(({ dispersion, particle }) => `${dispersion}/${particle}`))
        .size,
    ).toBe(6);
    expect(DISPERSION_FACTORS).toHaveLength(6);
    expect(
      DISPERSION_FACTORS.every(
        ({ factor: [lower, upper] }) => lower > 0 && lower <= upper && upper <= 1,
      ),
    ).toBe(true);
  });
});

describe("effectiveCpvc", () => {
  test("is the CPVC times the factor", () => expect(effectiveCpvc(0.5, 0.9)).toBeCloseTo(0.45, 12));
  test("may be the CPVC itself", () => expect(effectiveCpvc(0.5, 1)).toBe(0.5));
  test.each([0, 1.01, -0.1, NaN])("refuses the factor %s", (factor) => {
    expect(() => effectiveCpvc(0.5, factor)).toThrow(
      new RangeError(`The dispersion factor is ${factor}; right would be 0 < factor <= 1`),
    );
  });
});

describe("particleClass", () => {
  test.each([
    [{ isFineCarbon: true }, "fine carbon"],
    [{ isFineCarbon: true, sizeUm: 0.03 }, "fine carbon"],
    [{ isFineCarbon: false, sizeUm: 5 }, "coarse"],
    [{ isFineCarbon: false, sizeUm: 4.99 }, "fine"],
    [{ isFineCarbon: false }, "fine"],
  ])("%o -> %s", (particle, expected) => expect(particleClass(particle)).toBe(expected));
  test.each([0, -1, NaN])("refuses the size %s", (sizeUm) =>
    expect(() => particleClass({ isFineCarbon: false, sizeUm })).toThrow(/The particle size/),
  );
});

/** Common practice, no source: an artists' paste is opened at 20 um on the gauge. */
describe("dispersionRuling: the gauge (ISO 1524) overrides the word", () => {
  test.each<
    [
      Dispersion | undefined,
      number | undefined,
      ParticleClass,
      Dispersion | undefined,
      string | undefined,
    ]
  >([
    ["mulled", undefined, "fine", "mulled", undefined],
    [undefined, undefined, "fine", undefined, undefined],
    ["mulled", 20, "fine", "milled", "opened-as-if-milled"],
    ["milled", 20, "fine", "milled", "opened-by-fineness"],
    ["milled", 20.1, "fine", "mulled", "milled-but-not-opened"],
    ["mulled", 60, "fine carbon", "mulled", "not-opened-by-fineness"],
    ["milled", 60, "coarse", "milled", "fineness-shows-the-grain"],
  ])("%s, %s um, %s -> %s by %s", (recorded, fineness, particle, dispersion, rule) => {
    const ruling = dispersionRuling(recorded, fineness, particle);
    expect(ruling.dispersion).toBe(dispersion);
    expect(ruling.reason?.rule).toBe(rule);
  });
  test("lists the reading and its limit", () => {
    expect(dispersionRuling("mulled", 15, "fine").reason?.values).toEqual({
      finenessOfGrindUm: 15,
      limitUm: 20,
    });
    expect(dispersionRuling(undefined, 15, "fine").reason).toMatchObject({
      rule: "opened-by-fineness",
      values: { finenessOfGrindUm: 15 },
    });
  });
  test.each([0, NaN, -3])("refuses a reading of %s", (fineness) => {
    expect(() => dispersionRuling("milled", fineness, "fine")).toThrow(/The fineness of grind/);
  });
});
