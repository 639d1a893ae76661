/**
 * Measured mixtures of measured paints (reconstructed-oil-paints): none may be told to be beyond
 * what its paints give; and a paint told as a mixture of two that it is not made of mostly is.
 */
import { describe, expect, test } from "vitest";
import { deltaE00 } from "../../lib/colorimetry/difference.ts";
import { spectrumLab } from "../../lib/colorimetry/spectrum-lab.ts";
import { usualUncertainty } from "../../lib/optics/fit/prediction-uncertainty.ts";
import { nearestBetween } from "../../lib/optics/mixtures/reach-of-masstones.ts";
import { nearestMixed } from "../../lib/optics/mixtures/reach-of-let-downs.ts";
import { ladderModel } from "../../lib/optics/tints/ladder.ts";
import { notRefused } from "../../lib/quantities/statement.ts";
import { NINETY_PERCENT } from "../../lib/quantities/coverage.ts";
import { MEASURED_PAINTS, measuredPaint, type MeasuredPaint } from "./measured-paints.ts";
import { blackMixtureErrors, fittedWithout, LADDERS, WHITE } from "./prediction-errors.ts";

const paints = [...MEASURED_PAINTS.values()];
/** Each paint alone; of bone black the darkest, since it has no masstone of its own. */
const ALONE = new Map<string, MeasuredPaint>([
  ...paints
    .filter(({ parts }) => parts.size === 1)
    .flatMap((paint) => [...paint.parts.keys()].map((name) => [name, paint] as const)),
  ["bone black", measuredPaint("07F")],
]);
const masstone = ({ overWhite }: MeasuredPaint) => overWhite.spectrum;
/** As readings are doubted: the 90 % of a mixture far from any drawdown. */
const WIDTH = NINETY_PERCENT * usualUncertainty(100, { isMixture: true });
const LEAST = NINETY_PERCENT * usualUncertainty(100, { isMixture: true, hasFilms: true });

function apart(paint: MeasuredPaint, of: readonly MeasuredPaint[]): number {
  const lab = spectrumLab(masstone(paint));
  return deltaE00(nearestBetween(of.map(masstone), lab), lab);
}

describe("mixtures and what their paints give", () => {
  const mixtures = paints.flatMap((paint) => {
    const of = [...paint.parts.keys()].flatMap((name) => ALONE.get(name) ?? []);
    return paint.parts.size > 1 && of.length === paint.parts.size && paint.id !== "07F"
      ? [{ paint, of }]
      : [];
  });
  test("there are fifty of them, and each lies within a third of the width", () => {
    expect(mixtures.length).toBe(50);
    for (const { paint, of } of mixtures)
      expect(apart(paint, of), paint.id).toBeLessThan(WIDTH / 3);
  });

  test("of paints told as mixtures of two others a third and more are beyond them", () => {
    const alone = [...ALONE.values()];
    const told = alone.flatMap((paint, i) => {
      const [one, other] = [alone[(i + 1) % alone.length], alone[(i + 5) % alone.length]];
      return one === undefined || other === undefined ? [] : [apart(paint, [one, other])];
    });
    expect(told.filter((away) => away > WIDTH).length).toBeGreaterThan(told.length / 3);
  });

  test.each(["with films", "without films"] as const)(
    "%s, a let-down in parts that nobody wrote down is not missed by twice its 90 percent",
    (path) => {
      const left = LADDERS.flatMap((ids) => ids.slice(1).map((id) => ({ ids, id })));
      expect(left.length).toBe(32);
      for (const { ids, id } of left) {
        const lab = spectrumLab(masstone(measuredPaint(id)));
        const ladder = ladderModel(fittedWithout(ids, id, path), WHITE);
        const found = notRefused(nearestMixed([ladder], lab, true));
        const p90 = Math.max(found.uncertainty.p90, LEAST);
        expect(deltaE00(found.lab, lab), id).toBeLessThan(2 * p90);
      }
    },
  );

  test.each(["with films", "without films"] as const)(
    "%s, in the parts that were weighed none is missed by twice its 90 percent",
    (path) => {
      const errors = blackMixtureErrors(path);
      expect(errors.length).toBe(9);
      for (const { id, deltaE00: miss, uncertainty } of errors)
        expect(miss, id).toBeLessThan(2 * uncertainty.p90);
    },
  );
});
