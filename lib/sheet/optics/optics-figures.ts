import type { Figure } from "../../quantities/figure.ts";
import type { Quantity } from "../../quantities/interval.ts";
import type { Statement } from "../../quantities/statement.ts";
import type { WavelengthGrid } from "../../quantities/spectrum.ts";
import type { Finish } from "../../optics/surface/gloss-depth.ts";
import type { Geometry, RatioKind } from "../../records/schema/terms.ts";
import type { ScreenFigures } from "../sheet.ts";

/** Another record of the range, as a sheet names it. */
export interface Named {
  readonly slug: string;
  readonly name: string;
}

/** The masstone glossy and matte, to an eye that looks past the glare. */
export interface GlossDepthFigures {
  readonly sentence: Statement;
  readonly glossyL: Figure<number>;
  readonly matteL: Figure<number>;
  readonly glossyValue: Figure<number>;
  readonly matteValue: Figure<number>;
  /** Glossy, satin, matte, each with gloss excluded and included. */
  readonly depths: readonly FinishDepth[];
}

/** One finish as one geometry meets it; satin, excluded, is an estimate's two ends, its screen colour their middle. */
export interface FinishDepth extends Partial<ScreenFigures> {
  /** "glossy-excluded" */
  readonly slug: string;
  readonly finish: Finish;
  readonly specular: "excluded" | "included";
  readonly L: Figure<Quantity>;
  readonly value: Figure<Quantity>;
}

/** A black let down with volumes of an extender medium: L* (D65/10), gloss included. */
export interface ExtenderFigures {
  readonly colour: Named;
  readonly volumes: number;
  readonly fromL: Figure<number>;
  readonly toL: Figure<number>;
  readonly sentence: Statement;
}

/** The mulled paint's strength beside the milled one's, in one white. */
export interface DispersionFigures {
  /** The paint of the same pigment on the other sheet. */
  readonly other: Named;
  readonly white: Named;
  readonly strength: Figure<Quantity>;
  readonly sentence: Statement;
}

/** How K and S were fitted, and what they are. */
export interface FitFigures {
  readonly geometry: Geometry;
  /** Which surface constants were taken off, and why those. */
  readonly surface: Statement;
  readonly k1: Figure<number>;
  readonly k2: Figure<number>;
  readonly weightedResidual: Figure<number>;
  readonly quality: Statement;
  readonly masstoneResidualDeltaE00: Figure<number>;
  /** Whether S is a figure or only a bound. */
  readonly scattering: Statement;
  readonly remarks: readonly Statement[];
  /** Drawdowns that could not be used, with the reason. */
  readonly leftOut: readonly Statement[];
  readonly grid: WavelengthGrid;
  readonly whites: readonly CoefficientFigures[];
}

/** K and S over the fit's wavelengths, in units of the white's own S, to one part of white by mass. */
export interface CoefficientFigures {
  readonly white: Named;
  readonly ratioKind: RatioKind;
  readonly K: Figure<readonly number[]>;
  /** Relative standard uncertainties [1]. */
  readonly KUncertainty: Figure<readonly number[]>;
  /** Absent where the drawdowns only bound it. */
  readonly S?: Figure<readonly number[]>;
  readonly SUncertainty?: Figure<readonly number[]>;
  /** What S hardly passes (97.5 %), where only that is told. */
  readonly SUpper?: Figure<readonly number[]>;
}
