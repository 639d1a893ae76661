/**
 * A colour in a white that it was never let down in, by what other colours do in that white and
 * in one that it shares with them: K and S are the colour's own, and only the white's S changes.
 *
 *     (K + S)/S_new = (K + S)/S_old x q,  q = S_old/S_new = E_new/E_old of a colour let down in both
 *
 * q is told by each such colour at each wavelength as well as it tells E, and is smooth over the
 * spectrum, as a white's scattering is.
 *
 * @source duncan-1940
 */
import { deltaE00 } from "../../colorimetry/difference.ts";
import type { Lab } from "../../colorimetry/viewing.ts";
import { domainError } from "../../diagnostics/diagnostic.ts";
import { sameGrid, type Spectrum, type WavelengthGrid } from "../../quantities/spectrum.ts";
import type { StatementOf } from "../../quantities/statement.ts";
import type { PredictingFit, FittedWhite } from "../fit/colour-fit.ts";
import { labOf } from "../fit/fitted-drawdown-set.ts";
import {
  predictionUncertainty,
  type Doubts,
  type PredictionUncertainty,
} from "../fit/prediction-uncertainty.ts";
import { DRAWDOWN_NOISE } from "../fit/reading-noise.ts";
import { smoothed } from "../fit/scattering-prior.ts";
import type { RatioKind } from "../fit/drawdown.ts";
import type { Geometry } from "../fit/measurement.ts";
import { NINETY_PERCENT } from "../../quantities/coverage.ts";
import { remembered } from "../../quantities/remembered.ts";
import { LADDER_BEYOND, ladderModel, type LadderModel } from "./ladder.ts";
import { tintModel, tintReadings, type TintModel } from "./tint-model.ts";
import { at } from "../../quantities/at.ts";
import { median } from "../../quantities/median.ts";

/** A colour in a white that it was not let down in. */
export interface ExpectedLadder {
  readonly grid: WavelengthGrid;
  /** The white that it is expected in, and the one that it was let down in. */
  readonly white: string;
  readonly from: LadderModel;
  /** Whose let-downs in both whites it goes by, by their place among those handed in. */
  readonly through: readonly number[];
  readonly model: TintModel;
  /** The white as read, D65/10. */
  readonly whiteLab: Lab;
  /** ln q and its standard uncertainty, in the middle of the spectrum. */
  readonly logChange: number;
  readonly changeUncertainty: number;
  readonly doubts: Doubts;
}

/** A let-down as it is expected. */
export interface ExpectedTint {
  readonly massRatio: number;
  readonly spectrum: Spectrum;
  /** D65/10. */
  readonly lab: Lab;
  readonly uncertainty: PredictionUncertainty;
  /** Delta-E00 to the nearer of white and masstone, and what a standard error of q moves. */
  readonly distance: number;
  readonly own: number;
}

/** Why a ladder is there though none was painted out. */
export type ExpectedStatement = StatementOf<
  "expected-in-white",
  { white: string; from: string; through: readonly string[]; deltaE00: number }
>;

/** Two fits of one colour, in the white that is shared and in the one that is asked for. */
interface Bridge {
  readonly index: number;
  readonly old: FittedWhite;
  readonly asked: FittedWhite;
}

/** What the colours of a workshop tell of one white beside another. */
interface WhiteChange {
  readonly bridges: readonly Bridge[];
  /** ln q, shape (count). */
  readonly logChange: Float64Array;
  readonly uncertainty: number;
}

/** So many colours tell a white as well as all: those whose K + S is known best. Our own choice. */
const BRIDGES_MOST = 24;

/**
 * The ladder that a colour is expected to have in a white, from the white of its own that most others share with it.
 *
 * @param others fits of the workshop's colours: one list for all of them, of which each change of white is worked out once.
 * @returns undefined where no other was let down in both whites, weighed and read alike.
 */
