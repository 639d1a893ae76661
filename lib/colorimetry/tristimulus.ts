import { domainError } from "../diagnostics/diagnostic.ts";
import { wavelengthNm, type Spectrum, type WavelengthGrid } from "../quantities/spectrum.ts";
import { naturalSpline } from "./cubic-spline.ts";
import { cieTable } from "./cie-table.ts";
import { WHITE_POINTS, type Viewing, type Xyz } from "./viewing.ts";

/** Lowest and highest reflectance factor [1] that an accepted reading holds. */
const REFLECTANCE_MIN = -0.005;
const REFLECTANCE_MAX = 1.2;

/** Coarsest step [nm] at which the product of illuminant, observer and reflectance is summed. */
const SUMMATION_STEP_NM = 5;

/** What each reflectance factor of a grid adds to X, Y and Z; shape (count) each. */
interface Weights {
  readonly X: Float64Array;
  readonly Y: Float64Array;
  readonly Z: Float64Array;
}

/** Worked out once a grid and viewing: a reading to every notation has to stay under half a millisecond. */
const weightsByGrid = new Map<string, Weights>();

/**
 * Tristimulus values of a reading, by summation over its own grid.
 *
 *     X = k Sum R(l) S(l) x(l), likewise Y, Z
 *
 * The tables of illuminant and observer are interpolated between their 10 nm rows,
 * and a reading coarser than 5 nm is splined to steps of 5 nm or a little less;
 * past the ends of a reading its end value holds. k is set for X, Y and Z apart, so
 * that the perfect diffuser read on the same grid is exactly the CIE white: with
 * one k, readings of 400-700 nm would give a neutral 0.1 of false a* and b*.
 *
 * @param spectrum reflectance factors [1], -0.005 <= R <= 1.2, on a grid of at most
 *   20 nm that covers 400-700 nm. Below 0 (a glossy black, gloss excluded) counts as 0.
 * @returns XYZ [1], each >= 0; Y of the perfect diffuser is 100.
 * @throws RangeError when the grid or a value is outside that domain, or NaN.
 * @validity Not for a fluorescent colour, whose reading depends on the instrument's lamp.
 *   Steps of 20 nm are an interpolation: say so beside the figure.
 * @source cie-15-2018 : calculation of tristimulus values, interpolation, extrapolation
 */
export function tristimulus(spectrum: Spectrum, viewing: Viewing): Xyz {
  const { grid, values } = spectrum;
  const weights = weightsFor(grid, viewing);
  if (values.length !== grid.count) throw domainError("count of reflectance factors", values.length, `${grid.count}, one a wavelength`);
  let [X, Y, Z] = [0, 0, 0];
  for (const [i, value] of values.entries()) {
    if (!(value >= REFLECTANCE_MIN && value <= REFLECTANCE_MAX)) {
      throw domainError(`reflectance factor at ${wavelengthNm(grid, i)} nm`, value, `${REFLECTANCE_MIN} <= R <= ${REFLECTANCE_MAX}`);
    }
    const R = Math.max(value, 0);
    X += R * (weights.X[i] ?? NaN);
    Y += R * (weights.Y[i] ?? NaN);
    Z += R * (weights.Z[i] ?? NaN);
  }
  // A spline through a lone spike dips below zero beside it.
  return { X: Math.max(X, 0), Y: Math.max(Y, 0), Z: Math.max(Z, 0) };
}

function weightsFor(grid: WavelengthGrid, viewing: Viewing): Weights {
  const key = `${viewing} ${grid.startNm} ${grid.stepNm} ${grid.count}`;
  const known = weightsByGrid.get(key);
  if (known !== undefined) return known;
  const weights = summationWeights(grid, viewing);
  weightsByGrid.set(key, weights);
  return weights;
}

function summationWeights(grid: WavelengthGrid, viewing: Viewing): Weights {
  const { startNm, stepNm, count } = grid;
  if (!(stepNm > 0 && stepNm <= 20)) throw domainError("wavelength step", stepNm, "0 < step <= 20 nm");
  if (!(startNm <= 400)) throw domainError("first wavelength", startNm, "first <= 400 nm");
  const endNm = wavelengthNm(grid, count - 1);
  if (!(endNm >= 700)) throw domainError("last wavelength", endNm, "last >= 700 nm");

  const parts = Math.ceil(stepNm / SUMMATION_STEP_NM);
  const fineStepNm = stepNm / parts;
  const table = cieTable(viewing);
  const first = -Math.floor((startNm - table.startNm) / fineStepNm);
  const last = Math.floor((table.endNm - startNm) / fineStepNm);
  const shares = Array.from({ length: count }, (_, i) =>
    naturalSpline(0, parts, Array.from({ length: count }, (__, j) => (i === j ? 1 : 0))));

  const sums = { X: new Float64Array(count), Y: new Float64Array(count), Z: new Float64Array(count) };
  const white = { X: 0, Y: 0, Z: 0 };
  for (let k = first; k <= last; k++) {
    const product = table.at(startNm + k * fineStepNm);
    for (const channel of ["X", "Y", "Z"] as const) {
      white[channel] += product[channel];
      for (const [i, share] of shares.entries()) sums[channel][i] = (sums[channel][i] ?? 0) + share(k) * product[channel];
    }
  }
  const scaled = (channel: keyof Xyz): Float64Array => sums[channel].map((sum) => (sum * WHITE_POINTS[viewing][channel]) / white[channel]);
  return { X: scaled("X"), Y: scaled("Y"), Z: scaled("Z") };
}
