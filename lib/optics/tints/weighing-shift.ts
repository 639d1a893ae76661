import type { Spectrum } from "../../quantities/spectrum.ts";
import { spectrumOnGrid } from "../fit/common-grid.ts";
import type { Measurement } from "../fit/measurement.ts";
import { DRAWDOWN_NOISE } from "../fit/reading-noise.ts";
import { absorptionScatteringRatio } from "../kubelka-munk.ts";

/** Reflectance factors [1] beyond which the function of Kubelka and Munk runs away. */
const [LEAST, MOST] = [0.002, 0.97];

/**
 * By how much one standard uncertainty of weighing moves a let-down's reading: between
 * its white and its masstone, with F = K/S as read,
 *
 *     dF/d ln r = (F - Fw) (Fm - F) / (Fm - Fw),   dR = dF / F'(R)
 *
 * which is what F = (Fw + r t Fm) / (1 + r t) makes of a mass ratio r, t being the colour's
 * scattering against the white's. Where the masstone is not known as a spectrum, or does not
 * lie beyond the let-down, it counts as far away; an unknown white as one that absorbs nothing.
 *
 * @param tint the let-down; white and masstone count where they were read in its geometry.
 * @param relative standard uncertainty of the mass ratio, relative [1].
 * @returns changes of reflectance factor [1], shape of the let-down's values, all of one weighing.
 * @validity A let-down that hides; the surface is left in, which costs little of a small change.
 * @source duncan-1940
 */
export function weighingShift(
  tint: Measurement,
  white: Measurement | undefined,
  masstone: Measurement | undefined,
  relative: number = DRAWDOWN_NOISE.massRatio,
): number[] {
  const { grid, values } = tint.spectrum;
  const alike = (other: Measurement | undefined): Spectrum | undefined =>
    other?.geometry === tint.geometry ? spectrumOnGrid(other.spectrum, grid) : undefined;
  const [ofWhite, ofMasstone] = [alike(white), alike(masstone)];
  return values.map((value, i) => {
    const R = within(value);
    const F = absorptionScatteringRatio(R);
    const Fw = ratioAt(ofWhite, i) ?? 0;
    const Fm = ratioAt(ofMasstone, i);
    const room = Fm === undefined ? 1 : (Fm - F) / (Fm - Fw);
    const slope = -(1 - R * R) / (2 * R * R);
    return (relative * (F - Fw) * (room > 0 && room < 1 ? room : 1)) / slope;
  });
}

function ratioAt(spectrum: Spectrum | undefined, index: number): number | undefined {
  const value = spectrum?.values[index];
  return value === undefined ? undefined : absorptionScatteringRatio(within(value));
}

function within(R: number): number {
  return Math.min(Math.max(R, LEAST), MOST);
}
