import { describe, expect, test } from "vitest";
import { isccNbsNames } from "../../lib/colorimetry/iscc-nbs.ts";
import { munsellOfLab } from "../../lib/colorimetry/munsell.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import {
  colourWord,
  HUE_SECTORS,
  hueToward,
  hueTurn,
  hueWord,
} from "../../lib/optics/tints/hue-word.ts";
import {
  greyTintRuling,
  groundShownRuling,
  TINT_RULES,
  tintRuling,
  whitesRuling,
  type JudgedTint,
} from "../../lib/optics/tints/tint-statement.ts";

import { KNOWN } from "../support/known.ts";

const BLACK = { L: 8, a: 0, b: 1 };
const tint = (L: number, a: number, b: number, more: Partial<JudgedTint> = {}): JudgedTint => ({
  lab: { L, a, b },
  basis: "predicted",
  ...more,
});

describe("a grey in a white", () => {
  test.each([
    // b* at L* 50, rule, hue; each limit from both sides
    [-1.49, "stays-near-neutral", "blue"],
    [-1.5, "leans", "blue"],
    [-3.49, "leans", "blue"],
    [-3.5, "turns-clearly", "blue"],
    [-5.99, "turns-clearly", "blue"],
    [-6, "turns-strongly", "blue"],
    [-10, "turns-strongly", "blue"],
    [1.49, "stays-near-neutral", "yellow"],
    [3.5, "turns-clearly", "yellow"],
  ])("b* %s: %s %s", (b, rule, hue) => {
    const ruling = tintRuling("titanium", [tint(50, 0, b)], BLACK);
    expect(ruling.rule).toBe(rule);
    expect(ruling.values).toMatchObject({ white: "titanium", L: 50, b, hue });
  });

  test("of which the masstone was not read is judged by its tint alone, and what is no grey not at all", () => {
    const letDowns = [tint(24, 0, -6), tint(52, 0.2, -4.1), tint(80, 0, -1)];
    expect(greyTintRuling("zinc", letDowns)).toEqual(tintRuling("zinc", letDowns, BLACK));
    expect(greyTintRuling("zinc", [tint(50, -12, -2)])).toEqual({
      rule: "no-tint-to-judge",
      values: { white: "zinc" },
    });
    expect(greyTintRuling("zinc", []).rule).toBe("no-tint-to-judge");
  });

  test("says what the sentence needs: the example of the brief", () => {
    expect(
      tintRuling("titanium", [tint(50, -0.5, -4.1, { massRatio: 0.02, uncertainty: 1.3 })], BLACK),
    ).toEqual({
      rule: "turns-clearly",
      source: "optics-practice",
      values: {
        white: "titanium",
        L: 50,
        a: -0.5,
        b: -4.1,
        chroma: Math.hypot(0.5, 4.1),
        hue: "blue",
        basis: "predicted",
        massRatio: 0.02,
        uncertainty: 1.3,
      },
    });
    expect(tintRuling("lead", [tint(50, 0.1, -0.6)], BLACK).rule).toBe("stays-near-neutral");
  });

  test("is judged by the let-down nearest L* 50, never by its masstone", () => {
    const ruling = tintRuling("w", [tint(70, 0, -9), tint(46, 0, -4), tint(56, 0, 0)], {
      L: 8,
      a: 0,
      b: 10,
    });
    expect(ruling.values).toMatchObject({ L: 46, b: -4 });
    expect(ruling.rule).toBe("turns-clearly");
  });

  test("is not judged by a let-down too far off, from both sides", () => {
    expect(tintRuling("w", [tint(80, 0, -4)], BLACK).rule).toBe("turns-clearly");
    expect(tintRuling("w", [tint(80.1, 0, -4)], BLACK)).toMatchObject({
      rule: "no-tint-to-judge",
      values: { wantedL: 50, nearestL: 80.1 },
    });
    expect(tintRuling("w", [tint(20, 0, -4)], BLACK).rule).toBe("turns-clearly");
    expect(tintRuling("w", [tint(19.9, 0, -4)], BLACK).rule).toBe("no-tint-to-judge");
    expect(tintRuling("w", [], BLACK)).toEqual({
      rule: "no-tint-to-judge",
      values: { white: "w" },
    });
  });

  test("refuses a let-down of no colour", () => {
    expect(() => tintRuling("w", [tint(50, NaN, 0)], BLACK)).toThrow("The L*, a* or b* is NaN");
  });
});

