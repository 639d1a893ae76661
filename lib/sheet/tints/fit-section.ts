import type { ColourFit, FittedWhite } from "../../optics/fit/colour-fit.ts";
import { fitQualityRuling, surfaceRuling } from "../../optics/fit/fit-remarks.ts";
import { at } from "../../quantities/at.ts";
import { sourceFigure, type Figure, type RecordRoot } from "../../quantities/figure.ts";
import type { Records } from "../../records/records.ts";
import { whiteColour } from "./drawdown-set.ts";
import { notationFigure } from "../notations/lab-figures.ts";
import type { CoefficientFigures, FitFigures } from "../optics/optics-parts.ts";
import { predictedFrom } from "./tint-steps.ts";

/** How a colour's K and S were fitted, how well, and what they are. */
export function fitFigures(
  fit: ColourFit,
  drawdowns: readonly RecordRoot[],
  records: Records,
): FitFigures {
  const predicted = predictedFrom(drawdowns);
  const { surface, by } = fit.surface;
  const isBound = fit.scattering.rule === "scattering-is-bound";
  const letDowns = fit.whites
    .flatMap(({ steps }) => steps)
    .filter(({ suspect }) => suspect?.rule !== "suspect-drawdown");
  const constant = (value: number): Figure<number> =>
    by === "stated"
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
  return {
    geometry: fit.geometry,
    surface: surfaceRuling(fit.surface),
    k1: constant(surface.k1),
    k2: constant(surface.k2),
    weightedResidual: notationFigure(fit.chiSquare, "1", {
      ...predicted,
      method: "mean square of residual over the noise of reading and weighing",
    }),
    quality: fitQualityRuling(fit.chiSquare, letDowns.length - fit.whites.length),
    masstoneResidualDeltaE00: notationFigure(at(fit.drawdowns, 0).residualDeltaE00, "1", predicted),
    scattering: fit.scattering,
    remarks: fit.remarks,
    leftOut: fit.leftOut,
    grid: fit.grid,
    whites: fit.whites.map((white) => coefficients(white, isBound, drawdowns, records)),
  };
}

/** Where S is only a bound, the bound alone: a curve of it would be read as a figure. */
function coefficients(
  white: FittedWhite,
  isBound: boolean,
  drawdowns: readonly RecordRoot[],
  records: Records,
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
    ...(isBound
      ? { SUpper: derived(white.SUpper, `${inUnits}: what S hardly passes (97.5 %)`) }
      : {
          S: derived(white.S, inUnits),
          SUncertainty: derived(white.SUncertainty, "relative standard uncertainty of S"),
        }),
  };
}
