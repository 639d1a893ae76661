/** One fit of one set under one surface, with the models that predict from it. */
import { tristimulus } from "../../colorimetry/tristimulus.ts";
import { xyzToLab } from "../../colorimetry/lab.ts";
import type { Lab } from "../../colorimetry/viewing.ts";
import type { WavelengthGrid } from "../../quantities/spectrum.ts";
import type { UsableDrawdowns, UsableTint } from "./drawdown.ts";
import { closedContribution } from "./initial-estimate.ts";
import type { ClosedContribution, FitColumn } from "./fit-problem.ts";
import type { Measurement, SurfaceConstants } from "./measurement.ts";
import { readingNoise } from "./reading-noise.ts";
import { surfaceForm } from "../surface/surface.ts";
import { internalOf, keptRatio, keptReflectance, readingOf } from "../tints/tint-reading.ts";
import {
  plainReadings,
  tintModel,
  tintReadings,
  type PlainModel,
  type TintModel,
} from "../tints/tint-model.ts";
import { twoConstantFit, type FitSolution } from "./two-constant-fit.ts";

/** A drawdown made ready: its fit column, and how it reads in the geometry of the masstone. */
interface ReadyDrawdown {
  readonly column: FitColumn;
  readonly measured: readonly number[];
  readonly lab: Lab;
}

export interface ReadyTint extends ReadyDrawdown {
  readonly tint: UsableTint;
  readonly contribution: ClosedContribution;
}

/** A set under one surface, with what every fit of any part of it needs. */
export interface ReadySet {
  readonly grid: WavelengthGrid;
  readonly masstone: ReadyDrawdown;
  readonly whites: readonly (ReadyDrawdown & {
    readonly slug: string;
    readonly ratio: Float64Array;
  })[];
  readonly tints: readonly ReadyTint[];
}

/** A set made ready for fitting under a surface. */
export function readySet(
  { masstone, whites, tints }: UsableDrawdowns,
  surface: SurfaceConstants,
): ReadySet {
  const home = surfaceForm(masstone.geometry, surface);
  const ready = (reading: Measurement): ReadyDrawdown => {
    const form = surfaceForm(reading.geometry, surface);
    const column = { form, measured: reading.spectrum.values, sigma: readingNoise(reading) };
    const measured =
      reading.geometry === masstone.geometry
        ? reading.spectrum.values
        : reading.spectrum.values.map((value) =>
            readingOf(home, keptReflectance(internalOf(form, value))),
          );
    return { column, measured, lab: labOf(reading.spectrum.grid, measured) };
  };
  const ownMasstone = ready(masstone);
  const readyWhites = whites.map(({ slug, masstone: reading }) => {
    const made = ready(reading);
    return {
      ...made,
      slug,
      ratio: Float64Array.from(
        reading.spectrum.values.map((value) => keptRatio(internalOf(made.column.form, value))),
      ),
    };
  });
  return {
    grid: masstone.spectrum.grid,
    masstone: ownMasstone,
    whites: readyWhites,
    tints: tints.map((tint) => {
      const made = ready(tint.reading);
      const ratio =
        readyWhites.find(({ slug }) => slug === tint.white)?.ratio ?? new Float64Array(0);
      return {
        ...made,
        tint,
        contribution: closedContribution(ownMasstone.column, ratio, {
          ...made.column,
          massRatio: tint.massRatio,
        }),
      };
    }),
  };
}

/** Fit of some of a set's let-downs; whites without any of them are left out. */
export interface SetFit {
  readonly solution: FitSolution;
  /** By slug of the white: the plain model, and the model drawn through the let-downs fitted. */
  readonly models: ReadonlyMap<string, TintModel>;
}

export function setFit(set: ReadySet, tints: readonly ReadyTint[]): SetFit {
  const whites = set.whites.filter(({ slug }) => tints.some(({ tint }) => tint.white === slug));
  const solution = twoConstantFit({
    grid: set.grid,
    masstone: set.masstone.column,
    whiteRatios: whites.map(({ ratio }) => ratio),
    tints: tints.map(({ column, tint, contribution }) => ({
      ...column,
      contribution,
      massRatio: tint.massRatio,
      white: whites.findIndex(({ slug }) => slug === tint.white),
    })),
  });
  const models = new Map(
    whites.map((white, j) => {
      const plain: PlainModel = {
        form: set.masstone.column.form,
        masstone: solution.masstone,
        whiteRatio: white.ratio,
        extinction: solution.whites[j]?.extinction ?? [],
      };
      const own = tints
        .filter(({ tint }) => tint.white === white.slug)
        .map(({ tint, measured }) => ({ massRatio: tint.massRatio, measured }));
      return [
        white.slug,
        tintModel(plain, [
          { massRatio: 0, measured: white.measured },
          ...own,
          { massRatio: Infinity, measured: set.masstone.measured },
        ]),
      ];
    }),
  );
  return { solution, models };
}

/** Lab (D65/10) of the plain two-constant model of a let-down. */
export function plainLab(set: ReadySet, model: PlainModel, massRatio: number): Lab {
  return labOf(set.grid, plainReadings(model, massRatio));
}

/** Lab (D65/10) of a let-down as predicted. */
export function predictedLab(set: ReadySet, model: TintModel, massRatio: number): Lab {
  return labOf(set.grid, tintReadings(model, massRatio));
}

/** Lab (D65/10) of readings [1] on a grid. */
export function labOf(grid: WavelengthGrid, values: readonly number[]): Lab {
  return xyzToLab(tristimulus({ grid, values }, "D65/10"), "D65/10");
}
