import { domainError } from "../diagnostics/diagnostic.ts";
import { wavelengthNm, type Spectrum, type WavelengthGrid } from "../quantities/spectrum.ts";
import { at } from "../quantities/at.ts";

/**
 * Standard deviations of what a reading errs by, in three layers: what the calibration
 * of an instrument carries into all readings, what moves one reading as a whole, and what
 * falls on each wavelength by itself. A `zero` and a `floor` are reflectance factors [1];
 * a `scale`, a `tilt` and a `share` are shares of what is read [1].
 */
export interface ReadingNoise {
  /** `tilt` is what the white standard is off by at 400 and, the other way, at 700 nm. */
  readonly calibration: { readonly zero: number; readonly scale: number; readonly tilt: number };
  readonly reading: { readonly zero: number; readonly scale: number };
  readonly wavelength: { readonly floor: number; readonly share: number };
}

/**
 * A hand-held instrument in good order, where the workshop says nothing and has no replicates.
 * @source reading-noise-practice
 */
export const HAND_HELD_NOISE: ReadingNoise = {
  calibration: { zero: 0.0003, scale: 0.003, tilt: 0.0015 },
  reading: { zero: 0.0003, scale: 0.003 },
  wavelength: { floor: 0.0002, share: 0.001 },
};

/** As many sets of two as the usual noise counts for, beside a workshop's own replicates. */
const PRIOR_DEGREES = 6;

/**
 * Noise of an instrument of which one figure is stated: half of the variance common to
 * all wavelengths, half on each by itself.
 *
 * @param uncertainty standard uncertainty of a reflectance factor [1], >= 0.
 */
export function statedNoise(uncertainty: number): ReadingNoise {
  if (!(uncertainty >= 0 && uncertainty < Infinity))
    throw domainError("uncertainty of a reflectance factor", uncertainty, ">= 0");
  const half = uncertainty / Math.SQRT2;
  return {
    calibration: { zero: half, scale: 0, tilt: 0 },
    reading: { zero: 0, scale: 0 },
    wavelength: { floor: half, share: 0 },
  };
}

/** Noise of the mean of `count` readings: the calibration stays in it whole. */
export function noiseOfMean(noise: ReadingNoise, count: number): ReadingNoise {
  if (!(count >= 1)) throw domainError("count of readings", count, "count >= 1");
  return scaledNoise(noise, 1 / Math.sqrt(count), 1 / Math.sqrt(count));
}

/**
 * Noise of a workshop by its own replicates: the usual noise, its two layers that replicates
 * show scaled to what they show, and drawn toward the usual while they are few.
 *
 *     k^2 = (nu0 + Sum d^2 / sigma^2) / (nu0 + nu)
 *
 * Each wavelength's own noise is told by second differences over wavelength, which a shift
 * of the whole reading leaves alone; what remains of the deviations is the reading's.
 * Replicates say nothing of the calibration that they share. `k` is told to a tenth: some twenty
 * sets know it no better, and one set more is not to move whatever else the instrument read.
 *
 * @param sets all of one instrument: readings of one film or of one paint drawn down again, two or
 *   more a set, one grid a set.
 * @returns noise of a single reading.
 */
export function replicateNoise(
  sets: readonly (readonly Spectrum[])[],
  usual: ReadingNoise = HAND_HELD_NOISE,
): ReadingNoise {
  let [freedom, ofWavelength, ofReading] = [0, 0, 0];
  for (const spectra of sets) {
    const [first] = spectra;
    if (first === undefined || spectra.length < 2 || first.values.length < 3) continue;
    const degrees = spectra.length - 1;
    const means = first.values.map(
      (_, i) => spectra.reduce((sum, { values }) => sum + at(values, i), 0) / spectra.length,
    );
    const own = means.map((R) => wavelengthVariance(usual, R));
    const common = means.map((R) => readingVariance(usual, R));
    const deviations = spectra.map(({ values }) => values.map((R, i) => R - at(means, i)));
    const rough = meanOf(
      deviations.flatMap((d) =>
        d.slice(2).map((_, i) => {
          const second = at(d, i) - 2 * at(d, i + 1) + at(d, i + 2);
          return second ** 2 / (at(own, i) + 4 * at(own, i + 1) + at(own, i + 2));
        }),
      ),
    );
    const whole = meanOf(
      deviations.flatMap((d) =>
        d.map((deviation, i) => {
          const square = (deviation ** 2 * spectra.length) / degrees;
          return Math.max(0, square - rescaled(rough, spectra.length) * at(own, i)) / at(common, i);
        }),
      ),
    );
    freedom += degrees;
    ofWavelength += degrees * rescaled(rough, spectra.length);
    ofReading += degrees * whole;
  }
  const factor = (squares: number): number =>
    Math.max(1, Math.round(10 * Math.sqrt((PRIOR_DEGREES + squares) / (PRIOR_DEGREES + freedom)))) /
    10;
  return scaledNoise(usual, factor(ofReading), factor(ofWavelength));
}

/**
 * Standard uncertainty of each reflectance factor [1], all layers together.
 * @returns shape of the spectrum's values, each > 0 where any layer is.
 */
export function reflectanceSigma(noise: ReadingNoise, { grid, values }: Spectrum): number[] {
  return values.map((value, i) => {
    const R = Math.max(value, 0);
    return Math.sqrt(
      noise.calibration.zero ** 2 +
        (noise.calibration.scale * R) ** 2 +
        (noise.calibration.tilt * R * tiltAt(grid, i)) ** 2 +
        readingVariance(noise, R) +
        wavelengthVariance(noise, R),
    );
  });
}

/** How far along the white standard's tilt a wavelength lies: 1 at 400, 0 at 550, -1 at 700 nm, and no farther. */
export function tiltAt(grid: WavelengthGrid, index: number): number {
  return Math.min(Math.max((550 - wavelengthNm(grid, index)) / 150, -1), 1);
}

function readingVariance({ reading: { zero, scale } }: ReadingNoise, R: number): number {
  return zero ** 2 + (scale * R) ** 2;
}

function wavelengthVariance({ wavelength: { floor, share } }: ReadingNoise, R: number): number {
  return floor ** 2 + (share * R) ** 2;
}

function scaledNoise(noise: ReadingNoise, reading: number, wavelength: number): ReadingNoise {
  return {
    calibration: noise.calibration,
    reading: { zero: noise.reading.zero * reading, scale: noise.reading.scale * reading },
    wavelength: {
      floor: noise.wavelength.floor * wavelength,
      share: noise.wavelength.share * wavelength,
    },
  };
}

/** A mean square about the mean of n, as a variance. */
function rescaled(meanSquare: number, n: number): number {
  return (meanSquare * n) / (n - 1);
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
