import { domainError } from "../diagnostics/diagnostic.ts";
import type { Spectrum, WavelengthGrid } from "../quantities/spectrum.ts";
import { HAND_HELD_NOISE, tiltAt, type ReadingNoise } from "./reading-noise.ts";
import { summationWeights } from "./summation-weights.ts";
import { tristimulus } from "./tristimulus.ts";
import { WHITE_POINTS, type Lab, type SummedViewing, type Xyz } from "./viewing.ts";
import { at } from "../quantities/at.ts";

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

/**
 * What L*, a* and b* of one drawdown differ by from place to place, each: standard uncertainty of one reading.
 * The halves over black and white of 22 paints that hid their chart tell it, gloss included and above L* 20, beside
 * {@link HAND_HELD_NOISE}; it is the least width within which 68 and 95 % of them lie. None of these paints was drawn
 * down twice, so that it says nothing of another drawdown, nor of another batch.
 * @source reconstructed-oil-paints
 */
export const PLACE_TO_PLACE = 0.11;

/** Standard uncertainty of L*, a*, b* from the step of a reading's grid alone. */
export function gridUncertainty(grid: WavelengthGrid): Lab {
  const row = GRID_UNCERTAINTY.find(({ stepMaxNm }) => grid.stepNm <= stepMaxNm);
  if (row === undefined || !(grid.stepNm > 0))
    throw domainError("wavelength step", grid.stepNm, "0 < step <= 20 nm");
  return row.lab;
}

/**
 * Standard uncertainty of L*, a*, b* of a reading: its noise, the step of its grid and what
 * its place on the drawdown does, in quadrature, to first order. Zero, scale and tilt move all wavelengths together, so
 * each goes through the sums as one spectrum; the rest falls on each wavelength by itself.
 *
 * @param noise as {@link ReadingNoise} says, every figure >= 0.
 * @param moved what else moves all wavelengths together by one standard uncertainty, such as the
 *   weighing of a let-down: changes of reflectance factor [1], each of the spectrum's shape.
 * @param place what each coordinate differs by from place to place, as {@link PLACE_TO_PLACE}; none of a spectrum
 *   that no place of a drawdown gave.
 * @returns one standard uncertainty (about 68 %) of each coordinate.
 * @throws RangeError as {@link tristimulus} does.
 * @validity Says nothing of how drawdowns of one batch differ: see {@link labSpread}.
 */
export function labUncertainty(
  spectrum: Spectrum,
  viewing: SummedViewing,
  noise: ReadingNoise = HAND_HELD_NOISE,
  moved: readonly (readonly number[])[] = [],
  place = 0,
): Lab {
  const { grid } = spectrum;
  const slopes = labSlopes(tristimulus(spectrum, viewing), WHITE_POINTS[viewing]);
  const weights = summationWeights(grid, viewing);
  const step = gridUncertainty(grid);
  const factors = spectrum.values.map((value) => Math.max(value, 0));
  const together = [
    factors.map(() => Math.hypot(noise.calibration.zero, noise.reading.zero)),
    factors.map((R) => R * Math.hypot(noise.calibration.scale, noise.reading.scale)),
    factors.map((R, i) => R * noise.calibration.tilt * tiltAt(grid, i)),
    ...moved,
  ];
  const alone = factors.map((R) => Math.hypot(noise.wavelength.floor, noise.wavelength.share * R));
  const uncertainty = (slope: Xyz, stepPart: number): number => {
    const byFactor = Array.from(
      weights.X,
      (x, i) => slope.X * x + slope.Y * at(weights.Y, i) + slope.Z * at(weights.Z, i),
    );
    const shifted = (errors: readonly number[]): number =>
      byFactor.reduce((sum, weight, i) => sum + weight * at(errors, i), 0);
    return Math.hypot(
      ...together.map(shifted),
      ...byFactor.map((weight, i) => weight * at(alone, i)),
      stepPart,
      place,
    );
  };
  return {
    L: uncertainty(slopes.L, step.L),
    a: uncertainty(slopes.a, step.a),
    b: uncertainty(slopes.b, step.b),
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
