import { domainError } from "../diagnostics/diagnostic.ts";
import type { Spectrum, WavelengthGrid } from "../quantities/spectrum.ts";
import { summationWeights } from "./summation-weights.ts";
import { tristimulus } from "./tristimulus.ts";
import { WHITE_POINTS, type Lab, type Viewing, type Xyz } from "./viewing.ts";

/**
 * Standard uncertainty of a reflectance factor [1] where the reading does not say:
 * the middle of the 0.0002-0.001 usual with hand-held instruments. An estimate.
 * @source reading-noise-practice
 */
export const ASSUMED_REFLECTANCE_UNCERTAINTY = 0.0005;

/**
 * What the step of a grid costs, root mean square in L*, a*, b* over smooth spectra:
 * edges, peaks and a dozen dry pigments summed with the carried tables against the
 * printed 5 nm tables, over five viewings; the largest figure of the five.
 * @source cie-15-2004 : tables at 5 nm (derived)
 */
export const GRID_UNCERTAINTY: readonly { readonly stepMaxNm: number; readonly lab: Lab }[] = [
  { stepMaxNm: 10, lab: { L: 0.01, a: 0.035, b: 0.01 } },
  { stepMaxNm: 20, lab: { L: 0.01, a: 0.05, b: 0.03 } },
];

/** Standard uncertainty of L*, a*, b* from the step of a reading's grid alone. */
export function gridUncertainty(grid: WavelengthGrid): Lab {
  const row = GRID_UNCERTAINTY.find(({ stepMaxNm }) => grid.stepNm <= stepMaxNm);
  if (row === undefined || !(grid.stepNm > 0))
    throw domainError("wavelength step", grid.stepNm, "0 < step <= 20 nm");
  return row.lab;
}

/**
 * Standard uncertainty of L*, a*, b* of a reading: the noise of its reflectance
 * factors and the step of its grid, in quadrature, to first order.
 *
 * Half of the noise's variance is taken to be common to all wavelengths (an error
 * of the instrument's zero or white), half to fall on each by itself.
 *
 * @param reflectanceUncertainty standard uncertainty of a reflectance factor [1], >= 0.
 * @returns one standard uncertainty (about 68 %) of each coordinate.
 * @throws RangeError as {@link tristimulus} does, and for a negative or NaN uncertainty.
 * @validity Says nothing of how drawdowns of one batch differ: see {@link labSpread}.
 */
export function labUncertainty(
  spectrum: Spectrum,
  viewing: Viewing,
  reflectanceUncertainty: number = ASSUMED_REFLECTANCE_UNCERTAINTY,
): Lab {
  if (!(reflectanceUncertainty >= 0))
    throw domainError("uncertainty of a reflectance factor", reflectanceUncertainty, ">= 0");
  const white = WHITE_POINTS[viewing];
  const slopes = labSlopes(tristimulus(spectrum, viewing), white);
  const weights = summationWeights(spectrum.grid, viewing);
  const grid = gridUncertainty(spectrum.grid);
  const each = reflectanceUncertainty / Math.SQRT2;
  const uncertainty = (slope: Xyz, stepPart: number): number => {
    const common = slope.X * white.X + slope.Y * white.Y + slope.Z * white.Z;
    let squares = common ** 2;
    for (const [i, x] of weights.X.entries()) {
      squares +=
        (slope.X * x + slope.Y * (weights.Y[i] ?? NaN) + slope.Z * (weights.Z[i] ?? NaN)) ** 2;
    }
    return Math.hypot(each * Math.sqrt(squares), stepPart);
  };
  return {
    L: uncertainty(slopes.L, grid.L),
    a: uncertainty(slopes.a, grid.a),
    b: uncertainty(slopes.b, grid.b),
  };
}

/**
 * Standard uncertainty of the mean of several readings of one film or several
 * drawdowns: their standard deviation over the root of their count.
 *
 * @param labs at least two, under one viewing.
 * @throws RangeError when there are fewer than two.
 */
export function labSpread(labs: readonly Lab[]): Lab {
  if (!(labs.length >= 2)) throw domainError("count of readings", labs.length, "count >= 2");
  const ofMean = (key: keyof Lab): number => {
    const mean = labs.reduce((sum, lab) => sum + lab[key], 0) / labs.length;
    const squares = labs.reduce((sum, lab) => sum + (lab[key] - mean) ** 2, 0);
    return Math.sqrt(squares / (labs.length - 1) / labs.length);
  };
  return { L: ofMean("L"), a: ofMean("a"), b: ofMean("b") };
}

/** How L*, a*, b* each change with X, Y and Z. */
function labSlopes(xyz: Xyz, white: Xyz): Readonly<Record<keyof Lab, Xyz>> {
  const slope = (channel: keyof Xyz): number => {
    const t = xyz[channel] / white[channel];
    return (t > (6 / 29) ** 3 ? 1 / (3 * Math.cbrt(t) ** 2) : 841 / 108) / white[channel];
  };
  const [x, y, z] = [slope("X"), slope("Y"), slope("Z")];
  return {
    L: { X: 0, Y: 116 * y, Z: 0 },
    a: { X: 500 * x, Y: -500 * y, Z: 0 },
    b: { X: 0, Y: 200 * y, Z: -200 * z },
  };
}
