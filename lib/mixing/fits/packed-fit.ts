/**
 * A colour's fit small enough to send to a reader's browser, and back: what its ladders and
 * mixtures are predicted from, without the verdicts and remarks that only its sheet tells.
 */
import { isUsed } from "../../optics/fit/outlier-drawdown.ts";
import { spectrumLab } from "../../colorimetry/spectrum-lab.ts";
import { at } from "../../quantities/at.ts";
import type { PredictingFit, FittedWhite } from "../../optics/fit/colour-fit.ts";
import type { RatioKind } from "../../optics/fit/drawdown.ts";
import type { Geometry } from "../../optics/fit/measurement.ts";
import type { Experience } from "../../optics/fit/workshop-experience.ts";
import type { SurfaceChoice } from "../../optics/surface/workshop-surface.ts";
import { isStatement } from "../../quantities/statement.ts";
import type { WavelengthGrid } from "../../quantities/spectrum.ts";
import {
  packedNumbers,
  REFLECTANCE_STEPS,
  RELATIVE_STEPS,
  UNCERTAINTY_STEPS,
  unpackedNumbers,
} from "./packed-numbers.ts";

/** Counts up whenever packed fits of before can no longer be read. */
export const FIT_FORMAT = 1;

type Packed = readonly number[];

export interface PackedFit {
  readonly format: number;
  readonly grid: WavelengthGrid;
  readonly geometry: Geometry;
  readonly surface: SurfaceChoice;
  readonly experience: Experience;
  readonly masstone: {
    readonly measured: Packed;
    readonly internal: Packed;
    readonly filmContrast?: number;
  };
  readonly whites: readonly PackedFitWhite[];
}

interface PackedFitWhite {
  readonly slug: string;
  readonly ratioKind: RatioKind;
  readonly hasFilms: boolean;
  readonly measured: Packed;
  readonly whiteRatio: Packed;
  readonly K: Packed;
  readonly S: Packed;
  readonly SAlone?: Packed;
  readonly KUncertainty: Packed;
  readonly SUncertainty: Packed;
  /** Let-downs that the fit used; `miss` is the leave-one-out Delta-E00, where one can be left out. */
  readonly steps: readonly {
    readonly massRatio: number;
    readonly measured: Packed;
    readonly hiding?: Packed;
    readonly miss?: number;
  }[];
}

export function packedFit(fit: PredictingFit): PackedFit {
  const { grid, geometry, surface, experience, masstone } = fit;
  return {
    format: FIT_FORMAT,
    grid,
    geometry,
    surface,
    experience,
    masstone: {
      measured: packedNumbers(masstone.measured, REFLECTANCE_STEPS),
      internal: packedNumbers(masstone.internal, RELATIVE_STEPS),
      ...(masstone.filmContrast !== undefined && { filmContrast: masstone.filmContrast }),
    },
    whites: fit.whites.map((white) => packedWhite(white, fit)),
  };
}

function packedWhite(white: FittedWhite, fit: PredictingFit): PackedFitWhite {
  const relative = (values: readonly number[]): Packed => packedNumbers(values, RELATIVE_STEPS);
  return {
    slug: white.slug,
    ratioKind: white.ratioKind,
    hasFilms: white.hasFilms,
    measured: packedNumbers(white.measured, REFLECTANCE_STEPS),
    whiteRatio: relative(white.whiteRatio),
    K: relative(white.K),
    S: relative(white.S),
    ...(white.SAlone !== undefined && { SAlone: relative(white.SAlone) }),
    KUncertainty: packedNumbers(white.KUncertainty, UNCERTAINTY_STEPS),
    SUncertainty: packedNumbers(white.SUncertainty, UNCERTAINTY_STEPS),
    steps: white.steps.filter(isUsed).map(({ tint, massRatio, measured, hiding }) => {
      const miss = fit.drawdowns.find(({ drawdown }) => drawdown === tint)?.leaveOneOutDeltaE00;
      return {
        massRatio,
        measured: packedNumbers(measured, REFLECTANCE_STEPS),
        ...(hiding !== undefined && { hiding: packedNumbers(hiding, REFLECTANCE_STEPS) }),
        ...(miss === undefined || isStatement(miss) ? {} : { miss: Number(miss.toFixed(4)) }),
      };
    }),
  };
}

/**
 * The fit again: it predicts what the one that was packed does.
 * @throws RangeError when it was packed in another format.
 */
export function unpackedFit(packed: PackedFit): PredictingFit {
  if (packed.format !== FIT_FORMAT)
    throw new RangeError(`The fit is of format ${packed.format}; right would be ${FIT_FORMAT}`);
  const { grid, geometry, surface, experience } = packed;
  const measured = unpackedNumbers(packed.masstone.measured, REFLECTANCE_STEPS);
  const { filmContrast } = packed.masstone;
  return {
    kind: "fit",
    grid,
    geometry,
    surface,
    experience,
    masstone: {
      measured,
      lab: spectrumLab({ grid, values: measured }),
      internal: unpackedNumbers(packed.masstone.internal, RELATIVE_STEPS),
      ...(filmContrast !== undefined && { filmContrast }),
    },
    whites: packed.whites.map((white) => unpackedWhite(white, grid)),
    drawdowns: packed.whites.flatMap(({ slug, steps }) =>
      steps.flatMap(({ massRatio, miss }) =>
        miss === undefined
          ? []
          : {
              drawdown: stepName(slug, massRatio),
              white: slug,
              massRatio,
              leaveOneOutDeltaE00: miss,
            },
      ),
    ),
  };
}

function unpackedWhite(white: PackedFitWhite, grid: WavelengthGrid): FittedWhite {
  const relative = (packed: Packed): number[] => unpackedNumbers(packed, RELATIVE_STEPS);
  const reading = (packed: Packed): number[] => unpackedNumbers(packed, REFLECTANCE_STEPS);
  const measured = reading(white.measured);
  const S = relative(white.S);
  const SUncertainty = unpackedNumbers(white.SUncertainty, UNCERTAINTY_STEPS);
  return {
    slug: white.slug,
    ratioKind: white.ratioKind,
    hasFilms: white.hasFilms,
    measured,
    whiteRatio: relative(white.whiteRatio),
    lab: spectrumLab({ grid, values: measured }),
    K: relative(white.K),
    S,
    ...(white.SAlone !== undefined && { SAlone: relative(white.SAlone) }),
    KUncertainty: unpackedNumbers(white.KUncertainty, UNCERTAINTY_STEPS),
    SUncertainty,
    SUpper: S.map((value, i) => value * Math.exp(2 * at(SUncertainty, i))),
    steps: white.steps.map(({ massRatio, measured: read, hiding }) => {
      const values = reading(read);
      return {
        tint: stepName(white.slug, massRatio),
        massRatio,
        measured: values,
        ...(hiding !== undefined && { hiding: reading(hiding) }),
        lab: spectrumLab({ grid, values }),
      };
    }),
  };
}

function stepName(white: string, massRatio: number): string {
  return `${white} ${massRatio}`;
}
