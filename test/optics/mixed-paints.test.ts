import { describe, expect, test } from "vitest";
import { fittedColour } from "../../lib/optics/fit/fitted-colour.ts";
import { ladderInPaint } from "../../lib/optics/tints/ladder-in-paint.ts";
import { ladderModel, predictedTint, type LadderModel } from "../../lib/optics/tints/ladder.ts";
import { mixedLab, mixedRatioAt, mixture } from "../../lib/optics/mixtures/mixture.ts";
import { pairNeutral } from "../../lib/optics/mixtures/pair-neutral.ts";
import {
  commonWhites,
  unknownOilRuling,
  type MixedComponent,
} from "../../lib/optics/tints/common-whites.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import {
  BLUE,
  fitOf,
  LAMP,
  LEAD,
  OCHRE,
  QUIET_BENCH,
  syntheticSet,
  TITANIUM,
  type Bench,
  type LetDowns,
  type SyntheticPigment,
} from "./synthetic-drawdowns.ts";

const BENCH: Bench = { ...QUIET_BENCH, seed: 5 };
const IN_TITANIUM: LetDowns = {
  slug: "titanium",
  white: TITANIUM,
  massRatios: [1, 0.2, 0.05, 0.01],
};
const drawnDown = (pigment: SyntheticPigment, letDowns: readonly LetDowns[]) =>
  fitOf(syntheticSet(pigment, letDowns, BENCH));
const ladder = (pigment: SyntheticPigment, letDowns: LetDowns = IN_TITANIUM): LadderModel => {
  return ladderModel(drawnDown(pigment, [letDowns]), letDowns.slug);
};

describe("a ladder made to count paint", () => {
  // Of a paint that is 0.4 pigment, beside a white that is 0.8: one part of paint holds half the pigment that one of the white does.
  const byPigment = ladder(BLUE);
  const byPaint = ladderInPaint(byPigment, 0.4, 0.8);
  test("reads the same where the same pigment stands in it", () => {
    for (const ratio of [0.5, 0.1, 0.02])
      expect(predictedTint(byPaint, ratio).lab.L).toBeCloseTo(
        predictedTint(byPigment, ratio * 0.5).lab.L,
        9,
      );
    expect([byPaint.white.ratioKind, byPaint.used.map(({ massRatio }) => massRatio)]).toEqual([
      "paint",
      byPigment.used.map(({ massRatio }) => massRatio * 2),
    ]);
  });
  test("mixes with a paint that was drawn down by paint all along, weighed as the paint it is", () => {
    // The same pigment, its let-downs weighed as paint: 1 of paint to r of white paint holds r x 0.8/0.4 less pigment.
    const weighed = ladder(BLUE, { ...IN_TITANIUM, ratioKind: "pigment" });
    const mixed = mixture([
      { ladder: byPaint, parts: 1 },
      { ladder: ladderInPaint(weighed, 0.4, 0.8), parts: 1 },
    ]);
    if (isStatement(mixed)) throw new Error(mixed.rule);
    expect(mixedLab(mixed, 0.2).b).toBeCloseTo(predictedTint(byPigment, 0.1).lab.b, 6);
  });
  test("is left as it is when it counts paint already", () => {
    const counted = ladder(BLUE, { ...IN_TITANIUM, ratioKind: "paint" });
    expect(ladderInPaint(counted, 0.4, 0.8)).toBe(counted);
  });
  test.each([
    [0, 0.5],
    [1.01, 0.5],
    [NaN, 0.5],
    [0.5, 0],
    [0.5, NaN],
  ])("%d and %d are refused as fractions", (colour, white) => {
    expect(() => ladderInPaint(byPigment, colour, white)).toThrow("The mass fraction of pigment");
  });
});

