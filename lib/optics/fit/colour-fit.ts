import type { Lab } from "../../colorimetry/viewing.ts";
import type { StatementOf } from "../../quantities/statement.ts";
import type { NotToldFromSurface } from "../surface/measurement-in-geometry.ts";
import type { SurfacesDiffer } from "../unlike-readings.ts";
import type { WavelengthGrid } from "../../quantities/spectrum.ts";
import type { RatioKind } from "./drawdown.ts";
import type { SurfaceChoice } from "../surface/workshop-surface.ts";
import type { Geometry } from "./measurement.ts";
import type { SuspectStatement } from "./outlier-drawdown.ts";
import type { ScatteringStatement } from "./scattering-statement.ts";
import type { NotAboveSurface } from "./surface-trial.ts";
import type { LeftOutStatement } from "./usable-drawdowns.ts";
import type { Experience } from "./workshop-experience.ts";

/** K and S of a colour: what its let-downs and mixtures are predicted by, and how sure that is. Plain data: it can be kept and drawn from. */
export interface PredictingFit {
  readonly kind: "fit";
  readonly grid: WavelengthGrid;
  /** The masstone's: measured and predicted steps are all given in it. */
  readonly geometry: Geometry;
  readonly surface: SurfaceChoice;
  readonly masstone: FittedMasstone;
  readonly whites: readonly FittedWhite[];
  /** Masstone first, then let-downs in the order of the set. */
  readonly drawdowns: readonly PredictedDrawdown[];
  /** How left-out let-downs of all the workshop's colours read alike are missed. */
  readonly experience: Experience;
  /** See FitChoices; left out, as measured paints ask for. */
  readonly carriedShare?: number;
}

/** The same with all that a sheet tells of how it was found. */
export interface ColourFit extends PredictingFit {
  readonly drawdowns: readonly DrawdownVerdict[];
  /** Of a black, S is only "at most". */
  readonly scattering: ScatteringStatement;
  /** Mean square of residual over reading and weighing noise; over 1, the model misses by more than they do. */
  readonly chiSquare: number;
  /** What a reader of the fit should know. */
  readonly remarks: readonly NotToldFromSurface[];
  /** Let-downs that could not be used, with the reason. */
  readonly leftOut: readonly LeftOutStatement[];
}

/** Why nothing is fitted. */
export type FitRefusalStatement =
  | LeftOutStatement
  | NotAboveSurface
  | SurfacesDiffer
  | StatementOf<"geometry-mixed", { geometries: readonly Geometry[] }>;

/** No fit: what the drawdowns can't carry. */
export interface FitRefusal {
  readonly kind: "refused";
  readonly reasons: readonly FitRefusalStatement[];
}

export interface FittedMasstone {
  /** As read [1], shape (count). */
  readonly measured: readonly number[];
  readonly lab: Lab;
  /** Fitted internal R-infinity [1], shape (count). */
  readonly internal: readonly number[];
  /** Contrast ratio [1] of the film that was read as masstone, where it does not hide: R-infinity is then its film's. */
  readonly filmContrast?: number;
}

/**
 * A colour in one white. K and S are in units of the white's own S, per unit of
 * mass ratio of the kind named; shape (count) each.
 */
export interface FittedWhite {
  readonly slug: string;
  readonly ratioKind: RatioKind;
  /** Whether films over black and white of the colour and of this white were handed to the fit. */
  readonly hasFilms: boolean;
  /** The white as read [1], and its K/S [1]. */
  readonly measured: readonly number[];
  readonly whiteRatio: readonly number[];
  readonly lab: Lab;
  readonly K: readonly number[];
  readonly S: readonly number[];
  /** Relative standard uncertainties [1]. */
  readonly KUncertainty: readonly number[];
  readonly SUncertainty: readonly number[];
  /** S where hardly any white is in it, by films of colour and white; absent without films. */
  readonly SAlone?: readonly number[];
  /** What S hardly passes (97.5 %). */
  readonly SUpper: readonly number[];
  readonly steps: readonly MeasuredStep[];
}

/** A let-down as read. */
export interface MeasuredStep {
  readonly tint: string;
  readonly massRatio: number;
  /** [1], in the fit's geometry, shape (count). */
  readonly measured: readonly number[];
  /** The same as it would read if it hid its ground, where it does not. */
  readonly hiding?: readonly number[];
  readonly lab: Lab;
  /** Present when the other drawdowns contradict it: shown, and not used. */
  readonly suspect?: SuspectStatement;
}

/** Why a drawdown is not left out to see whether the others predict it. */
export type NotLeftOut =
  | StatementOf<"fit-needs-masstone", Record<string, never>>
  | StatementOf<"only-let-down-in-its-white", { white: string }>;

/** How well the others predict one drawdown in its place. */
export interface PredictedDrawdown {
  /** "masstone", or the let-down's name. */
  readonly drawdown: string;
  readonly white?: string;
  readonly massRatio?: number;
  /** Delta-E00 (D65/10) between it and what the others predict; a statement says why there is none. */
  readonly leaveOneOutDeltaE00: number | NotLeftOut;
  readonly suspect?: SuspectStatement;
}

/** How well the fit meets one drawdown. */
export interface DrawdownVerdict extends PredictedDrawdown {
  /** Delta-E00 (D65/10) between it and the two-constant model of the fit. */
  readonly residualDeltaE00: number;
}
