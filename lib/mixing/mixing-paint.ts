/** What a reader's browser is sent of each paint of a range, to mix with. */
import type { JudgingObserver } from "../colorimetry/viewing.ts";
import type { Geometry, SurfaceConstants } from "../optics/fit/measurement.ts";
import type { WavelengthGrid } from "../quantities/spectrum.ts";
import type { Interval } from "../quantities/interval.ts";
import type { PackedFit } from "./fits/packed-fit.ts";

export interface MixingData {
  /** Of the packed fits: a script reads the format that it was built with and no other. */
  readonly format: number;
  /** Of all sheets together. */
  readonly revision: string;
  readonly workshop: string;
  readonly currency?: string;
  /** By whose eye lamps are judged. */
  readonly observer: JudgingObserver;
  /** The colour that is shown before any is asked for. */
  readonly usual?: string;
  readonly paints: readonly MixingPaint[];
  /** Of a large range not all paints are here: each other has a file of its own, "colours/SLUG/mixing.js". */
  readonly hasOthers?: boolean;
  /** Black and white ground of films, as read or assumed, in one geometry. */
  readonly grounds?: { readonly black: PackedReading; readonly white: PackedReading };
}

/** A reading in the steps of packed-numbers.ts. */
export interface PackedReading {
  readonly grid: WavelengthGrid;
  readonly geometry: Geometry;
  readonly values: readonly number[];
}

/** K and S of a paint's own films [1/um], packed. */
export interface PackedFilm {
  readonly grid: WavelengthGrid;
  readonly K: readonly number[];
  readonly S: readonly number[];
  readonly surface: SurfaceConstants;
  readonly scaleUncertainty: number;
}

export interface MixingPaint {
  readonly slug: string;
  readonly name: string;
  readonly kind: "colour" | "white" | "medium";
  /** Colour Index names of its pigments. */
  readonly index: readonly string[];
  /** Masstone, gloss shut out where its reading tells: for a screen, and D65/10. */
  readonly screen?: { readonly hex: string; readonly displayP3?: string };
  readonly lab?: readonly [number, number, number];
  readonly masstone?: PackedReading;
  readonly fit?: PackedFit;
  /** Why there is no fit, in a sentence. */
  readonly refusal?: string;
  /** That theory does not hold for a pigment of it: it is offered nowhere. */
  readonly isNotPredicted?: true;
  /** Pigment by mass of the paint [1], and its density [g/cm3], in the middle of an estimate. */
  readonly pigmentMassFraction?: number;
  readonly densityGPerCm3?: number;
  /** Without the air that it was weighed with, where that is another. */
  readonly filmDensityGPerCm3?: number;
  readonly film?: PackedFilm;
  readonly facts: PaintFacts;
  /** Made no more: it can be mixed with, and is nobody's recipe. */
  readonly isDiscontinued?: boolean;
}

/** What a painter asks of a tube, each with the words in which its sheet says it; absent where nobody knows. */
export interface PaintFacts {
  /** 1 excellent to 5 very poor, by category or expectation. */
  readonly lightfastness?: { readonly rank: number; readonly text: string };
  /** Days to touch dry alone; `fullFrom` is the share of pigment from which it acts in full. */
  readonly drying?: {
    readonly days: Interval;
    readonly isTried: boolean;
    readonly fullFrom: number;
    readonly text: string;
  };
  /** 1 opaque to 4 transparent. */
  readonly opacity?: { readonly rank: number; readonly text: string };
  /** Oil of the dry film by volume [1], for lean and fat: by mass a heavy pigment looks lean. */
  readonly oil?: { readonly volumeFraction: Interval; readonly text: string };
  readonly warning: {
    readonly signal: "Danger" | "Warning" | null;
    readonly statements: readonly string[];
    /** Nobody has classified it. */
    readonly isUnknown: boolean;
  };
  /** Metals that the studio goes by: "lead", "cadmium". */
  readonly metals: readonly string[];
  /** Of a millilitre in its smallest size; absent where it has no price or may not be sold to everybody. */
  readonly pricePerMl?: number;
  /** Why it has no price, where it is not sold to everybody. */
  readonly isRestricted: boolean;
}