describe("a chromatic colour in a white", () => {
  const red = { L: 40, a: 50, b: 20 };
  test.each([
    // chroma of the let-down, rule; masstone C*ab 20, hue 0
    [15.01, "keeps-chroma"],
    [15, "loses-chroma"],
    [24.99, "keeps-chroma"],
    [25, "gains-chroma"],
  ])("C* 20 to %s: %s", (chroma, rule) => {
    expect(tintRuling("w", [tint(50, chroma, 0)], { L: 40, a: 20, b: 0 }).rule).toBe(rule);
  });

  test("a nearly neutral masstone with a chromatic tint is no grey", () => {
    const prussian = tintRuling("w", [tint(50, -10, -35)], { L: 12, a: 0, b: -6 });
    expect(prussian.rule).toBe("gains-chroma");
    expect(prussian.values).toMatchObject({ turn: "turns-toward", toward: "blue", hue: "blue" });
    const grey = TINT_RULES.grey;
    expect(tintRuling("w", [tint(50, 0, -grey.tintChromaMax)], BLACK).rule).toBe("turns-strongly");
    expect(tintRuling("w", [tint(50, 0, -grey.tintChromaMax - 0.01)], BLACK).rule).toBe(
      "gains-chroma",
    );
    expect(
      tintRuling("w", [tint(50, 0, -4)], { L: 20, a: 0, b: -grey.masstoneChromaMax - 0.01 }).rule,
    ).toBe("loses-chroma");
  });

  test.each([
    // hue of the let-down [degree] from a masstone at 30: turn, toward
    [30, "keeps-hue", undefined],
    [34.9, "keeps-hue", undefined],
    [35.1, "turns-toward", "yellow"],
    [25.1, "keeps-hue", undefined],
    [24.9, "turns-toward", "blue"],
  ])("a turn from 30 to %s degrees: %s %s", (degrees, turn, toward) => {
    const angle = (at: number): [number, number] => [
      40 * Math.cos((at * Math.PI) / 180),
      40 * Math.sin((at * Math.PI) / 180),
    ];
    const [a, b] = angle(30);
    const ruling = tintRuling("w", [tint(50, ...angle(degrees))], { L: 40, a, b });
    expect(ruling.values).toMatchObject({ turn, ...(toward === undefined ? {} : { toward }) });
  });

  test("a masstone too grey has no hue to compare", () => {
    expect(tintRuling("w", [tint(50, -30, -20)], { L: 15, a: 4.9, b: 0 }).values).toMatchObject({
      turn: "no-hue-to-compare",
    });
    expect(tintRuling("w", [tint(50, -30, -20)], { L: 15, a: 5, b: 0 }).values).toMatchObject({
      turn: "turns-toward",
    });
  });

  test("a pale colour is judged a little above its masstone", () => {
    const ruling = tintRuling("w", [tint(78, 0, 60), tint(88, -2, 40), tint(95, 0, 10)], {
      L: 77,
      a: 5,
      b: 80,
    });
    expect(ruling.values).toMatchObject({ L: 88 });
    expect(ruling.rule).toBe("loses-chroma");
  });

  test("a white in a white is not spoken of, from both sides", () => {
    expect(tintRuling("w", [tint(95, 0, 3)], { L: 85.1, a: 0, b: 3 }).rule).toBe(
      "no-tint-to-judge",
    );
    expect(tintRuling("w", [tint(95, 0, 3)], { L: 85, a: 0, b: 3 }).rule).toBe("leans");
  });

  test("red gains no chroma", () => {
    expect(tintRuling("w", [tint(50, 45, 10)], red).values).toMatchObject({ toward: "blue" });
  });
});

describe("whites at one lightness", () => {
  const SURE = { a: 0.1, b: 0.1 };

  test("are not told apart within the error of both: 3 and 4 by the theorem of Pythagoras", () => {
    const apart = (distance: number) =>
      whitesRuling(50, [
        { white: "titanium", a: 0, b: 0, uncertainty: { a: 9, b: 3 } },
        { white: "lithopone", a: 0, b: -distance, uncertainty: { a: 9, b: 4 } },
      ]);
    expect(apart(5.01).rule).toBe("differs-by-white");
    expect(apart(5).rule).toBe("whites-not-told-apart");
    expect(apart(4.99)).toMatchObject({
      rule: "whites-not-told-apart",
      values: { distance: 4.99, uncertainty: 5 },
    });
  });

  test("are told by those that are sure, though two that are not lie further apart", () =>
    expect(
      whitesRuling(50, [
        { white: "zinc", a: 0, b: 6, uncertainty: { a: 9, b: 9 } },
        { white: "lead", a: 0, b: 3, uncertainty: SURE },
        { white: "titanium", a: 0, b: 0, uncertainty: SURE },
      ]).values,
    ).toMatchObject({ from: "lead", to: "titanium" }));

  test("differ by the two furthest apart, the cooler second", () => {
    expect(
      whitesRuling(50, [
        { white: "titanium", a: -0.5, b: -4, uncertainty: SURE },
        { white: "lead", a: 0, b: 1, uncertainty: SURE },
        { white: "zinc", a: 0, b: -2, uncertainty: SURE },
      ]),
    ).toEqual({
      rule: "differs-by-white",
      source: "optics-practice",
      values: {
        L: 50,
        from: "lead",
        to: "titanium",
        distance: Math.hypot(0.5, 5),
        aChange: -0.5,
        bChange: -5,
      },
    });
  });

  test("are alike under the limit, from both sides, and one is none", () => {
    const pair = (b: number) => [
      { white: "one", a: 0, b: 0, uncertainty: SURE },
      { white: "other", a: 0, b, uncertainty: SURE },
    ];
    expect(whitesRuling(50, pair(1.99)).rule).toBe("alike-in-whites");
    expect(whitesRuling(50, pair(2)).rule).toBe("differs-by-white");
    expect(whitesRuling(50, pair(2).slice(1))).toEqual({
      rule: "one-white-only",
      values: { L: 50 },
    });
  });
});

