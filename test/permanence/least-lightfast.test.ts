import { describe, expect, test } from "vitest";
import { lightOf } from "../support/known.ts";
import { leastLightfast, type FadingComponent } from "../../lib/permanence/least-lightfast.ts";

const component = (name: string, known: Partial<FadingComponent> = {}): FadingComponent => ({
  name,
  pigments: [{ name }],
  exposures: [],
  ...known,
});
const stated = (category: "I" | "II" | "III"): Partial<FadingComponent> => ({
  stated: { category },
});
const exposed = (deltaEab: number): Partial<FadingComponent> => ({
  exposures: [{ deltaEab, form: "tint", standard: "ASTM D4303", exposure: "own window" }],
});

// A mixture takes its least lightfast pigment's category: common practice. Limits of the categories: ASTM D4303, from memory (I up to 4, II up to 8).
describe("the least lightfast component", () => {
  test.each([
    [
      "by what is stated",
      [component("Green", stated("I")), component("Rose", stated("II"))],
      { rule: "least-lightfast-as-stated", values: { pigments: ["Rose"], category: "II" } },
    ],
    [
      "by exposure",
      [component("Green", stated("I")), component("Rose", exposed(5.6))],
      { rule: "least-lightfast-by-exposure", values: { pigments: ["Rose"], deltaEab: 5.6 } },
    ],
    [
      "an exposure counts before a statement",
      [component("Green", stated("II")), component("Rose", { ...exposed(1), ...stated("III") })],
      { rule: "least-lightfast-as-stated", values: { pigments: ["Green"] } },
    ],
    [
      "by expectation",
      [
        component("Bone black", { pigments: [{ name: "Bone black", ...lightOf("PBk 9") }] }),
        component("Lake", { pigments: [{ name: "Lake", ...lightOf("PR 83") }] }),
      ],
      { rule: "least-lightfast-expected", values: { pigments: ["Lake"] } },
    ],
    [
      "several on the weakest step",
      [component("A", stated("I")), component("B", stated("II")), component("C", stated("II"))],
      { rule: "least-lightfast-as-stated", values: { pigments: ["B", "C"] } },
    ],
    [
      "of several the weakest ground",
      [component("A", stated("I")), component("B", exposed(5)), component("C", stated("II"))],
      { rule: "least-lightfast-as-stated", values: { pigments: ["B", "C"] } },
    ],
    [
      "alike",
      [component("A", stated("I")), component("B", exposed(3.9))],
      { rule: "components-alike-in-light", values: { pigments: ["A", "B"] } },
    ],
    [
      "either side of the limit",
      [component("A", stated("I")), component("B", exposed(4.1))],
      { rule: "least-lightfast-by-exposure", values: { pigments: ["B"] } },
    ],
    [
      "nothing known of one",
      [component("A", stated("III")), component("B")],
      { rule: "components-in-light-not-known", values: { pigments: ["B"] } },
    ],
  ])("%s", (_, components, expected) => expect(leastLightfast(components)).toMatchObject(expected));

  test("a colour change that is no number is refused", () => {
    expect(() =>
      leastLightfast([component("A", exposed(NaN)), component("B", exposed(1))]),
    ).toThrow("right would be");
  });
});
