import { describe, expect, test } from "vitest";
import { flammableLiquidClass } from "../../lib/hazard/classify/physical-hazards.ts";
import type { Composition } from "../../lib/hazard/classify/composition.ts";
import { classStatements, label, substance } from "./ingredients.ts";

describe("flammableLiquidClass (clp-1272-2008-memory, Table 2.6.1)", () => {
  test.each([
    [22.9, 35, "H224"],
    [22.9, 35.1, "H225"],
    [22.9, undefined, "H225"],
    [23, 35, "H226"],
    [60, 150, "H226"],
    [60.1, 150, undefined],
  ])("flash point %s, boiling from %s -> %s", (flash, boiling, statement) => {
    expect(flammableLiquidClass(flash, boiling, "EU CLP")?.statement).toBe(statement);
  });

  test("the UN frame goes on to 93 degrees", () => {
    expect(flammableLiquidClass(93, undefined, "UN GHS")?.statement).toBe("H227");
    expect(flammableLiquidClass(93.1, undefined, "UN GHS")).toBeUndefined();
    expect(flammableLiquidClass(93, undefined, "EU CLP")).toBeUndefined();
  });
});

const thinner = (fraction: number) =>
  substance("white-spirit", fraction, "H226", "H304", "H336", "EUH066");
const liquid = (fraction: number, other: Partial<Composition> = {}) =>
  label([thinner(fraction)], { form: "liquid", ...other });

describe("a thinner", () => {
  test("alone bears its classes for certain", () => {
    const found = liquid(1);
    expect(found).toMatchObject({
      signalWord: "Danger",
      pictograms: ["GHS02", "GHS07", "GHS08"],
      hazardStatements: ["H226", "H304", "H336"],
      supplemental: ["EUH066"],
    });
    expect(found.classes.every(({ certain }) => certain)).toBe(true);
  });

  test("in a medium without a flash point it is taken on, but not for certain", () => {
    const found = liquid(0.3);
    expect(found.classes).toMatchObject([
      { statement: "H226", certain: false },
      { statement: "H304", certain: false },
      { statement: "H336", certain: true },
    ]);
    expect(found.traces[0]?.rule).toBe("flash-point-not-stated");
  });

  /** Common practice, no source: a hundredth is no trace, and ninety-nine of them are the thinner itself. */
  test("of one in a hundred it is taken on, of less it is left to the flash point", () => {
    expect(liquid(0.01).classes).toMatchObject([{ statement: "H226", certain: false }]);
    expect(liquid(0.0099).classes).toEqual([]);
    expect(liquid(0.0099).leftOut).toContainEqual(
      expect.objectContaining({ statement: "H226", rule: "flammable-trace" }),
    );
  });
  test("of ninety-nine in a hundred it bears its class for certain, of less it does not", () => {
    const certainOf = (fraction: number) =>
      liquid(fraction).classes.find(({ statement }) => statement === "H226")?.certain;
    expect([certainOf(0.99), certainOf(0.9899)]).toEqual([true, false]);
  });

  test("a stated flash point decides", () => {
    expect(liquid(0.3, { flashPointC: 61 }).hazardStatements).toEqual(["H304", "H336"]);
    expect(liquid(0.3, { flashPointC: 61 }).leftOut).toMatchObject([
      { statement: "H226", rule: "flash-point-decides" },
    ]);
    expect(liquid(0.3, { flashPointC: 40 }).classes[0]).toMatchObject({
      statement: "H226",
      certain: true,
    });
  });

  test("aspiration: the sum from 10 %, and only in a thin liquid (20.5 mm2/s, memory)", () => {
    expect(classStatements(liquid(0.0999))).toEqual(["H226"]);
    expect(classStatements(liquid(0.1))).toEqual(["H226", "H304"]);
    expect(classStatements(liquid(0.1, { kinematicViscosityMm2PerS: 20.5 }))).toEqual([
      "H226",
      "H304",
    ]);
    expect(classStatements(liquid(0.1, { kinematicViscosityMm2PerS: 20.6 }))).toEqual(["H226"]);
    expect(liquid(0.1, { kinematicViscosityMm2PerS: 20.6 }).leftOut).toMatchObject([
      { statement: "H304", rule: "too-viscous-to-aspirate" },
      { statement: "H336", rule: "below-its-limit" },
    ]);
  });

  // basis: memory, UN GHS 3.10.2: category 2 up to 14 mm2/s at 40 degrees C, and no such category in the EU.
  test("aspiration's second category is the UN frame's, in a liquid of 14 mm2/s or thinner", () => {
    const second = (kinematicViscosityMm2PerS: number, frame: "UN GHS" | "EU CLP" = "UN GHS") =>
      classStatements(
        label([substance("isoparaffin", 0.1, "H305")], {
          form: "liquid",
          frame,
          kinematicViscosityMm2PerS,
        }),
      );
    expect(second(14)).toEqual(["H305"]);
    expect(second(14.1)).toEqual([]);
    expect(second(14, "EU CLP")).toEqual([]);
  });

  test("a paste neither burns as a liquid nor runs into the lungs", () => {
    const found = label([thinner(0.15)]);
    expect(found.hazardStatements).toEqual([]);
    expect(found.leftOut.map(({ statement, rule }) => [statement, rule])).toEqual([
      ["H226", "not-a-liquid"],
      ["H304", "not-a-liquid"],
      ["H336", "below-its-limit"],
    ]);
  });

  test("dry skin (EUH066) comes along from 10 %, unless the mixture irritates anyway (common practice, no source)", () => {
    expect(liquid(0.0999).supplemental).toEqual([]);
    expect(liquid(0.1).supplemental).toEqual(["EUH066"]);
    expect(
      label([thinner(0.5), substance("irritant", 0.2, "H315")], { form: "liquid" }).supplemental,
    ).toEqual([]);
  });

  test.each([0, -3, NaN])("refuses a viscosity of %s", (kinematicViscosityMm2PerS) => {
    expect(() => liquid(1, { kinematicViscosityMm2PerS })).toThrow(
      `The kinematic viscosity is ${kinematicViscosityMm2PerS}`,
    );
  });

  test("refuses a flash point of NaN", () => {
    expect(() => liquid(1, { flashPointC: NaN })).toThrow(
      "The flash point is NaN; right would be a finite temperature [degrees C]",
    );
  });
});

describe("classes that only a test of the mixture settles", () => {
  test("stand for the powder alone, and are left out of the paint with the cause", () => {
    expect(
      label([substance("metal-powder", 1, "H228", "H261")], { form: "powder" }).hazardStatements,
    ).toEqual(["H228", "H261"]);
    const paint = label([substance("metal-powder", 0.5, "H228", "H261")]);
    expect(paint.hazardStatements).toEqual([]);
    expect(paint.leftOut.map(({ rule }) => rule)).toEqual([
      "needs-a-test-of-the-mixture",
      "needs-a-test-of-the-mixture",
    ]);
  });
});
