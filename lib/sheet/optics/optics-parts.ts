import type { Finish } from "../../optics/surface/gloss-depth.ts";
import {
  list,
  listed,
  number,
  oneOf,
  optional,
  plainNumber,
  quantity,
  section,
  series,
  statement,
  statements,
  text,
  type SectionOf,
  ONE_PLACE,
  SHARE,
} from "../declaration.ts";
import { GEOMETRY, SCREEN_IF_KNOWN } from "../notations/notation-figures.ts";
import { RATIO_KIND } from "../tints/tint-figures.ts";

/** Another record of the range, as a sheet names it. */
export const NAMED = section({ slug: text, name: text });
export type Named = SectionOf<typeof NAMED>;

const DEPTH_L = { unit: "1", kind: "decimal", digits: 0 } as const;
const DEPTH_VALUE = { unit: "1", kind: "decimal", digits: 1 } as const;

/** One finish as one geometry meets it; satin, excluded, is an estimate's two ends, its screen colour their middle. */
const FINISH_DEPTH = section({
  /** "glossy-excluded" */
  slug: text,
  finish: oneOf<Finish>(["glossy", "satin", "matte"]),
  specular: oneOf(["excluded", "included"]),
  L: quantity({ ...DEPTH_L, word: "labL" }),
  value: quantity({ ...DEPTH_VALUE, word: "munsellValue" }),
  ...SCREEN_IF_KNOWN,
});
export type FinishDepth = SectionOf<typeof FINISH_DEPTH>;

/** The masstone glossy and matte, to an eye that looks past the glare. */
export const GLOSS_DEPTH = section({
  sentence: statement,
  glossyL: number({ ...DEPTH_L, word: "glossyL" }),
  matteL: number({ ...DEPTH_L, word: "matteL" }),
  glossyValue: number({ ...DEPTH_VALUE, word: "glossyValue" }),
  matteValue: number({ ...DEPTH_VALUE, word: "matteValue" }),
  /** Glossy, satin, matte, each with gloss excluded and included. */
  depths: list(FINISH_DEPTH),
});
export type GlossDepthFigures = SectionOf<typeof GLOSS_DEPTH>;

/** A black let down with volumes of an extender medium: L* (D65/10), gloss included. */
export const EXTENDER = section({
  colour: NAMED,
  volumes: plainNumber,
  fromL: listed(number({ ...ONE_PLACE, word: "extendedFromL" })),
  toL: listed(number({ ...ONE_PLACE, word: "extendedToL" })),
  sentence: statement,
});
export type ExtenderFigures = SectionOf<typeof EXTENDER>;

/** The mulled paint's strength beside the milled one's, in one white. */
export const DISPERSION = section({
  /** The paint of the same pigment on the other sheet. */
  other: NAMED,
  white: NAMED,
  strength: listed(quantity({ ...SHARE, word: "mulledStrength" }), {
    after: "optics.tintingStrengthByVolume",
  }),
  sentence: statement,
});
export type DispersionFigures = SectionOf<typeof DISPERSION>;

/** K and S over the fit's wavelengths, in units of the white's own S, to one part of white by mass. */
const COEFFICIENTS = section({
  white: NAMED,
  ratioKind: RATIO_KIND,
  K: series("seriesK"),
  /** Relative standard uncertainties [1]. */
  KUncertainty: series("seriesKUncertainty"),
  /** Absent where the drawdowns only bound it. */
  S: optional(series("seriesS")),
  SUncertainty: optional(series("seriesSUncertainty")),
  /** What S hardly passes (97.5 %), where only that is told. */
  SUpper: optional(series("seriesSUpper")),
});
export type CoefficientFigures = SectionOf<typeof COEFFICIENTS>;

/** How K and S were fitted, and what they are. */
export const FIT = section({
  geometry: GEOMETRY,
  /** Which surface constants were taken off, and why those. */
  surface: statement,
  k1: number({ unit: "1", kind: "decimal", digits: 3, word: "surfaceK1" }),
  k2: number({ unit: "1", kind: "decimal", digits: 3, word: "surfaceK2" }),
  weightedResidual: number({ unit: "1", kind: "significant", digits: 2, word: "weightedResidual" }),
  quality: statement,
  masstoneResidualDeltaE00: number({ ...ONE_PLACE, word: "masstoneResidual" }),
  /** Whether S is a figure or only a bound. */
  scattering: statement,
  remarks: statements,
  /** Drawdowns that could not be used, with the reason. */
  leftOut: statements,
  grid: section({ startNm: plainNumber, stepNm: plainNumber, count: plainNumber }),
  whites: list(COEFFICIENTS),
});
export type FitFigures = SectionOf<typeof FIT>;

/** The colour as a film over white. */
export const GLAZE_STEP = section({ filmUm: plainNumber, ...SCREEN_IF_KNOWN });
export type GlazeStep = SectionOf<typeof GLAZE_STEP>;
