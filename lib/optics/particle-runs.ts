/** K and S of a pigment over what is not known of it: the same unknowns in the same run of every pigment. */
import type { Range } from "../quantities/range.ts";
import type { ParticleModel } from "./particle-model.ts";
import { quasiRandomPoint } from "./quasi-random.ts";
import type { IndexSet } from "./refractive-index.ts";
import { sizeAverage, sizeTable, volumeMedianUm, type SizeTable } from "./size-average.ts";

/** Index of the oil: linseed, fresh to aged. @source oil-index */
export const OIL_INDICES: readonly number[] = [1.48, 1.5, 1.52];

/** 400-700 nm; sizes smooth the spectrum, so that 20 nm tell as much as 10. */
export const PARTICLE_GRID = { startNm: 400, stepNm: 20, count: 16 } as const;

/** How often the unknowns are drawn. */
export const RUN_COUNT = 120;

/** One draw: K and S for each volume of particle [1/um], shape (grid). */
export interface ParticleRun {
  readonly K: readonly number[];
  readonly S: readonly number[];
}

/**
 * Runs of a pigment: run i has the same oil, and the same place in its range of sizes,
 * spreads and index sets, whichever role and pigment; a black and a white draw apart.
 * @param role "white" and "black" draw from different coordinates, so that they vary independently.
 * @source halton-1960
 */
export function particleRuns(model: ParticleModel, role: "white" | "black", count: number = RUN_COUNT): ParticleRun[] {
  const tables = tablesOf(model);
  const first = role === "white" ? 1 : 4;
  return Array.from({ length: count }, (_, i) => {
    const point = quasiRandomPoint(i + 1, 7);
    const [oil, index] = [pick(OIL_INDICES.length, point[0] ?? NaN), pick(model.indices.length, point[first] ?? NaN)];
    const spread = within(model.spread, point[first + 2] ?? NaN, false);
    const size = within(model.sizeUm, point[first + 1] ?? NaN, true);
    const table = tables[oil * model.indices.length + index];
    if (table === undefined) throw new Error("Unreachable: a table for every oil and index set");
    return sizeAverage(table, model.sizeKind === "number mean" ? volumeMedianUm(size, spread) : size, spread);
  });
}

function tablesOf({ indices, sizeUm, sizeKind, spread }: ParticleModel): SizeTable[] {
  const wavelengthsNm = Array.from({ length: PARTICLE_GRID.count }, (_, i) => PARTICLE_GRID.startNm + i * PARTICLE_GRID.stepNm);
  const medians: Range = sizeKind === "number mean" ? [volumeMedianUm(sizeUm[0], spread[0]), volumeMedianUm(sizeUm[1], spread[1])] : sizeUm;
  return OIL_INDICES.flatMap((oil) => indices.map((index: IndexSet) => sizeTable(index, oil, wavelengthsNm, medians, spread)));
}

function pick(count: number, u: number): number {
  return Math.min(Math.floor(u * count), count - 1);
}

/** A place in a range, by u of its width; of sizes, of its width in ln d. */
function within([lower, upper]: Range, u: number, isLogarithmic: boolean): number {
  return isLogarithmic ? lower * (upper / lower) ** u : lower + u * (upper - lower);
}
