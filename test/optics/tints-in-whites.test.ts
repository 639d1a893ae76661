import { describe, expect, test } from "vitest";
import { isStatement } from "../../lib/quantities/statement.ts";
import { OPTICS_SOURCES } from "../../lib/sources/optics.ts";
import { tintsInWhites } from "../../lib/optics/tints/tints-in-whites.ts";
import {
  LAMP,
  LEAD,
  READING_NOISE,
  syntheticSet,
  TITANIUM,
  YELLOW,
  ZINC,
  type SyntheticPigment,
} from "./synthetic-drawdowns.ts";

function ofColour(colour: SyntheticPigment, massRatios: readonly number[]) {
  const found = tintsInWhites(
    syntheticSet(
      colour,
      [
        { slug: "titanium", white: TITANIUM, massRatios },
        { slug: "lead", white: LEAD, massRatios },
        { slug: "zinc", white: ZINC, massRatios },
      ],
      {
        geometry: "d/8 excluded",
        surface: { k1: 0.04, k2: 0.55 },
        statesSurface: true,
        noise: READING_NOISE,
        seed: 2,
      },
    ),
  );
  if ("kind" in found) throw new Error(`Unexpected refusal ${JSON.stringify(found.reasons)}`);
  return found;
}

describe("tintsInWhites", () => {
  const lamp = ofColour(LAMP, [0.05, 0.01, 0.002]);

  test("tells ladder, equal lightness and sentence for each white in the order of the set", () => {
    expect(lamp.whites.map(({ white }) => white)).toEqual(["titanium", "lead", "zinc"]);
    for (const { steps, atLightness, sentence } of lamp.whites) {
      expect(steps.filter(({ standing }) => standing === "measured")).toHaveLength(3);
      expect(isStatement(atLightness[50])).toBe(false);
      expect(sentence.values).toMatchObject({ L: 50 });
    }
  });

  test("a black is bluer at L* 50 in the white that scatters the shorter waves more", () => {
    // S of titanium falls as lambda^-1.4, of zinc as lambda^-2.2, of lead as lambda^-.2: b* in that order.
    const b = lamp.whites.map(({ atLightness }) => Number((atLightness[50] as { b?: number }).b));
    expect(b[2]).toBeLessThan(b[0] ?? NaN);
    expect(b[0]).toBeLessThan(b[1] ?? NaN);
    expect(lamp.comparison.find(({ values }) => values["L"] === 50)).toMatchObject({
      rule: "differs-by-white",
      values: { from: "lead", to: "zinc" },
    });
  });

  test("a pale colour's ladder reaches no L* 50, and is spoken of all the same", () => {
    const yellow = ofColour(YELLOW, [0.5, 0.1, 0.02]);
    for (const { atLightness, sentence } of yellow.whites) {
      expect(atLightness[50]).toMatchObject({ rule: "ladder-does-not-reach", values: { L: 50 } });
      expect(sentence.rule).toMatch(/-chroma$/);
    }
    expect(yellow.comparison).toEqual([]);
  });

  test("hands on the refusal of a fit", () => {
    expect(tintsInWhites({ whites: [], tints: [] })).toMatchObject({
      kind: "refused",
      reasons: [{ rule: "no-masstone" }],
    });
  });

  test("cites only texts of the bibliography", () => {
    const cited = [
      lamp.fit.scattering,
      ...lamp.comparison,
      ...lamp.whites.map(({ sentence }) => sentence),
    ].flatMap(({ source }) => source ?? []);
    expect(cited.length).toBeGreaterThan(0);
    for (const key of cited) expect(Object.keys(OPTICS_SOURCES)).toContain(key);
  });
});
