/**
 * K and S of a colour from all its drawdowns at once, by weighted least squares
 * at each wavelength.
 *
 *     theta = (Kw + r K)/(Sw + r S), Sw = 1;  Rm from theta by Kubelka-Munk and the surface
 *     minimise Sum ((Rm read - Rm)/sigma)^2 over the masstone and every let-down
 *
 * Refined on the reflectance as read: on K/S the palest drawdown, the white
 * itself, comes out far off. Unknowns are ln R-infinity, which all whites share,
 * and for each white ln E, E = (K + S)/Sw: so K, S > 0 without a constraint, and a
 * black's unknowable S is a flat direction instead of a negative number.
 *
 * @source walowit-1987, centore-2013, duncan-1940
 */
import {
  addObservation,
  addSharedObservation,
  arrowSystem,
  clearSystem,
  ownStep,
  sharedCurvature,
  sharedStep,
  type ArrowSystem,
} from "./normal-equations.ts";
import { at } from "../../quantities/at.ts";
import { closedForm } from "./initial-estimate.ts";
import type { FitProblem } from "./fit-problem.ts";
import { DRAWDOWN_NOISE } from "./reading-noise.ts";
import { scatteringPrior, type ScatteringPrior } from "./scattering-prior.ts";
import {
  absorptionSlope,
  DARKEST,
  masstoneReading,
  PALEST,
  scatteringSlope,
  shares,
  tintReading,
  type ReadingSlopes,
} from "../tints/tint-reading.ts";

/** Of one white: E = (K + S)/Sw per unit of mass ratio, and relative variances of K and S; shape (count) each. */
export interface WhiteSolution {
  readonly extinction: Float64Array;
  readonly varianceK: Float64Array;
  readonly varianceS: Float64Array;
}

export interface FitSolution {
  /** Internal R-infinity of the colour [1], shape (count). */
  readonly masstone: Float64Array;
  readonly whites: readonly WhiteSolution[];
  /** Mean square of residual over sigma, for each degree of freedom; 1 when there is none to spare. */
  readonly chiSquare: number;
}

const MAX_STEPS = 12;
const STEP_LIMIT = 1;
/** Steps are quadratic: after one this small the next would be its square. */
const SETTLED = 1e-3;
const LOG_DARKEST = Math.log(DARKEST);
const LOG_PALEST = Math.log(PALEST);

/** Filled again for every drawdown and wavelength: a fit takes tens of thousands. */
const slopes: ReadingSlopes = { reading: NaN, byLogE: NaN, byLogRho: NaN };

/**
 * The least-squares solution of drawdowns that usableDrawdowns let pass.
 * @source walowit-1987, centore-2013
 */
export function twoConstantFit(problem: FitProblem): FitSolution {
  const { grid, whiteRatios, tints } = problem;
  const start = closedForm(problem);
  const priors = start.scattering.map(({ logScattering, weights }, j) =>
    scatteringPrior(grid, logScattering, weights, problem.films?.[j], problem.priorWidth),
  );
  const levels = priors.map(({ logScattering, levelSigma }) => ({
    logScattering,
    sigma: levelSigma,
  }));
  const masstone = new Float64Array(grid.count);
  const whites = whiteRatios.map((): WhiteSolution => ({
    extinction: new Float64Array(grid.count),
    varianceK: new Float64Array(grid.count),
    varianceS: new Float64Array(grid.count),
  }));
  const system = arrowSystem(whites.length);
  const logE = new Float64Array(whites.length);
  let squares = 0;
  for (let i = 0; i < grid.count; i++) {
    const rho = at(start.masstone, i);
    const logShare = Math.log(shares(rho).s);
    for (let j = 0; j < logE.length; j++) {
      const own = start.scattering[j];
      logE[j] =
        at((own !== undefined && at(own.weights, i) > 0 ? own : at(priors, j)).logScattering, i) -
        logShare;
    }
    squares += refineAt(i, problem, priors, system, Math.log(rho), logE, masstone);
    fillSystem(i, problem, levels, system, at(masstone, i), logE);
    for (let j = 0; j < logE.length; j++) {
      const white = whites[j];
      if (white === undefined) continue;
      white.extinction[i] = Math.exp(at(logE, j));
      fillVariances(white, i, system, j, at(masstone, i));
    }
  }
  const spare = (tints.length - whites.length) * grid.count;
  return { masstone, whites, chiSquare: spare > 0 ? squares / spare : 1 };
}

