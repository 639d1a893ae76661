/** K and S of a pigment over what is not known of it: the same unknowns in the same run of every pigment. */
import type { Interval } from "../../quantities/interval.ts";
import type { ParticleModel } from "./particle-model.ts";
import { quasiRandom } from "./quasi-random.ts";
import type { IndexSet } from "./refractive-index.ts";
import { sizeAverage, sizeTable, volumeMedianUm, type SizeTable } from "./size-average.ts";
import { certain } from "../../quantities/at.ts";

/** Index of the oil: linseed, fresh to aged. @source oil-index */
export const OIL_INDICES: readonly number[] = [1.48, 1.5, 1.52];

/** 400-700 nm; sizes smooth the spectrum, so that 20 nm tell as much as 10. */
export const PARTICLE_GRID = { startNm: 400, stepNm: 20, count: 16 } as const;

/** How often the unknowns are drawn: so often that a share of runs is known to a percent or two. */
export const RUN_COUNT = 360;

/** One draw: K and S for each volume of particle [1/um], shape (grid). */
export interface ParticleRun {
  readonly K: readonly number[];
  readonly S: readonly number[];
}

/**
 * Runs of a pigment: run i has the same oil for every pigment, and for every black the same place in its range of
 * sizes, spreads and index sets (two carbons are compared as of one make). A white draws apart from the blacks,
 * and each white in an order of its own: the sizes of two whites have nothing to do with each other.
 * @source halton-1960
 */
export function particleRuns(
  model: ParticleModel,
  role: "white" | "black",
  count: number = RUN_COUNT,
): ParticleRun[] {
  const tables = tablesOf(model);
  const first = role === "white" ? 1 : 4;
  const order = role === "white" ? ownOrder(model.slug, count) : [];
  return Array.from({ length: count }, (_, i) => {
    const own = (dimension: number): number => quasiRandom((order[i] ?? i) + 1, dimension);
    const oil = pick(OIL_INDICES.length, quasiRandom(i + 1, 0));
    const index = pick(model.indices.length, own(first));
    const spread = within(model.spread, own(first + 2), false);
    const size = within(model.sizeUm, own(first + 1), true);
    const table = certain(tables[oil * model.indices.length + index]);
    return sizeAverage(
      table,
      model.sizeKind === "number mean" ? volumeMedianUm(size, spread) : size,
      spread,
    );
  });
}

function tablesOf({ indices, sizeUm, sizeKind, spread }: ParticleModel): SizeTable[] {
  const wavelengthsNm = Array.from(
    { length: PARTICLE_GRID.count },
    (_, i) => PARTICLE_GRID.startNm + i * PARTICLE_GRID.stepNm,
  );
  const medians: Interval =
    sizeKind === "number mean"
      ? [volumeMedianUm(sizeUm[0], spread[0]), volumeMedianUm(sizeUm[1], spread[1])]
      : sizeUm;
  return OIL_INDICES.flatMap((oil) =>
    indices.map((index: IndexSet) => sizeTable(index, oil, wavelengthsNm, medians, spread)),
  );
}

/** The runs in an order of a pigment's own, shuffled by its name: the same in every build. */
function ownOrder(slug: string, count: number): number[] {
  let state = 2166136261;
  for (const letter of slug)
    state = Math.imul(state ^ (letter.codePointAt(0) ?? 0), 16777619) >>> 0;
  const order = Array.from({ length: count }, (_, i) => i);
  for (let last = count - 1; last > 0; last--) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    const drawn = Math.floor((state / 2 ** 32) * (last + 1));
    [order[last], order[drawn]] = [order[drawn] ?? 0, order[last] ?? 0];
  }
  return order;
}

function pick(count: number, u: number): number {
  return Math.min(Math.floor(u * count), count - 1);
}

/** A place in a range, by u of its width; of sizes, of its width in ln d. */
function within([lower, upper]: Interval, u: number, isLogarithmic: boolean): number {
  return isLogarithmic ? lower * (upper / lower) ** u : lower + u * (upper - lower);
}
