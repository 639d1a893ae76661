/** How far figures worked out of predictions lie from measured oil paints: each let-down left out in turn. */
import { spectrumLab } from "../../lib/colorimetry/spectrum-lab.ts";
import type { Lab } from "../../lib/colorimetry/viewing.ts";
import { axisUncertainty } from "../../lib/optics/fit/prediction-uncertainty.ts";
import { predictedAtLightness } from "../../lib/optics/tints/equal-lightness.ts";
import { ladderModel, type LadderModel } from "../../lib/optics/tints/ladder.ts";
import { massRatioUncertainty } from "../../lib/optics/tints/mass-ratio-uncertainty.ts";
import { internalOf, keptRatio } from "../../lib/optics/tints/tint-reading.ts";
import { strengthAtRatios } from "../../lib/optics/tints/tinting-strength.ts";
import { at, certain } from "../../lib/quantities/at.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import { measuredPaint } from "./measured-paints.ts";
import {
  fittedWithout,
  LADDERS,
  NOT_HIDING,
  setOf,
  WHITE,
  type Path,
  type PredictionError,
} from "./prediction-errors.ts";

/** A printed figure beside what was read or weighed, with its printed ±. */
export interface FigureError {
  readonly id: string;
  readonly printed: number;
  readonly truth: number;
  readonly uncertainty: number;
}

/** Share [1] of figures that lie within so many times their ±. */
export function inside(errors: readonly FigureError[], times: number): number {
  if (errors.length === 0) throw new RangeError("There are no figures to hold against anything");
  const within = errors.filter(
    ({ printed, truth, uncertainty }) => Math.abs(printed - truth) <= times * uncertainty,
  );
  return within.length / errors.length;
}

/** L*, a* and b* of predictions, each with the half width that is printed of it. */
export function axisErrors(errors: readonly PredictionError[]): FigureError[] {
  return errors.flatMap(({ id, read, predicted, uncertainty }) => {
    const half = axisUncertainty(uncertainty.p68, predicted);
    return (["L", "a", "b"] as const).map((axis) => ({
      id: `${id} ${axis}*`,
      printed: predicted[axis],
      truth: read[axis],
      uncertainty: half[axis],
    }));
  });
}

interface LeftOut {
  readonly id: string;
  readonly colour: string;
  /** Without that let-down. */
  readonly ladder: LadderModel;
  readonly massRatio: number;
  readonly read: Lab;
  readonly values: readonly number[];
}

function leftOut(path: Path): LeftOut[] {
  return LADDERS.flatMap((ids) =>
    setOf(ids, path).tints.map(({ id, massRatio }): LeftOut => {
      const { spectrum } = measuredPaint(id).overWhite;
      return {
        id,
        colour: ids[0],
        ladder: ladderModel(fittedWithout(ids, id, path), WHITE),
        massRatio,
        read: spectrumLab(spectrum),
        values: spectrum.values,
      };
    }),
  );
}

/**
 * a*, b* and the mass ratio that a ladder tells at the L* of a let-down which it never saw, against that
 * let-down as read and weighed. A ladder that does not reach that far tells nothing.
 */
export function equalLightnessErrors(
  path: Path,
): Record<"a" | "b" | "massRatio", readonly FigureError[]> {
  const found = leftOut(path).flatMap(({ id, ladder, massRatio, read }) => {
    const told = predictedAtLightness(ladder, read.L);
    if (isStatement(told)) return [];
    const half = axisUncertainty(told.uncertainty.p68, told);
    return [
      {
        a: { id, printed: told.a, truth: read.a, uncertainty: half.a },
        b: { id, printed: told.b, truth: read.b, uncertainty: half.b },
        massRatio: {
          id,
          printed: told.massRatio,
          truth: massRatio,
          uncertainty: told.massRatio * massRatioUncertainty(ladder, told.massRatio),
        },
      },
    ];
  });
  return {
    a: found.map(({ a }) => a),
    b: found.map(({ b }) => b),
    massRatio: found.map((one) => one.massRatio),
  };
}

/**
 * Strength of one colour's let-down beside another's, from ladders that saw neither of the two, against K/S of the
 * readings themselves: of paints that hide and have their greatest absorption at one place.
 */
export function strengthErrors(path: Path): FigureError[] {
  const hiding = leftOut(path).filter(({ id }) => !NOT_HIDING.test(id));
  return hiding.flatMap((sample) =>
    hiding
      .filter(({ colour }) => sample.colour < colour)
      .flatMap((reference): FigureError[] => {
        const told = strengthAtRatios(
          sample.ladder,
          reference.ladder,
          sample.massRatio,
          reference.massRatio,
        );
        if (isStatement(told) || told.at === "y-bar") return [];
        const i = wavelengthIndex(reference.ladder, told.at);
        const relative = Math.hypot(
          massRatioUncertainty(sample.ladder, sample.massRatio),
          massRatioUncertainty(reference.ladder, reference.massRatio),
        );
        return [
          {
            id: `${sample.id} beside ${reference.id}`,
            printed: told.strength,
            truth: addedRatio(sample, i) / addedRatio(reference, i),
            uncertainty: told.strength * relative,
          },
        ];
      }),
  );
}

/** K/S that the colour adds to its white in a reading. */
function addedRatio({ ladder, values }: LeftOut, i: number): number {
  return keptRatio(internalOf(ladder.model.form, at(values, i))) - at(ladder.white.whiteRatio, i);
}

function wavelengthIndex({ fit: { grid } }: LadderModel, nm: number): number {
  return certain(Math.round((nm - grid.startNm) / grid.stepNm));
}
