import { describe, expect, test } from "vitest";
import type { ColourFit } from "../../lib/optics/fit/colour-fit.ts";
import { ladderModel, ladderSteps } from "../../lib/optics/tints/ladder.ts";
import { suspects, type LeftOutTint } from "../../lib/optics/fit/outlier-drawdown.ts";
import {
  BLUE,
  fitOf,
  IRON_BLACK,
  LAMP,
  OCHRE,
  QUIET_BENCH,
  READING_NOISE,
  syntheticSet,
  TITANIUM,
  type Bench,
  type SyntheticPigment,
} from "./synthetic-drawdowns.ts";

const BENCH: Bench = { ...QUIET_BENCH, noise: READING_NOISE, seed: 4 };

/** A ladder in titanium, one of its ratios misread by a factor. */
function misread(
  colour: SyntheticPigment,
  massRatios: readonly number[],
  bad: number,
  factor: number,
): ColourFit {
  const set = syntheticSet(colour, [{ slug: "titanium", white: TITANIUM, massRatios }], BENCH);
  const tints = set.tints.map((tint, i) =>
    i === bad ? { ...tint, massRatio: tint.massRatio * factor } : tint,
  );
  const fit = fitOf({ ...set, tints });
  return fit;
}

const flagged = (fit: ColourFit): string[] =>
  fit.drawdowns.flatMap(({ drawdown, suspect }) =>
    suspect === undefined ? [] : [`${drawdown} ${suspect.rule}`],
  );
/** Each with let-downs over the middle of its ladder: near the masstone of a black three times as much is hardly seen. */
const COLOURS: [string, SyntheticPigment, readonly number[]][] = [
  ["lamp black", LAMP, [0.05, 0.0125, 0.004]],
  ["iron black", IRON_BLACK, [0.2, 0.05, 0.01]],
  ["ochre", OCHRE, [0.2, 0.05, 0.01]],
  ["blue", BLUE, [0.2, 0.05, 0.01]],
];

describe("a bad drawdown among synthetic ones", () => {
  test.each(COLOURS)("%s: honest ladders raise no flag", (_, colour, massRatios) => {
    expect(flagged(misread(colour, massRatios, 0, 1))).toEqual([]);
  });

  test.each(COLOURS)(
    "%s: a ratio out by three is found, wherever it stands, and not fitted",
    (_, colour, massRatios) => {
      for (const bad of [0, 1, 2]) {
        const fit = misread(colour, massRatios, bad, 3);
        const name = `titanium 1:${1 / (massRatios[bad] ?? NaN)}`;
        expect(flagged(fit)).toEqual([`${name} suspect-drawdown`]);
        const verdict = fit.drawdowns.find(({ drawdown }) => drawdown === name);
        expect(verdict?.leaveOneOutDeltaE00).toBe(verdict?.residualDeltaE00);
        expect(verdict?.residualDeltaE00).toBeGreaterThan(5);
        for (const { drawdown, residualDeltaE00 } of fit.drawdowns)
          if (drawdown !== name) expect(residualDeltaE00).toBeLessThan(1);
        // It stays on the ladder as measured, flagged.
        const step = ladderSteps(ladderModel(fit, "titanium")).find(
          (one) => one.standing === "measured" && one.tint === name,
        );
        expect(step).toMatchObject({ standing: "measured", suspect: { rule: "suspect-drawdown" } });
      }
    },
  );

  test("of two that contradict each other neither is named", () => {
    expect(flagged(misread(OCHRE, [0.2, 0.05], 1, 4))).toEqual([
      "titanium 1:5 drawdowns-disagree",
      "titanium 1:20 drawdowns-disagree",
    ]);
  });
});

describe("suspects", () => {
  const tint = (
    name: string,
    leaveOneOut: number,
    others: number | undefined,
    more: Partial<LeftOutTint> = {},
  ): LeftOutTint => ({
    tint: name,
    white: "w",
    leaveOneOut,
    others,
    nearest: 0,
    isBetween: false,
    ...more,
  });
  const rest = [tint("b", 2.9, 4), tint("c", 2.9, 4)];

  /** At an end from 5 on: 90 in 100 honest let-downs of the outs are predicted within 4.6 (oil-paint-outs, measured here). */
  test("limits hold from both sides: at an end, between, far from the others", () => {
    expect(suspects([tint("a", 5, 0.2), ...rest]).get("a")?.rule).toBe("suspect-drawdown");
    expect(suspects([tint("a", 4.99, 0.2), ...rest]).size).toBe(0);
    expect(suspects([tint("a", 3, 0.2, { isBetween: true }), ...rest]).get("a")?.rule).toBe(
      "suspect-drawdown",
    );
    expect(suspects([tint("a", 2.99, 0.2, { isBetween: true }), ...rest]).size).toBe(0);
    // However far: 90 % is never over 1.645 sqrt(0.8^2 + 2.45^2) = 4.24, under the least limit at an end.
    expect(suspects([tint("a", 5, 0.2, { nearest: 20 }), ...rest]).size).toBe(1);
    expect(suspects([tint("a", 4.99, 0.2, { nearest: 20 }), ...rest]).size).toBe(0);
  });

  test("a ladder that fits badly all over names nobody", () => {
    expect(suspects([tint("a", 8, 2.7), tint("b", 7, 2.7), tint("c", 7, 2.7)]).size).toBe(0);
    expect(suspects([tint("a", 8.2, 2.7), tint("b", 7, 2.7), tint("c", 7, 2.7)]).size).toBe(1);
  });

  test("carries the figures it was decided by", () => {
    expect(suspects([tint("a", 9, 0.4), ...rest]).get("a")).toEqual({
      rule: "suspect-drawdown",
      source: "oil-paint-outs",
      values: { tint: "a", white: "w", leaveOneOutDeltaE00: 9, othersDeltaE00: 0.4, limit: 5 },
    });
  });
});