/** Gauss-Newton at wavelength i, on `logE` in place and into `masstone`; returns the sum of squares of the drawdowns. */
function refineAt(
  i: number,
  problem: FitProblem,
  priors: readonly Pick<ScatteringPrior, "logScattering" | "sigma">[],
  system: ArrowSystem,
  logRhoStart: number,
  logE: Float64Array,
  masstone: Float64Array,
): number {
  let logRho = logRhoStart;
  let squares = 0;
  for (let step = 0; step < MAX_STEPS; step++) {
    squares = fillSystem(i, problem, priors, system, Math.exp(logRho), logE);
    const shared = limited(sharedStep(system));
    logRho = Math.min(Math.max(logRho + shared, LOG_DARKEST), LOG_PALEST);
    let largest = Math.abs(shared);
    for (let j = 0; j < logE.length; j++) {
      const own = limited(ownStep(system, j, shared));
      logE[j] = at(logE, j) + own;
      largest = Math.max(largest, Math.abs(own));
    }
    if (largest < SETTLED) break;
  }
  masstone[i] = Math.exp(logRho);
  return squares;
}

/** Normal equations at the present unknowns; returns the sum of squares of the drawdowns, prior left out. */
function fillSystem(
  i: number,
  { masstone, whiteRatios, tints }: FitProblem,
  priors: readonly Pick<ScatteringPrior, "logScattering" | "sigma">[],
  system: ArrowSystem,
  rho: number,
  logE: Float64Array,
): number {
  clearSystem(system);
  const shared = shares(rho);
  const sigma = at(masstone.sigma, i);
  masstoneReading(slopes, masstone.form, rho);
  const residual = (at(masstone.measured, i) - slopes.reading) / sigma;
  addSharedObservation(system, residual, slopes.byLogRho / sigma);
  let squares = residual * residual;
  for (let t = 0; t < tints.length; t++) {
    const tint = tints[t];
    if (tint === undefined) continue;
    const { white, form } = tint;
    tintReading(
      slopes,
      form,
      tint.massRatio * Math.exp(at(logE, white)),
      rho,
      shared,
      at(at(whiteRatios, white), i),
    );
    // A weighing error moves the reading as a change of E does.
    const read = at(tint.sigma, i);
    const weighed = DRAWDOWN_NOISE.massRatio * slopes.byLogE;
    const scale = 1 / Math.sqrt(read * read + weighed * weighed);
    const r = (at(tint.measured, i) - slopes.reading) * scale;
    addObservation(system, white, r, slopes.byLogRho * scale, slopes.byLogE * scale);
    squares += r * r;
  }
  const logShare = Math.log(shared.s);
  const byRho = scatteringSlope(rho);
  for (let j = 0; j < logE.length; j++) {
    const prior = at(priors, j);
    const sigma = at(prior.sigma, i);
    const r = (at(prior.logScattering, i) - at(logE, j) - logShare) / sigma;
    addObservation(system, j, r, byRho / sigma, 1 / sigma);
  }
  return squares;
}

/** Relative variances of K and S of a white at wavelength i, at the solution that the system was filled for. */
function fillVariances(
  { varianceK, varianceS }: WhiteSolution,
  i: number,
  system: ArrowSystem,
  group: number,
  rho: number,
): void {
  const own = 1 / at(system.own, group);
  const pull = at(system.coupling, group) * own;
  const shared = 1 / sharedCurvature(system);
  const [byK, byS] = [pull - absorptionSlope(rho), pull - scatteringSlope(rho)];
  varianceK[i] = own + shared * byK * byK;
  varianceS[i] = own + shared * byS * byS;
}

function limited(step: number): number {
  return Math.min(Math.max(step, -STEP_LIMIT), STEP_LIMIT);
}
