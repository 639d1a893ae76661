import { deltaE00 } from "../colorimetry/difference.ts";
import { spectrumLab } from "../colorimetry/spectrum-lab.ts";
import { wavelengthNm, type Spectrum } from "../quantities/spectrum.ts";
import type { Complaint } from "../diagnostics/complaint.ts";
import { averaged } from "./readings/averaged.ts";

/**
 * How far one reading may lie from the mean of the others [Delta-E00, D65/10] before it is doubted, and
 * before it is no reading of the same paint. Our own limits: a paint drawn down again comes within 1.
 */
const REPLICATES_APART = { doubted: 2.5, another: 6 } as const;

/** How many times [1] both its neighbours, or a part of both, a value at one wavelength can't be, and by how much at least; and how many times the lower the higher of two values that lie level may be. */
const SPIKE = { times: 3, least: 0.02, levelTimes: 1.3 } as const;

/** Readings that are averaged though they lie far apart: told of the one farthest from the mean of the others. */
export function replicateComplaint(
  names: readonly string[],
  spectra: readonly Spectrum[],
): Complaint | undefined {
  if (spectra.length < 2) return undefined;
  const distances = spectra.map((spectrum, i) =>
    deltaE00(spectrumLab(spectrum), spectrumLab(averaged(spectra.toSpliced(i, 1)).mean)),
  );
  const largest = Math.max(...distances);
  if (largest <= REPLICATES_APART.doubted) return undefined;
  const name = names[distances.indexOf(largest)] ?? "";
  const isAnother = largest > REPLICATES_APART.another;
  return {
    severity: isAnother ? "error" : "warning",
    rule: "records/replicates-apart",
    message: `The readings averaged here lie far apart: ${name} is Delta-E00 ${largest.toFixed(1)} from ${spectra.length === 2 ? "the other" : "the mean of the others"}`,
    actual: `Delta-E00 ${largest.toFixed(1)}`,
    expected: `readings of one paint, within Delta-E00 ${REPLICATES_APART.doubted}`,
    hint: `is ${name} another drawdown?`,
  };
}

/** The wavelength [nm] at which one value stands out of its neighbours as no paint's does; undefined where none does. */
export function spikeNm({ grid, values }: Spectrum): number | undefined {
  const index = values.findIndex((value, i) => {
    const beside = neighbours(values, i);
    if (beside.length < 2) return false;
    const [low, high] = [Math.min(...beside), Math.max(...beside)];
    // Towards violet and red some spectra fall off steeply: an end is held against neighbours that lie level.
    if (isAtEnd(values, i) && high > SPIKE.levelTimes * low) return false;
    return (
      (value > SPIKE.times * high && value - high > SPIKE.least) ||
      (value < low / SPIKE.times && low - value > SPIKE.least)
    );
  });
  return index < 0 ? undefined : wavelengthNm(grid, index);
}

function isAtEnd(values: readonly number[], i: number): boolean {
  return i === 0 || i === values.length - 1;
}

/** The values on both sides; of the first and the last the two next to it. */
function neighbours(values: readonly number[], i: number): number[] {
  const at = i === 0 ? [1, 2] : i === values.length - 1 ? [i - 1, i - 2] : [i - 1, i + 1];
  return at.flatMap((index) => values[index] ?? []);
}
