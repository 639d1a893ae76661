/**
 * The smoothest reflectance that has an XYZ (D65/10): a stand-in where a search by spectrum
 * starts from a colour that no instrument has read.
 *
 *     minimise Sum (R[i + 1] - R[i])^2, subject to Sum w R = XYZ
 *
 * A quadratic with three linear conditions, in closed form: R = A^-1 W^T (W A^-1 W^T)^-1 XYZ,
 * A the matrix of the sum with a hair added, since a flat spectrum costs nothing.
 */
import { at } from "../../quantities/at.ts";
import { summationWeights } from "../../colorimetry/summation-weights.ts";
import type { Xyz } from "../../colorimetry/viewing.ts";
import type { WavelengthGrid } from "../../quantities/spectrum.ts";
import { solved } from "./small-system.ts";

/** What is left of a reflectance factor [1] that no surface has. */
const [LEAST, MOST] = [0.004, 0.98];
const HAIR = 1e-6;

/** @returns reflectance factors [1], kept within what paint can be, so that XYZ is met only by what can. */
export function smoothSpectrum(xyz: Xyz, grid: WavelengthGrid): number[] {
  const { X, Y, Z } = summationWeights(grid, "D65/10");
  const columns = [X, Y, Z].map((weights) => tridiagonal(weights));
  const system = [X, Y, Z].map((weights) =>
    columns.map((column) => weights.reduce((sum, w, i) => sum + w * at(column, i), 0)),
  );
  const [a = 0, b = 0, c = 0] = solved(system, [xyz.X, xyz.Y, xyz.Z]) ?? [];
  return Array.from({ length: grid.count }, (_, i) => {
    const value = a * at(at(columns, 0), i) + b * at(at(columns, 1), i) + c * at(at(columns, 2), i);
    return Math.min(Math.max(value, LEAST), MOST);
  });
}

/** A^-1 times a column, by Thomas' sweep. */
function tridiagonal(right: ArrayLike<number>): number[] {
  const n = right.length;
  const diagonal = (i: number): number => (i === 0 || i === n - 1 ? 1 : 2) + HAIR;
  const upper = new Float64Array(n);
  const swept = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const pivot = diagonal(i) + (i > 0 ? at(upper, i - 1) : 0);
    upper[i] = -1 / pivot;
    swept[i] = (at(right, i) + (i > 0 ? at(swept, i - 1) : 0)) / pivot;
  }
  const values = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--)
    values[i] = at(swept, i) - (i < n - 1 ? at(upper, i) * at(values, i + 1) : 0);
  return values;
}
