/**
 * What a workshop's colours tell of one white beside another: of a colour let down in both,
 *
 *     q = S_old/S_new = E_new/E_old,  E = K + S in units of the white's S
 *
 * told by each such colour at each wavelength as well as it tells E, and smooth over the
 * spectrum, as a white's scattering is.
 *
 * @source duncan-1940
 */
import type { Lab } from "../../colorimetry/viewing.ts";
import { at } from "../../quantities/at.ts";
import { remembered } from "../../quantities/remembered.ts";
import { sameGrid, type WavelengthGrid } from "../../quantities/spectrum.ts";
import type { PredictingFit, FittedWhite } from "../fit/colour-fit.ts";
import type { RatioKind } from "../fit/drawdown.ts";
import type { Geometry } from "../fit/measurement.ts";
import { DRAWDOWN_NOISE } from "../fit/reading-noise.ts";
import { smoothed } from "../fit/scattering-prior.ts";

/** One white beside another. Plain data: all that a colour which was let down in the other asks of those let down in both. */
export interface WhiteChange {
  /** The white that is asked for, and the one that it is held beside. */
  readonly white: string;
  readonly own: string;
  /** Whose let-downs in both whites tell it, by their place among those handed in. */
  readonly through: readonly number[];
  /** The white asked for, as read [1], its K/S [1], and as read in D65/10. */
  readonly measured: readonly number[];
  readonly whiteRatio: readonly number[];
  readonly lab: Lab;
  /** Whether films over black and white of it and of all these colours were read. */
  readonly hasFilms: boolean;
  /** ln q, shape (count), and the standard uncertainty of its level: to {@link LOG_STEP} and {@link UNCERTAINTY_STEP}. */
  readonly logChange: readonly number[];
  readonly uncertainty: number;
}

/**
 * To what a change is told. Let-downs know ln q to some .02: finer, every movement of one of the fits
 * behind it, were it in the sixth digit, would be another sheet of each colour that goes by it. Our own choice.
 */
const LOG_STEP = 1e-3;
const UNCERTAINTY_STEP = 1e-4;

/** Two fits of one colour, in the white that is shared and in the one that is asked for. */
interface Bridge {
  readonly index: number;
  readonly old: FittedWhite;
  readonly asked: FittedWhite;
}

/** So many colours tell a white as well as all: those whose K + S is known best. Our own choice. */
const BRIDGES_MOST = 24;

/**
 * A white beside that of a colour's own whites which most others share with it.
 *
 * @param others fits of the workshop's colours: one list for all of them, of which each change of white is worked out once.
 * @returns undefined of a white that it was let down in itself, and where no other was let down in both, weighed and read alike.
 */
export function changeOfWhite(
  fit: PredictingFit,
  white: string,
  others: readonly PredictingFit[],
): WhiteChange | undefined {
  if (fit.whites.some(({ slug }) => slug === white)) return undefined;
  const changes = fit.whites.flatMap((own) => changeFrom(own, white, fit, others) ?? []);
  return changes.toSorted((one, other) => other.through.length - one.through.length)[0];
}

function changeFrom(
  { slug, ratioKind }: FittedWhite,
  white: string,
  { geometry, grid, surface }: PredictingFit,
  others: readonly PredictingFit[],
): WhiteChange | undefined {
  const { startNm, stepNm, count } = grid;
  const { k1, k2 } = surface.surface;
  return changeOf(others, white, slug, ratioKind, geometry, k1, k2, startNm, stepNm, count);
}

/** By the whites, what was weighed, and how a colour has to be read to be among them. */
const changeOf = remembered(
  (
    others: readonly PredictingFit[],
    white: string,
    own: string,
    ratioKind: RatioKind,
    geometry: Geometry,
    k1: number,
    k2: number,
    startNm: number,
    stepNm: number,
    count: number,
  ): WhiteChange | undefined => {
    const grid = { startNm, stepNm, count };
    const bridges = others.flatMap((other, index): Bridge[] => {
      const old = other.whites.find(({ slug }) => slug === own);
      const asked = other.whites.find(({ slug }) => slug === white);
      const its = other.surface.surface;
      return old === undefined ||
        asked === undefined ||
        old.ratioKind !== ratioKind ||
        asked.ratioKind !== ratioKind ||
        other.geometry !== geometry ||
        !sameGrid(other.grid, grid) ||
        k1 !== its.k1 ||
        k2 !== its.k2
        ? []
        : [{ index, old, asked }];
    });
    const [first, ...further] = bestKnown(bridges, grid);
    return first && { white, own, ...toldTogether([first, ...further], grid) };
  },
);

