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
import { drawnDoubts } from "../fit/workshop-experience.ts";
import { LADDER_BEYOND, ladderModel, type LadderModel } from "./ladder.ts";
import { tintModel, tintReadings, type TintModel } from "./tint-model.ts";
import { at } from "../../quantities/at.ts";

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

/**
 * The ladder that a colour is expected to have in a white, from the white of its own that most others share with it.
 *
 * @param others fits of the workshop's other colours, the judged one's own left out.
 * @returns undefined where no other was let down in both whites, weighed and read alike.
 */
export function expectedLadder(
  fit: PredictingFit,
  white: string,
  others: readonly PredictingFit[],
): ExpectedLadder | undefined {
  if (fit.whites.some(({ slug }) => slug === white)) return undefined;
  const ways = fit.whites.map((own) => ({ own, bridges: bridgesTo(white, own, fit, others) }));
  const best = ways.reduce((one, other) =>
    other.bridges.length > one.bridges.length ? other : one,
  );
  const [first] = best.bridges;
  if (first === undefined) return undefined;
  const { grid } = fit;
  const from = ladderModel(fit, best.own.slug);
  const { logChange, uncertainty } = whiteChange(grid, best.bridges);
  const plain = {
    form: from.model.form,
    masstone: from.model.masstone,
    whiteRatio: first.asked.whiteRatio,
    extinction: Array.from(from.model.extinction, (E, i) => E * Math.exp(at(logChange, i))),
  };
  const middle = at(logChange.toSorted(), logChange.length >> 1);
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
    through: best.bridges.map(({ index }) => index),
    model: { ...ends, strengths },
    whiteLab: first.asked.lab,
    logChange: middle,
    changeUncertainty: uncertainty,
    doubts: {
      ...drawnDoubts(fit, best.own),
      hasFilms: [best.own, ...best.bridges.map(({ asked }) => asked)].every(
        ({ hasFilms }) => hasFilms,
      ),
      experience: fit.experience,
      isOtherWhite: true,
    },
  };
}

function bridgesTo(
  white: string,
  own: FittedWhite,
  fit: PredictingFit,
  others: readonly PredictingFit[],
): Bridge[] {
  return others.flatMap((other, index): Bridge[] => {
    const old = other.whites.find(({ slug }) => slug === own.slug);
    const asked = other.whites.find(({ slug }) => slug === white);
    const [one, its] = [fit.surface.surface, other.surface.surface];
    return old === undefined ||
      asked === undefined ||
      old.ratioKind !== own.ratioKind ||
      asked.ratioKind !== own.ratioKind ||
      other.geometry !== fit.geometry ||
      !sameGrid(other.grid, fit.grid) ||
      one.k1 !== its.k1 ||
      one.k2 !== its.k2
      ? []
      : [{ index, old, asked }];
  });
}

/** ln q, shape (count), weighed over colours and wavelengths, and the standard uncertainty of its level. */
function whiteChange(
  grid: WavelengthGrid,
  bridges: readonly Bridge[],
): { readonly logChange: Float64Array; readonly uncertainty: number } {
  const [values, weights] = [new Float64Array(grid.count), new Float64Array(grid.count)];
  const levels = bridges.map(({ old, asked }) => {
    let [sum, total] = [0, 0];
    for (let i = 0; i < grid.count; i++) {
      const [before, after] = [logExtinction(old, i), logExtinction(asked, i)];
      const weight = 1 / (before.variance + after.variance);
      const change = after.value - before.value;
      values[i] = (values[i] ?? 0) + weight * change;
      weights[i] = (weights[i] ?? 0) + weight;
      sum += weight * change;
      total += weight;
    }
    return { level: sum / total, variance: grid.count / total };
  });
  const logChange = smoothed(
    grid,
    values.map((value, i) => value / at(weights, i)),
    weights,
  );
  const weight = levels.reduce((sum, { variance }) => sum + 1 / variance, 0);
  const mean = levels.reduce((sum, { level, variance }) => sum + level / variance, 0) / weight;
  const spread =
    levels.reduce((sum, { level, variance }) => sum + (level - mean) ** 2 / variance, 0) / weight;
  const weighing = (2 * DRAWDOWN_NOISE.massRatio ** 2) / bridges.length;
  return {
    logChange,
    uncertainty: Math.sqrt(
      Math.max(1 / weight, spread / Math.max(levels.length - 1, 1)) + weighing,
    ),
  };
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
    uncertainty: { p68: Math.hypot(p68, own), p90: Math.hypot(p90, 1.645 * own) },
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