export function expectedLadder(
  fit: PredictingFit,
  white: string,
  others: readonly PredictingFit[],
): ExpectedLadder | undefined {
  if (fit.whites.some(({ slug }) => slug === white)) return undefined;
  const ways = fit.whites.flatMap((own) => {
    const change = changeTo(white, own, fit, others);
    return change === undefined ? [] : [{ own, ...change }];
  });
  const [best] = ways.toSorted((one, other) => other.bridges.length - one.bridges.length);
  const first = best?.bridges[0];
  if (best === undefined || first === undefined) return undefined;
  const { bridges, logChange, uncertainty } = best;
  const { grid } = fit;
  const from = ladderModel(fit, best.own.slug);
  const plain = {
    form: from.model.form,
    masstone: from.model.masstone,
    whiteRatio: first.asked.whiteRatio,
    extinction: Array.from(from.model.extinction, (E, i) => E * Math.exp(at(logChange, i))),
  };
  const middle = median(logChange);
  const ends = tintModel(plain, [
    { massRatio: 0, measured: first.asked.measured },
    { massRatio: Infinity, measured: fit.masstone.measured },
  ]);
  // Its strength drifts along the ladder as it does in its own white: at ratios as strong.
  const strengths = from.model.strengths.map(({ logRatio, change }) => ({
    logRatio: logRatio - middle,
    change,
  }));
  return {
    grid,
    white,
    from,
    through: bridges.map(({ index }) => index),
    model: { ...ends, strengths },
    whiteLab: first.asked.lab,
    logChange: middle,
    changeUncertainty: uncertainty,
    doubts: {
      ...from.doubts,
      hasFilms: [best.own, ...bridges.map(({ asked }) => asked)].every(({ hasFilms }) => hasFilms),
      isOtherWhite: true,
    },
  };
}

function changeTo(
  white: string,
  { slug, ratioKind }: FittedWhite,
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
    return bridges.length === 0 ? undefined : whiteChange(grid, bridges);
  },
);

/** ln q, weighed over the best known colours and over wavelengths, and the standard uncertainty of its level. */
function whiteChange(grid: WavelengthGrid, all: readonly Bridge[]): WhiteChange {
  const told = all
    .map((bridge) => ({ bridge, ...toldBy(bridge, grid) }))
    .toSorted((one, other) => one.variance - other.variance)
    .slice(0, BRIDGES_MOST)
    .toSorted((one, other) => one.bridge.index - other.bridge.index);
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
  return {
    bridges: told.map(({ bridge }) => bridge),
    logChange,
    uncertainty: Math.sqrt(Math.max(1 / weight, spread / Math.max(told.length - 1, 1)) + weighing),
  };
}

/** ln q by one colour at each wavelength with its weight, and its level with its variance. */
function toldBy({ old, asked }: Bridge, { count }: WavelengthGrid) {
  const [changes, weights] = [new Float64Array(count), new Float64Array(count)];
  let [sum, total] = [0, 0];
  for (let i = 0; i < count; i++) {
    const [before, after] = [logExtinction(old, i), logExtinction(asked, i)];
    const weight = 1 / (before.variance + after.variance);
    const change = after.value - before.value;
    changes[i] = change;
    weights[i] = weight;
    sum += weight * change;
    total += weight;
  }
  return { changes, weights, level: sum / total, variance: count / total };
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

/**
 * A let-down as it is expected.
 * @param massRatio colour to white by mass [1], of the kind that was weighed in the colour's own white, > 0.
 * @throws RangeError when the ratio is not positive, NaN or infinite.
 */
export function expectedTint(ladder: ExpectedLadder, massRatio: number): ExpectedTint {
  if (!(massRatio > 0 && massRatio < Infinity))
    throw domainError("mass ratio", massRatio, "0 < ratio < Infinity");
  const { grid, model, from, whiteLab, doubts, changeUncertainty } = ladder;
  const values = tintReadings(model, massRatio);
  const lab = labOf(grid, values);
  const distance = Math.min(...[whiteLab, from.fit.masstone.lab].map((end) => deltaE00(end, lab)));
  const { p68, p90 } = predictionUncertainty(distance, doubts);
  // An error of q is one of strength, and so of the ratio.
  const moved = labOf(grid, tintReadings(model, massRatio * Math.exp(changeUncertainty)));
  const own = deltaE00(lab, moved);
  return {
    massRatio,
    spectrum: { grid, values },
    lab,
    uncertainty: { p68: Math.hypot(p68, own), p90: Math.hypot(p90, NINETY_PERCENT * own) },
    distance,
    own,
  };
}

/** Palest ratio that is told: as strong as the palest in its own white, and a little beyond. */
export function palestExpected({ from, logChange }: ExpectedLadder): number {
  return (from.used[0]?.massRatio ?? Infinity) / LADDER_BEYOND / Math.exp(logChange);
}

/** That nobody painted these let-downs out: whose they go by, and what about nine of ten lie within. */
export function expectedRuling(
  white: string,
  from: string,
  through: readonly string[],
  tints: readonly ExpectedTint[],
): ExpectedStatement {
  const deltaE00 = Math.max(...tints.map(({ uncertainty }) => uncertainty.p90));
  return {
    rule: "expected-in-white",
    values: { white, from, through, deltaE00 },
    standing: "estimated",
    source: "duncan-1940",
  };
}
