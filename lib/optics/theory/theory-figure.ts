/** A first-principles figure in a form that can be kept: plain numbers, and all that they depend on. */
import {
  firstPrinciplesTints,
  theoryTintAt,
  type Band,
  type TheoryTint,
  type TheoryTints,
} from "./mie-tint.ts";
import { particleCoefficients } from "./particle-coefficients.ts";
import type { ParticleModel } from "./particle-model.ts";
import {
  OIL_INDICES,
  PARTICLE_GRID,
  particleRuns,
  RUN_COUNT,
  type ParticleRun,
} from "./particle-runs.ts";
import { scatteringBands } from "./theory-statements.ts";

/** Pigments of a range that theory can speak of. */
export interface TheoryModels {
  readonly whites: readonly ParticleModel[];
  readonly blacks: readonly ParticleModel[];
}

/** S of a white over PARTICLE_GRID, relative to 560 nm. */
export interface WhiteTheory {
  readonly white: string;
  readonly scattering: readonly Band[];
}

export interface TheoryFigure {
  readonly whites: readonly WhiteTheory[];
  readonly blacks: readonly TheoryTints[];
}

/** Decimal places that are kept of a run: far more than it is good for. */
const KEPT_PLACES = 4;

export function whiteTheory(white: ParticleModel, runs: readonly ParticleRun[]): WhiteTheory {
  return { white: white.slug, scattering: scatteringBands(runs).map(keptBand) };
}

/** The tints of one black in the whites, rounded as they are kept, so that a kept figure and a fresh one are the same. */
export function blackTheory(
  black: ParticleModel,
  whites: ReadonlyMap<string, readonly ParticleRun[]>,
): TheoryTints {
  const { tints } = firstPrinciplesTints(black, whites);
  return {
    black: black.slug,
    tints: tints.map((tint): TheoryTint => ({
      ...tint,
      aRuns: tint.aRuns.map(kept),
      bRuns: tint.bRuns.map(kept),
      a: keptBand(tint.a),
      b: keptBand(tint.b),
    })),
  };
}

export function whiteRuns(models: readonly ParticleModel[]): Map<string, ParticleRun[]> {
  return new Map(models.map((model) => [model.slug, particleRuns(model, "white")]));
}

/** What a model's runs depend on, with its indices as the numbers that they are at each wavelength. */
export function modelInputs({ slug, indices, sizeUm, sizeKind, spread }: ParticleModel): object {
  const wavelengthsNm = Array.from(
    { length: PARTICLE_GRID.count },
    (_, i) => PARTICLE_GRID.startNm + i * PARTICLE_GRID.stepNm,
  );
  return {
    slug,
    sizeUm,
    sizeKind,
    spread,
    indices: indices.map(({ at }) => wavelengthsNm.map((nm) => [at(nm).n, at(nm).k])),
  };
}

/**
 * What any figure depends on beside its models: counts, oils, and a few numbers by the whole way of the
 * calculation, which change when it does, so that a figure kept by an older one is never taken for its own.
 */
export function theoryProbe(): object {
  const at = (diameterUm: number, n: number, k: number): readonly number[] =>
    [420, 560, 680].map((nm) => particleCoefficients(diameterUm, { n, k }, 1.5, nm).S);
  const curve = (exponent: number): number[] =>
    Array.from(
      { length: PARTICLE_GRID.count },
      (_, i) => (560 / (PARTICLE_GRID.startNm + i * PARTICLE_GRID.stepNm)) ** exponent,
    );
  const none = curve(0).map(() => 0);
  return {
    runs: RUN_COUNT,
    oils: OIL_INDICES,
    grid: PARTICLE_GRID,
    probe: [
      ...at(0.25, 2.7, 0),
      ...at(0.3, 2.4, 0.6),
      ...(Object.values(
        theoryTintAt({ K: curve(1), S: none }, { K: none, S: curve(1.4) }, 60),
      ) as number[]),
    ].map((value) => value.toPrecision(9)),
  };
}

function keptBand({ low, middle, high }: Band): Band {
  return { low: kept(low), middle: kept(middle), high: kept(high) };
}

function kept(value: number): number {
  return Number(value.toFixed(KEPT_PLACES)) + 0;
}
