import { describe, expect, test } from "vitest";
import { targetOfText } from "../../lib/mixing/finding/target-text.ts";
import { addressOf, stateOf, type BenchState } from "../../lib/mixing/mix-address.ts";
import { mixingRange } from "../../lib/mixing/mixing-range.ts";
import { predictedMix } from "../../lib/mixing/prediction/predicted-mix.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import { mixingSentence } from "../../lib/words/in-browser/mixing.ts";
import { DATA, RANGE } from "./demonstration-range.ts";

const USUAL: BenchState = {
  mix: {
    by: "mass",
    colours: [{ slug: "bone-black", parts: 1 }],
    white: { slug: "titanium-white", parts: 10 },
  },
  filmUm: Infinity,
  finish: "glossy",
  light: "daylight",
};

describe("an address", () => {
  test("gives its state back", () => {
    const state: BenchState = {
      mix: {
        by: "volume",
        colours: [
          { slug: "bone-black", parts: 1.5 },
          { slug: "raw-umber", parts: 0.25 },
        ],
        white: { slug: "lead-white", parts: 20 },
      },
      medium: { slug: "chalk-medium", volumes: 2 },
      filmUm: 75,
      finish: "matte",
      light: "led",
    };
    expect(stateOf(addressOf(state), RANGE, USUAL)).toEqual({ state, remarks: [] });
  });

  test.each([
    [
      "mix=bone-blak:1",
      /There is no paint \u201cbone-blak\u201d here; perhaps Bone Black was meant\./,
    ],
    ["mix=bone-black:much", /\u201cmuch\u201d is no number of parts/],
    ["mix=bone-black:-3", /no number of parts/],
    ["mix=bone-black:1&light=moon", /\u201cmoon\u201d is no choice for \u201clight\u201d/],
    ["mix=bone-black:1&film=9999", /is no choice for \u201cfilm\u201d/],
    ["mix=bone-black,raw-umber,viridian,burnt-umber,raw-sienna", /No more than 4 colours/],
    ["mix=%3Cscript%3E", /There is no paint/],
  ])("%s is told in a sentence, and the page goes on", (search, sentence) => {
    const { state, remarks } = stateOf(search, RANGE, USUAL);
    expect(remarks.map(mixingSentence).join(" ")).toMatch(sentence);
    expect(isStatement(predictedMix(state.mix, RANGE))).toBe(false);
  });
});

describe("a colour written down", () => {
  test.each(["5PB 4/2", "N 5/", "42 -1 -7", "L* 42, a* \u22121, b* \u22127", "#6b6f76"])(
    "%s is read",
    (text) => {
      expect(isStatement(targetOfText(text))).toBe(false);
    },
  );

  test.each([
    ["", /Write a colour/],
    ["blueish", /is no colour that this page can read/],
    ["300 0 0", /is no colour that this page can read/],
    ["10 120 100", /outside what a surface throws back/],
  ])("%j is answered with a sentence", (text, sentence) => {
    const found = targetOfText(text);
    if (!isStatement(found)) throw new Error("Unexpected colour");
    expect(mixingSentence(found)).toMatch(sentence);
  });

  test("a grey of the screen is a grey", () => {
    const found = targetOfText("#777777");
    if (isStatement(found)) throw new Error(found.rule);
    // sRGB 119: linear .1845, L* 50.03 (IEC 61966-2-1, by hand).
    expect(found.lab.L).toBeCloseTo(50.03, 1);
    expect(Math.hypot(found.lab.a, found.lab.b)).toBeLessThan(0.1);
  });
});

describe("what cannot be mixed", () => {
  const mix = (colours: readonly string[], white = "titanium-white") =>
    predictedMix(
      {
        by: "mass",
        colours: colours.map((slug) => ({ slug, parts: 1 })),
        white: { slug: white, parts: 10 },
      },
      RANGE,
    );

  test.each([
    [["cerulean-blue"], "titanium-white", /^Cerulean Blue cannot be predicted in a mixture\. /],
    [["alizarin-crimson"], "zinc-white", /Alizarin Crimson was not tried in zinc white/i],
    [["bone-black", "cobalt-blue"], "titanium-white", /instruments of different geometry/],
  ])("%j in %s says why", (colours, white, sentence) => {
    const found = mix(colours, white);
    if (!isStatement(found)) throw new Error("Unexpected prediction");
    expect(mixingSentence(found)).toMatch(sentence);
  });

  test("nothing at all says so", () => {
    const found = predictedMix(
      { by: "mass", colours: [], white: { slug: "titanium-white", parts: 0 } },
      RANGE,
    );
    expect(isStatement(found) && found.rule).toBe("nothing-mixed");
  });
});

test("data of another build are refused, not misread", () => {
  expect(() => mixingRange({ ...DATA, format: 0 })).toThrow(
    "The data are of format 0; right would be 1",
  );
});
