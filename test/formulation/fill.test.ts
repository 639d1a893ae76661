import { describe, expect, test } from "vitest";
import {
  bodyStatement,
  BODY_RULES,
  oilSeparationStatement,
  SEPARATION_RULES,
} from "../../lib/formulation/paste-body.ts";
import {
  heldMassG,
  jarFillStatement,
  takenVolumeMl,
} from "../../lib/formulation/container-fill.ts";
import { oilAbsorptionMethodStatement } from "../../lib/formulation/oil-absorption-method.ts";

describe("fill, by arithmetic", () => {
  test("a jar of 118 ml holds 23.6 g at .2 g/ml", () =>
    expect(heldMassG(118, 0.2)).toBeCloseTo(23.6, 12));
  test("a tube of 37 ml holds 92.5 g of paint at 2.5 g/ml", () =>
    expect(heldMassG(37, 2.5)).toBe(92.5));
  test("and back", () => expect(takenVolumeMl(heldMassG(37, 1.37), 1.37)).toBeCloseTo(37, 12));
  test.each([
    [0, 1],
    [NaN, 1],
    [100, 0],
    [100, Infinity],
  ])("refuses %s ml at %s", (volume, density) => {
    expect(() => heldMassG(volume, density)).toThrow(RangeError);
    expect(() => takenVolumeMl(volume, density)).toThrow(RangeError);
  });
});

describe("jarFillStatement", () => {
  const powder = { looseGPerMl: 0.5, tappedGPerMl: 0.8 };
  test.each([
    // 118 ml: 59 g loose, 94.4 g tapped
    [58.9, "does-not-fill-the-jar"],
    [59, "fills-until-it-settles"],
    [94.3, "fills-until-it-settles"],
    [94.5, "fills-the-jar"],
  ])("%s g: %s", (massG, rule) =>
    expect(jarFillStatement("soot", massG, 118, powder).rule).toBe(rule),
  );
  test("carries the volumes it went by", () =>
    expect(jarFillStatement("soot", 40, 118, powder).values.takenMl).toEqual([50, 80]));
  test("counts as full when it just reaches the brim, poured and settled alike", () => {
    expect(jarFillStatement("soot", 80, 100, powder).rule).toBe("fills-the-jar");
    expect(jarFillStatement("soot", 80, 100, { looseGPerMl: 0.8, tappedGPerMl: 0.8 }).rule).toBe(
      "fills-the-jar",
    );
  });
  test("powder that settles to more than it was is refused", () => {
    expect(() =>
      jarFillStatement("soot", 40, 118, { looseGPerMl: 0.9, tappedGPerMl: 0.8 }),
    ).toThrow(/The loose bulk density is 0.9/);
  });
});

describe("oilAbsorptionMethodStatement", () => {
  test.each([
    ["ASTM D281", "oil-absorption-by-rub-out", "astm-d281"],
    ["iso 787-5, palette knife", "oil-absorption-by-rub-out", "iso-787-5"],
    ["ISO 787 5", "oil-absorption-by-rub-out", "iso-787-5"],
    ["ASTM D1483-12", "oil-absorption-reads-higher", "astm-d1483"],
    ["our own rub-out", "oil-absorption-rubbed-out", "gettens-stout-1942"],
    ["spatula", "oil-absorption-rubbed-out", "gettens-stout-1942"],
    ["by feel", "oil-absorption-method-unknown", "gettens-stout-1942"],
    [undefined, "oil-absorption-method-not-stated", "gettens-stout-1942"],
  ])("%s: %s", (method, rule, source) =>
    expect(oilAbsorptionMethodStatement(method)).toMatchObject({ rule, source }),
  );
});

test.each(["short", "long", "stiff", "ropy"] as const)("body %s is passed on as read", (body) => {
  expect(bodyStatement(body)).toEqual({
    rule: BODY_RULES[body],
    values: {},
    standing: "measured",
  });
});
test.each(["none", "slight", "marked"] as const)(
  "oil separation %s is passed on as read",
  (word) => {
    expect(oilSeparationStatement(word)).toEqual({
      rule: SEPARATION_RULES[word],
      values: {},
      standing: "measured",
    });
  },
);