describe("whites that all were let down in", () => {
  const inBoth = drawnDown(BLUE, [IN_TITANIUM, { ...IN_TITANIUM, slug: "lead", white: LEAD }]);
  const one = (
    name: string,
    fit: MixedComponent["fit"],
    parts: number | undefined = 1,
  ): MixedComponent => ({ name, parts, fit });
  const refused = fittedColour({ whites: [], tints: [] });
  test("in the order of the first", () => {
    expect(
      commonWhites([one("Blue", inBoth), one("Lamp", drawnDown(LAMP, [IN_TITANIUM]))]),
    ).toEqual(["titanium"]);
    expect(commonWhites([one("Blue", inBoth), one("Other blue", inBoth)])).toEqual([
      "titanium",
      "lead",
    ]);
  });
  test("or why there are none", () => {
    expect(commonWhites([one("Blue", inBoth, undefined), one("Lamp", undefined)])).toMatchObject({
      rule: "component-not-let-down",
    });
    expect(
      commonWhites([{ name: "Blue", parts: undefined, fit: inBoth }, one("Lamp", inBoth)]),
    ).toMatchObject({ rule: "parts-not-recorded" });
    expect(
      commonWhites([one("Blue", inBoth), one("Lamp", undefined), one("Ochre", refused)]),
    ).toMatchObject({ rule: "component-not-let-down", values: { components: ["Lamp", "Ochre"] } });
    expect(
      commonWhites([
        one("Blue", drawnDown(BLUE, [{ ...IN_TITANIUM, slug: "lead", white: LEAD }])),
        one("Lamp", drawnDown(LAMP, [IN_TITANIUM])),
      ]),
    ).toMatchObject({ rule: "no-common-white" });
  });
  test("paints of which the oil is not known are named", () => {
    expect(unknownOilRuling([{ name: "Blue", pigmentFraction: 0.4 }])).toBeUndefined();
    expect(
      unknownOilRuling([
        { name: "Blue", pigmentFraction: 0.4 },
        { name: "Lamp", pigmentFraction: undefined },
      ]),
    ).toMatchObject({ rule: "oil-of-paint-not-known", values: { paints: ["Lamp"] } });
  });
});

describe("where a pair lies nearest to neutral", () => {
  const [blue, ochre] = [ladder(BLUE), ladder(OCHRE)];
  const neutral = pairNeutral(blue, ochre, 50);
  if (isStatement(neutral)) throw new Error(neutral.rule);
  test("is found as trying every thousandth part finds it", () => {
    const tried = Array.from({ length: 1001 }, (_, i) => {
      const mixed = mixture([
        { ladder: blue, parts: i / 1000 },
        { ladder: ochre, parts: 1 - i / 1000 },
      ]);
      const ratio = isStatement(mixed) ? mixed : mixedRatioAt(mixed, 50);
      return isStatement(mixed) || isStatement(ratio)
        ? Infinity
        : Math.hypot(mixedLab(mixed, ratio).a, mixedLab(mixed, ratio).b);
    });
    const least = Math.min(...tried);
    expect(neutral.chroma).toBeCloseTo(least, 2);
    expect(Math.abs(neutral.share - tried.indexOf(least) / 1000)).toBeLessThan(0.002);
    expect(neutral.lab.L).toBeCloseTo(50, 1);
  });
  test("is the colour itself for a pair of one, and refused where none has that L*", () => {
    const own = pairNeutral(blue, blue, 50);
    if (isStatement(own)) throw new Error(own.rule);
    const alone = mixture([{ ladder: blue, parts: 1 }]);
    const ratio = isStatement(alone) ? alone : mixedRatioAt(alone, 50);
    if (isStatement(alone) || isStatement(ratio)) throw new Error("refused");
    const { a, b } = mixedLab(alone, ratio);
    expect(own.chroma).toBeCloseTo(Math.hypot(a, b), 2);
    expect(pairNeutral(blue, ochre, 99.9)).toMatchObject({ rule: "ladder-does-not-reach" });
    expect(() => pairNeutral(blue, ochre, NaN)).toThrow("The lightness L*");
  });
});
