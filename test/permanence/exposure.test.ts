import { describe, expect, test } from "vitest";
import {
  exposureKind,
  formRatings,
  statedContradiction,
  weakestForm,
  type Exposure,
  type FormRating,
} from "../../lib/permanence/exposure.ts";

const daylight: Exposure = {
  deltaEab: 3,
  form: "tint",
  standard: "ASTM D4303",
  exposure: "daylight under glass, Arizona",
};
const xenon: Exposure = { ...daylight, deltaEab: 7, exposure: "xenon arc" };
const [rated] = formRatings([daylight, xenon]) as [FormRating];

describe("exposureKind", () => {
  test.each([
    ["xenon arc, method C", "xenon arc"],
    ["Florida, under glass", "daylight"],
    ["South window", "daylight"],
    ["a lamp", undefined],
    ["xenon behind window glass", "xenon arc"],
  ])("%s: %s", (text, kind) => {
    expect(exposureKind(text)).toBe(kind);
  });
});

describe("formRatings", () => {
  test("take the mean of a form's exposures, worked by hand: (3 + 7) / 2 is II", () => {
    expect(rated).toMatchObject({
      form: "tint",
      category: "II",
      meanDeltaEab: 5,
      underStandard: true,
    });
    expect(rated.reason).toMatchObject({
      rule: "exposed-under-standard",
      standing: "measured",
      source: "astm-d4303",
      values: {
        meanDeltaEab: 5,
        category: "II",
        deltaEabMax: 8,
        standards: ["ASTM D4303"],
        exposures: ["daylight under glass, Arizona", "xenon arc"],
      },
    });
  });
  test.each<[string, readonly Exposure[]]>([
    ["daylight alone", [daylight]],
    ["xenon alone", [xenon]],
    ["another standard among them", [daylight, { ...xenon, standard: "ISO 105-B02" }]],
    [
      "a masstone",
      [
        { ...daylight, form: "masstone" },
        { ...xenon, form: "masstone" },
      ],
    ],
    [
      "a standard whose number only begins so",
      [
        { ...daylight, standard: "D43031" },
        { ...xenon, standard: "D43031" },
      ],
    ],
  ])("%s is not under the standard", (_, exposures) => {
    expect(formRatings(exposures)[0]).toMatchObject({
      underStandard: false,
      reason: { rule: "exposed-not-under-standard" },
    });
  });
  test("keep masstone and tint apart, and the one that changed most is the weakest", () => {
    const forms = formRatings([
      { ...daylight, deltaEab: 17 },
      { ...daylight, form: "masstone", deltaEab: 2 },
    ]);
    expect(forms.map(({ form, category }) => [form, category])).toEqual([
      ["masstone", "I"],
      ["tint", "IV"],
    ]);
    expect(weakestForm(forms)?.form).toBe("tint");
  });
  test("of another's finding name the text that tells it, wherever it stands, and the standard where none does", () => {
    const told = { ...xenon, standing: "stated", source: "kirby-saunders-2004" } as const;
    const untold = { ...daylight, standing: "stated" } as const;
    for (const exposures of [[told], [daylight, told], [told, daylight], [untold, told]])
      expect(formRatings(exposures)[0]).toMatchObject({
        standing: "stated",
        reason: { rule: "exposure-as-stated", source: "kirby-saunders-2004" },
      });
    expect(formRatings([untold])[0]?.reason).toMatchObject({
      rule: "exposure-as-stated",
      source: "astm-d4303",
    });
  });
  test("of nothing exposed are none", () => {
    expect(formRatings([])).toEqual([]);
    expect(weakestForm([])).toBeUndefined();
  });
  test("beyond the last limit list no limit", () =>
    expect(formRatings([{ ...daylight, deltaEab: 30 }])[0]?.reason.values).not.toHaveProperty(
      "deltaEabMax",
    ));
  test.each([-1, NaN, Infinity])("refuse a change of %s, even beside others", (deltaEab) =>
    expect(() => formRatings([daylight, { ...daylight, deltaEab }])).toThrow(/The colour change/),
  );
});

describe("statedContradiction", () => {
  test.each([
    ["I", "exposure-worse-than-stated"],
    ["II", undefined],
    ["III", "exposure-better-than-stated"],
  ] as const)("%s stated, II exposed: %s", (stated, rule) => {
    expect(statedContradiction(stated, rated)?.rule).toBe(rule);
  });
});
