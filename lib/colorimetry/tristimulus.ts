import { domainError } from "../diagnostics/diagnostic.ts";
import { wavelengthNm, type Spectrum } from "../quantities/spectrum.ts";
import { summationWeights } from "./summation-weights.ts";
import type { SummedViewing, Xyz } from "./viewing.ts";

/** Lowest and highest reflectance factor [1] that an accepted reading holds: of what fluoresces, light that it took in elsewhere too. */
const REFLECTANCE_MIN = -0.005;
const REFLECTANCE_MAX = 4;

/**
 * Tristimulus values of a reading, by summation over its own grid.
 *
 *     X = k Sum R(l) S(l) x(l), likewise Y, Z
 *
 * with the tables of illuminant and observer interpolated between their 10 nm
 * rows, and k set for each channel so that the perfect diffuser read on the same
 * grid is the CIE white (see summation-weights.ts).
 *
 * @param spectrum reflectance factors [1], -0.005 <= R <= 4, on a grid of at most
 *   20 nm that covers 400-700 nm. Below 0 (a glossy black, gloss excluded) counts as 0.
 * @returns XYZ [1], each >= 0; Y of the perfect diffuser is 100.
 * @throws RangeError when the grid or a value is outside that domain, or NaN.
 * @validity Of a fluorescent colour only under the light of the instrument's lamp.
 *   Steps over 10 nm are interpolated by a natural cubic spline: say so beside the figure.
 * @source cie-15-2018 : calculation of tristimulus values
 */
export function tristimulus(spectrum: Spectrum, viewing: SummedViewing): Xyz {
  const { grid, values } = spectrum;
  const weights = summationWeights(grid, viewing);
  if (values.length !== grid.count)
    throw domainError(
      "count of reflectance factors",
      values.length,
      `${grid.count}, one a wavelength`,
    );
  let [X, Y, Z] = [0, 0, 0];
  // By index, and each list at its own place: this is gone through more often than anything else.
  for (let i = 0; i < values.length; i++) {
    const value = values[i] ?? NaN;
    if (!(value >= REFLECTANCE_MIN && value <= REFLECTANCE_MAX)) {
      throw domainError(
        `reflectance factor at ${wavelengthNm(grid, i)} nm`,
        value,
        `${REFLECTANCE_MIN} <= R <= ${REFLECTANCE_MAX}`,
      );
    }
    const R = Math.max(value, 0);
    X += R * (weights.X[i] ?? 0);
    Y += R * (weights.Y[i] ?? 0);
    Z += R * (weights.Z[i] ?? 0);
  }
  // A spline through a lone spike dips below zero beside it, where Z sees nothing else.
  return { X: Math.max(X, 0), Y: Math.max(Y, 0), Z: Math.max(Z, 0) };
}
