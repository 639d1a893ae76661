import { domainError } from "../diagnostics/diagnostic.ts";

/** Evenly spaced wavelengths: first [nm], step [nm], how many. */
export interface WavelengthGrid {
  readonly startNm: number;
  readonly stepNm: number;
  readonly count: number;
}

/**
 * Reflectance factors [1] on a grid, `values[i]` at `startNm + i * stepNm`.
 * A factor may pass 1 a little (a fluorescent white) or read as 0 (a deep black).
 */
export interface Spectrum {
  readonly grid: WavelengthGrid;
  readonly values: readonly number[];
}

/** Wavelength of the i-th point [nm]. */
export function wavelengthNm(grid: WavelengthGrid, index: number): number {
  return grid.startNm + index * grid.stepNm;
}

/** All wavelengths of a grid [nm], shape (count). */
export function wavelengthsNm(grid: WavelengthGrid): number[] {
  return Array.from({ length: grid.count }, (_, index) => wavelengthNm(grid, index));
}

export function sameGrid(one: WavelengthGrid, other: WavelengthGrid): boolean {
  return one.startNm === other.startNm && one.stepNm === other.stepNm && one.count === other.count;
}

/**
 * A spectrum of the same value at every wavelength, such as the perfect diffuser (1).
 * @throws RangeError when the grid is empty or its step is not positive.
 */
export function flatSpectrum(grid: WavelengthGrid, value: number): Spectrum {
  if (!(grid.count > 0)) throw domainError("count of wavelengths", grid.count, "count > 0");
  if (!(grid.stepNm > 0)) throw domainError("wavelength step", grid.stepNm, "step > 0 nm");
  return { grid, values: Array.from({ length: grid.count }, () => value) };
}