/** A bridge with ln q by it at each wavelength, and the weight of each; its level with its variance. */
interface ToldBridge {
  readonly bridge: Bridge;
  readonly changes: Float64Array;
  readonly weights: Float64Array;
  readonly level: number;
  readonly variance: number;
}

/** Those whose K + S is known best, in the order of the workshop. */
function bestKnown(bridges: readonly Bridge[], grid: WavelengthGrid): ToldBridge[] {
  return bridges
    .map((bridge) => toldBy(bridge, grid))
    .toSorted((one, other) => one.variance - other.variance)
    .slice(0, BRIDGES_MOST)
    .toSorted((one, other) => one.bridge.index - other.bridge.index);
}

/** ln q, weighed over the best known colours and over wavelengths, and the standard uncertainty of its level. */
function toldTogether(
  told: readonly [ToldBridge, ...ToldBridge[]],
  grid: WavelengthGrid,
): Omit<WhiteChange, "white" | "own"> {
  const [values, weights] = [new Float64Array(grid.count), new Float64Array(grid.count)];
  for (const one of told) {
    for (let i = 0; i < grid.count; i++) {
      values[i] = at(values, i) + at(one.weights, i) * at(one.changes, i);
      weights[i] = at(weights, i) + at(one.weights, i);
    }
  }
  const logChange = smoothed(
    grid,
    values.map((value, i) => value / at(weights, i)),
    weights,
  );
  const weight = told.reduce((sum, { variance }) => sum + 1 / variance, 0);
  const mean = told.reduce((sum, { level, variance }) => sum + level / variance, 0) / weight;
  const spread =
    told.reduce((sum, { level, variance }) => sum + (level - mean) ** 2 / variance, 0) / weight;
  const weighing = (2 * DRAWDOWN_NOISE.massRatio ** 2) / told.length;
  const { measured, whiteRatio, lab } = told[0].bridge.asked;
  return {
    through: told.map(({ bridge }) => bridge.index),
    measured,
    whiteRatio,
    lab,
    hasFilms: told.every(({ bridge }) => bridge.asked.hasFilms),
    logChange: Array.from(logChange, (value) => inSteps(value, LOG_STEP)),
    uncertainty: inSteps(
      Math.sqrt(Math.max(1 / weight, spread / Math.max(told.length - 1, 1)) + weighing),
      UNCERTAINTY_STEP,
    ),
  };
}

/** Rounded; a step is one over a whole number. */
function inSteps(value: number, step: number): number {
  return Math.round(value / step) / Math.round(1 / step);
}

function toldBy(bridge: Bridge, { count }: WavelengthGrid): ToldBridge {
  const [changes, weights] = [new Float64Array(count), new Float64Array(count)];
  let [sum, total] = [0, 0];
  for (let i = 0; i < count; i++) {
    const [before, after] = [logExtinction(bridge.old, i), logExtinction(bridge.asked, i)];
    const weight = 1 / (before.variance + after.variance);
    const change = after.value - before.value;
    changes[i] = change;
    weights[i] = weight;
    sum += weight * change;
    total += weight;
  }
  return { bridge, changes, weights, level: sum / total, variance: count / total };
}

/** ln of K + S in units of a white's S, with its variance. */
function logExtinction(
  { K, S, KUncertainty, SUncertainty }: FittedWhite,
  i: number,
): { readonly value: number; readonly variance: number } {
  const [k, s] = [at(K, i), at(S, i)];
  const E = k + s;
  return {
    value: Math.log(E),
    variance:
      ((k / E) * at(KUncertainty, i)) ** 2 +
      ((s / E) * at(SUncertainty, i)) ** 2 +
      LEAST_SIGMA ** 2,
  };
}

/** Relative uncertainty under which no fit knows K + S: so that no one wavelength speaks for all. */
const LEAST_SIGMA = 0.05;
