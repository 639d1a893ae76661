/** What a search goes through thousands of times, laid out once: K and S of the white and of every colour let down in it. */
import { summationWeights, type SummationWeights } from "../../colorimetry/summation-weights.ts";
import { labToXyz } from "../../colorimetry/lab.ts";
import { WHITE_POINTS, type Lab } from "../../colorimetry/viewing.ts";
import { spectrumOnGrid } from "../../optics/fit/common-grid.ts";
import { surfaceForm, type SurfaceForm } from "../../optics/surface/surface.ts";
import type { LadderModel } from "../../optics/tints/ladder.ts";
import { internalOf, keptRatio } from "../../optics/tints/tint-reading.ts";
import type { WavelengthGrid } from "../../quantities/spectrum.ts";
import { glossyGeometry } from "../prediction/seen-mix.ts";
import { labMetric, type LabMetric } from "./lab-metric.ts";
import { smoothSpectrum } from "./smooth-spectrum.ts";
import type { Target } from "./target.ts";

export interface MatchProblem {
  readonly grid: WavelengthGrid;
  /** Of a glossy film without its glare, as a target is given. */
  readonly form: SurfaceForm;
  readonly weights: SummationWeights;
  readonly white: { readonly X: number; readonly Y: number; readonly Z: number };
  /** Of the white first (S = 1), then of each colour per unit of mass; shape (count) each. */
  readonly K: readonly Float64Array[];
  readonly S: readonly Float64Array[];
  readonly target: Lab;
  readonly metric: LabMetric;
  /** K/S of the target, or of the smoothest spectrum of its colour. */
  readonly theta: Float64Array;
  /** How much an error of K/S counts at each wavelength, squared. */
  readonly thetaWeights: Float64Array;
}

/** @param ladders of colours that mix, at least one, all in one white. */
export function matchProblem(target: Target, ladders: readonly LadderModel[]): MatchProblem {
  const [first] = ladders;
  if (first === undefined) throw new RangeError("There is no colour; right would be at least one");
  const { grid, geometry, surface } = first.fit;
  const form = surfaceForm(glossyGeometry(geometry), surface.surface);
  const weights = summationWeights(grid, "D65/10");
  const { X, Y, Z } = labToXyz(target.lab, "D65/10");
  const read = target.spectrum && spectrumOnGrid(target.spectrum, grid)?.values;
  const reflectances =
    read ?? smoothSpectrum({ X: Math.max(X, 0), Y: Math.max(Y, 0), Z: Math.max(Z, 0) }, grid);
  const internal = reflectances.map((value) => internalOf(form, value));
  const theta = Float64Array.from(internal, keptRatio);
  return {
    grid,
    form,
    weights,
    white: WHITE_POINTS["D65/10"],
    K: [
      Float64Array.from(first.white.whiteRatio),
      ...ladders.map(({ white }) => Float64Array.from(white.K)),
    ],
    S: [
      new Float64Array(grid.count).fill(1),
      ...ladders.map(({ white }) => Float64Array.from(white.S)),
    ],
    target: target.lab,
    metric: labMetric(target.lab),
    theta,
    thetaWeights: Float64Array.from(theta, (value, i) => {
      const R = 1 / (1 + value + Math.sqrt(value * (value + 2)));
      const slope = R / Math.max(Math.sqrt(value * (value + 2)), 1e-6);
      const seen = (weights.X[i] ?? 0) + (weights.Y[i] ?? 0) + (weights.Z[i] ?? 0);
      return (slope * Math.max(seen, 0)) ** 2;
    }),
  };
}
