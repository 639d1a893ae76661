import type { ColourFit, FittedWhite } from "../../optics/fit/colour-fit.ts";
import { isUsed } from "../../optics/fit/outlier-drawdown.ts";
import { fitQualityRuling, surfaceRuling } from "../../optics/fit/fit-remarks.ts";
import { at } from "../../quantities/at.ts";
import { sourceFigure, type Figure, type RecordRoot } from "../../quantities/figure.ts";
import type { Records } from "../../records/records.ts";
import { whiteColour } from "./drawdown-set.ts";
import { notationFigure } from "../notations/lab-figures.ts";
import * as d from "../declaration.ts";
import { foundFrom } from "../found.ts";
import { GEOMETRY } from "../notations/notation-figures.ts";
import { RATIO_KIND } from "./tint-figures.ts";
import { predictedFrom } from "./tint-steps.ts";

const CONSTANT = { unit: "1", kind: "decimal", digits: 3 } as const;

/** K and S over the fit's wavelengths, in units of the white's own S, to one part of white by mass. */
const COEFFICIENTS = d.section({
  white: d.NAMED,
  ratioKind: RATIO_KIND,
  K: d.series("seriesK"),
  /** Relative standard uncertainties [1]. */
  KUncertainty: d.series("seriesKUncertainty"),
  /** Absent where the drawdowns only bound it. */
  S: d.optional(d.series("seriesS")),
  SUncertainty: d.optional(d.series("seriesSUncertainty")),
  /** What S hardly passes (97.5 %), where only that is told. */
  SUpper: d.optional(d.series("seriesSUpper")),
});
export type CoefficientFigures = d.SectionOf<typeof COEFFICIENTS>;

/** A colour's fit, and what it was made from. */
interface FitOfColour {
  readonly fit: ColourFit;
  readonly drawdowns: readonly RecordRoot[];
  readonly records: Records;
}
const fitted = foundFrom<FitOfColour>();

/** How K and S were fitted, and what they are. */
export const FIT = d.section({
  geometry: fitted.found(GEOMETRY, ({ fit }) => fit.geometry),
  /** Which surface constants were taken off, and why those. */
  surface: fitted.found(d.statement, ({ fit }) => surfaceRuling(fit.surface)),
  k1: fitted.found(d.number({ ...CONSTANT, word: "surfaceK1" }), (of) =>
    surfaceConstant(of.fit.surface.surface.k1, of),
  ),
  k2: fitted.found(d.number({ ...CONSTANT, word: "surfaceK2" }), (of) =>
    surfaceConstant(of.fit.surface.surface.k2, of),
  ),
  weightedResidual: fitted.found(
    d.number({ unit: "1", kind: "significant", digits: 2, word: "weightedResidual" }),
    ({ fit, drawdowns }) =>
      notationFigure(fit.chiSquare, "1", {
        ...predictedFrom(drawdowns),
        method: "mean square of residual over the noise of reading and weighing",
      }),
  ),
  quality: fitted.found(d.statement, ({ fit: { whites, chiSquare } }) => {
    const letDowns = whites.flatMap(({ steps }) => steps).filter(isUsed);
    return fitQualityRuling(chiSquare, letDowns.length - whites.length);
  }),
  masstoneResidualDeltaE00: fitted.found(
    d.number({ ...d.ONE_PLACE, word: "masstoneResidual" }),
    ({ fit, drawdowns }) =>
      notationFigure(at(fit.drawdowns, 0).residualDeltaE00, "1", predictedFrom(drawdowns)),
  ),
  /** Whether S is a figure or only a bound. */
  scattering: fitted.found(d.statement, ({ fit }) => fit.scattering),
  remarks: fitted.found(d.statements, ({ fit }) => fit.remarks),
  /** Drawdowns that could not be used, with the reason. */
  leftOut: fitted.found(d.statements, ({ fit }) => fit.leftOut),
  grid: fitted.found(
    d.section({ startNm: d.plainNumber, stepNm: d.plainNumber, count: d.plainNumber }),
    ({ fit }) => fit.grid,
  ),
  whites: fitted.found(d.list(COEFFICIENTS), (of) =>
    of.fit.whites.map((white) => coefficients(white, of)),
  ),
});
export type FitFigures = d.SectionOf<typeof FIT>;

function surfaceConstant(value: number, { fit, drawdowns }: FitOfColour): Figure<number> {
  const { by } = fit.surface;
  return by === "stated"
    ? notationFigure(value, "1", {
        standing: "measured",
        inputs: drawdowns,
        method: "as recorded with the readings",
        source: "saunderson-1942",
      })
    : sourceFigure("estimated", value, {
        unit: "1",
        method:
          by === "default"
            ? "the usual one of its geometry"
            : "of those tried, the pair by which left-out let-downs are predicted best",
        source: "oil-paint-outs",
        inputs: drawdowns,
      });
}

/** Where S is only a bound, the bound alone: a curve of it would be read as a figure. */
function coefficients(
  white: FittedWhite,
  { fit, drawdowns, records }: FitOfColour,
): CoefficientFigures {
  const { name } = whiteColour(white.slug, records);
  const derived = (values: readonly number[], what: string): Figure<readonly number[]> =>
    notationFigure(values, "1", {
      standing: "derived",
      inputs: drawdowns,
      method: `${what}, by wavelength`,
      source: "walowit-1987",
    });
  const inUnits = `two-constant fit, in units of the scattering of ${name} to one part of it by mass of ${white.ratioKind === "paint" ? "paint" : "dry pigment"}`;
  return {
    white: { slug: white.slug, name },
    ratioKind: white.ratioKind,
    K: derived(white.K, inUnits),
    KUncertainty: derived(white.KUncertainty, "relative standard uncertainty of K"),
    ...(fit.scattering.rule === "scattering-is-bound"
      ? { SUpper: derived(white.SUpper, `${inUnits}: what S hardly passes (97.5 %)`) }
      : {
          S: derived(white.S, inUnits),
          SUncertainty: derived(white.SUncertainty, "relative standard uncertainty of S"),
        }),
  };
}