describe("hue words", () => {
  test("sectors rise from 0, so that every angle has a word", () => {
    const starts = HUE_SECTORS.map(({ fromDegrees }) => fromDegrees);
    expect(starts).toEqual([...starts].sort((a, b) => a - b));
    expect(starts[0]).toBe(0);
  });

  test.each([
    [0, "red"],
    [39.9, "red"],
    [40, "brown"],
    [79.9, "brown"],
    [80, "yellow"],
    [110, "olive"],
    [140, "green"],
    [190, "blue-green"],
    [234.9, "blue-green"],
    [235, "blue"],
    [289.9, "blue"],
    [290, "violet"],
    [325, "purple"],
    [344.9, "purple"],
    [345, "red"],
    [359.9, "red"],
  ])("%s degrees: %s", (angle, word) => {
    expect(hueWord(angle)).toBe(word);
  });

  /** NBS SP 440: what its blocks are called in which a strong or a dull colour of that hue lies. */
  test.each([
    [{ L: 73, C: 75, h: 73 }, "orange", /orange/],
    [{ L: 60, C: 60, h: 60 }, "orange", /orange/],
    [{ L: 57, C: 45, h: 50 }, "orange", /orange/],
    [{ L: 40, C: 60, h: 60 }, "brown", /brown/],
    [{ L: 50, C: 35, h: 70 }, "brown", /brown/],
    [{ L: 57, C: 25, h: 60 }, "brown", /brown/],
    [{ L: 50, C: 60, h: 120 }, "yellow-green", /yellow green/],
    [{ L: 70, C: 45, h: 115 }, "yellow-green", /yellow green/],
    [{ L: 40, C: 25, h: 112 }, "olive", /olive/],
    [{ L: 50, C: 15, h: 111 }, "olive", /olive/],
  ] as const)("a strong and light colour is not brown or olive: %o is %s", (colour, word, name) => {
    expect(colourWord(colour)).toBe(word);
    const { L, C, h } = colour;
    const angle = (h * Math.PI) / 180;
    const munsell = munsellOfLab(
      { L, a: C * Math.cos(angle), b: C * Math.sin(angle) },
      { L: 0, a: 0, b: 0 },
    );
    if (isStatement(munsell)) throw new Error(munsell.rule);
    expect(isccNbsNames(munsell, KNOWN.tables.isccNbsBlocks)[0]?.name).toMatch(name);
  });
  test("of every other hue it is as of a dull one", () => {
    expect(colourWord({ L: 70, C: 80, h: 90 })).toBe("yellow");
    expect(colourWord({ L: 60, C: 60, h: 30 })).toBe("red");
  });

  test.each([-1, 360, NaN])("refuses %s", (angle) => {
    expect(() => hueWord(angle)).toThrow(`The hue angle is ${angle}`);
  });

  test.each([
    [350, 10, 20],
    [10, 350, -20],
    [0, 180, 180],
    [90, 271, -179],
    [40, 40, 0],
  ])("from %s to %s turns %s", (from, to, turn) => {
    expect(hueTurn(from, to)).toBeCloseTo(turn, 12);
  });

  test.each([
    [300, -15, "blue"],
    [300, 15, "red"],
    [60, 10, "yellow"],
    [60, -10, "red"],
    [200, 10, "blue"],
    [200, -10, "green"],
    [90, 5, "green"],
    [90, -5, "red"],
  ])("from %s by %s goes toward %s", (from, turn, toward) => {
    expect(hueToward(from, turn)).toBe(toward);
  });

  // basis: memory, the unique hues about CIELAB's 25, 90, 165 and 245 degrees.
  test.each([
    [25, "red", "yellow", "blue"],
    [90, "yellow", "green", "red"],
    [165, "green", "blue", "yellow"],
    [245, "blue", "red", "green"],
  ] as const)("at %s degrees %s is ahead until the colour is of it", (degrees, hue, next, last) => {
    expect(hueToward(degrees - 21, 5)).toBe(hue);
    expect(hueToward(degrees - 19, 5)).toBe(next);
    expect(hueToward(degrees + 21, -5)).toBe(hue);
    expect(hueToward(degrees + 19, -5)).toBe(last);
  });
});

// Our own limit: a contrast ratio of .85 lets through more than the .98 that hides, and less than a glaze does.
describe("let-downs that show their ground", () => {
  test("say nothing of a white from below a contrast ratio of .85, the least of them counting", () => {
    expect(groundShownRuling("titanium", [0.97, 0.849, 0.9])).toEqual({
      rule: "no-tint-to-judge",
      values: { white: "titanium", contrast: 0.849 },
      source: "kubelka-1948",
    });
    expect(groundShownRuling("titanium", [0.85, 0.9])).toBeUndefined();
    expect(groundShownRuling("titanium", [])).toBeUndefined();
  });
});
