/** The least-squares problem of one colour: every drawdown as the fit sees it. */
import type { WavelengthGrid } from "../../quantities/spectrum.ts";
import type { FilmScattering } from "./film-scattering.ts";
import type { SurfaceForm } from "../surface/surface.ts";

/** One drawdown as the fit sees it. */
export interface FitColumn {
  readonly form: SurfaceForm;
  /** Rm as read [1], shape (count). */
  readonly measured: readonly number[];
  /** Standard uncertainty of each [1], shape (count), > 0. */
  readonly sigma: readonly number[];
}

export interface TintColumn extends FitColumn {
  /** Index of its white, and colour to white by mass [1]. */
  readonly white: number;
  readonly massRatio: number;
  /** What closedForm makes of it with its masstone and white: worked out once where a let-down goes through many fits. */
  readonly contribution?: ClosedContribution;
}

/** ln S by one let-down alone, times its weight, and the weight 1/variance; 0 where it gives none; shape (count) each. */
export interface ClosedContribution {
  readonly weighted: Float64Array;
  readonly weights: Float64Array;
}

/** Constants that were chosen by measured paints, for whoever tries others; left out, those that were chosen. */
export interface FitChoices {
  /** How many times as wide as chosen the prior of S is [1], > 0. */
  readonly priorWidth?: number;
  /** How much of a drift of strength goes on beyond the last let-downs [1], 0-1. */
  readonly carriedShare?: number;
}

export interface FitProblem {
  readonly grid: WavelengthGrid;
  readonly masstone: FitColumn;
  /** K/S of each white [1], shape (whites, count). */
  readonly whiteRatios: readonly Float64Array[];
  /** At least one let-down a white. */
  readonly tints: readonly TintColumn[];
  /** What films tell of S in each white, shape (whites). */
  readonly films?: readonly (FilmScattering | undefined)[];
  readonly priorWidth?: number;
}
