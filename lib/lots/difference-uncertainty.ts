/** How far a difference of two readings may be off: by the noise of each, or what the workshop's replicates show. */
import { deltaE00 } from "../colorimetry/difference.ts";
import { HAND_HELD_NOISE, tiltAt, type ReadingNoise } from "../colorimetry/reading-noise.ts";
import { spectrumLab } from "../colorimetry/spectrum-lab.ts";
import type { Measurement } from "../optics/fit/measurement.ts";
import { TELLING_DEGREES, type ReplicateSpread } from "./replicate-spread.ts";

/** A reading with the day of the calibration that it was read under, YYYY-MM-DD, where that is known. */
export interface LotReading extends Measurement {
  readonly calibration?: string;
}

/** What replicates of the workshop show: of colour [Delta-E*ab], of strength [%]. */
export interface WorkshopSpread {
  readonly colour?: ReplicateSpread;
  readonly strengthPercent?: ReplicateSpread;
}

/** Expanded uncertainties are of coverage factor 2. */
const COVERAGE = 2;

/**
 * Of a difference of two readings [Delta-E00], expanded. What the instrument's calibration errs by is
 * in both and falls out, unless they are known to have been read under two.
 */
export function colourUncertainty(
  [standard, lot]: readonly [LotReading | undefined, LotReading | undefined],
  { colour }: WorkshopSpread,
): number {
  const both = [standard, lot].filter((reading) => reading !== undefined);
  const sumOf = (variance: (reading: LotReading) => number): number =>
    both.reduce((sum, reading) => sum + variance(reading), 0);
  const repeated =
    colour !== undefined && colour.degrees >= TELLING_DEGREES
      ? 2 * colour.standardDeviation ** 2
      : sumOf(readingVariance);
  const calibrated = areOfTwoCalibrations(standard, lot) ? sumOf(calibrationVariance) : 0;
  return COVERAGE * Math.sqrt(repeated + calibrated);
}

export function areOfTwoCalibrations(
  one: LotReading | undefined,
  other: LotReading | undefined,
): one is LotReading {
  return (
    one?.calibration !== undefined &&
    other?.calibration !== undefined &&
    one.calibration !== other.calibration
  );
}

/** Variance of one reading's colour [Delta-E00 squared], by what moves it as a whole. */
function readingVariance(reading: Measurement): number {
  const { reading: whole }: ReadingNoise = reading.noise ?? HAND_HELD_NOISE;
  return (
    movedBy(reading, (R) => R * (1 + whole.scale)) ** 2 +
    movedBy(reading, (R) => R + whole.zero) ** 2
  );
}

/** Variance of one reading's colour by what its calibration is off by [Delta-E00 squared]. */
function calibrationVariance(reading: Measurement): number {
  const { calibration }: ReadingNoise = reading.noise ?? HAND_HELD_NOISE;
  const { grid } = reading.spectrum;
  return (
    movedBy(reading, (R) => R * (1 + calibration.scale)) ** 2 +
    movedBy(reading, (R) => R + calibration.zero) ** 2 +
    movedBy(reading, (R, i) => R * (1 + calibration.tilt * tiltAt(grid, i))) ** 2
  );
}

/** How far a change of its reflectance moves a reading's colour [Delta-E00]. */
function movedBy(reading: Measurement, change: (R: number, i: number) => number): number {
  const { grid, values } = reading.spectrum;
  const changed = values.map((R, i) => Math.max(change(R, i), 0));
  return deltaE00(spectrumLab({ grid, values }), spectrumLab({ grid, values: changed }));
}

/** Relative standard uncertainty of K/S of a reading [1], where it absorbs most. @source kubelka-munk-1931 */
export function absorptionUncertainty(
  { spectrum, noise = HAND_HELD_NOISE }: Measurement,
  layer: "reading" | "calibration" = "reading",
): number {
  const R = Math.max(Math.min(...spectrum.values), 1e-3);
  const sigma = Math.hypot(noise[layer].zero, noise[layer].scale * R);
  // d(ln K/S)/dR = -(1 + R) / (R (1 - R))
  return ((1 + R) / (R * (1 - R))) * sigma;
}

/** Of a strength [%], expanded. */
export function strengthUncertainty(
  [of, lot]: readonly [LotReading, LotReading],
  { strengthPercent }: WorkshopSpread,
): number {
  const repeated =
    strengthPercent !== undefined && strengthPercent.degrees >= TELLING_DEGREES
      ? strengthPercent.standardDeviation
      : 100 * absorptionUncertainty(lot);
  const calibrated = areOfTwoCalibrations(of, lot)
    ? 100 * absorptionUncertainty(lot, "calibration")
    : 0;
  return COVERAGE * Math.SQRT2 * Math.hypot(repeated, calibrated);
}
