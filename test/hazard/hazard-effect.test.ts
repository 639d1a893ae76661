import { describe, expect, test } from "vitest";
import { hazardEffects } from "../../lib/hazard/texts/hazard-effect.ts";
import { HAZARD_CODES } from "../../lib/hazard/texts/hazard-statement.ts";
import {
  BURNS,
  EYES,
  LIGHT_FILTER_NOT_ENOUGH,
  SKIN,
  SPECIAL_WASTE,
  UNBORN,
  VAPOURS,
  WATER,
} from "../../lib/hazard/studio/studio-material.ts";

const PATTERNS = [
  ...[BURNS, EYES, LIGHT_FILTER_NOT_ENOUGH, SKIN, SPECIAL_WASTE, UNBORN, VAPOURS, WATER],
];

describe("what a hazard does, in a few words", () => {
  test("the gravest first, each once (clp-statements-2025)", () => {
    expect(hazardEffects(["H410", "H400", "H373", "H360Df"])).toEqual([
      "unborn child or fertility",
      "may damage organs",
      "very toxic to water",
    ]);
  });

  const asked = HAZARD_CODES.filter((code) => PATTERNS.some((pattern) => pattern.test(code)));
  test("there is what to look for", () => {
    expect(asked.length).toBeGreaterThan(40);
  });
  test.each(asked)("%s, which a caution can be given for, has its words", (code) => {
    expect(hazardEffects([code])).toHaveLength(1);
  });
});
