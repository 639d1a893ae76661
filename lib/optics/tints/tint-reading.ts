/**
 * What a drawdown reads by the unknowns of a fit: E = (K + S)/Sw of the colour per
 * unit of mass ratio, and R-infinity, its internal masstone reflectance.
 *
 * @source kubelka-munk-1931, duncan-1940, saunderson-1942
 */
import type { SurfaceForm } from "../surface/surface.ts";

/** Limits of an internal reflectance that a fit tells from black and from white. */
export const DARKEST = 1e-4;
export const PALEST = 1 - 1e-6;
/** Share of absorption k and of scattering s in E, k + s = 1, with the slope of s by R-infinity. */
export interface Shares {
  readonly k: number;
  readonly s: number;
  readonly slope: number;
}

export function shares(rho: number): Shares {
  const sum = 1 + rho * rho;
  return {
    k: (1 - rho) ** 2 / sum,
    s: (2 * rho) / sum,
    slope: (2 * (1 - rho * rho)) / (sum * sum),
  };
}

/** d ln k / d ln R-infinity. */
export function absorptionSlope(rho: number): number {
  return (-2 * rho * (1 + rho)) / ((1 - rho) * (1 + rho * rho));
}

/** d ln s / d ln R-infinity. */
export function scatteringSlope(rho: number): number {
  return (1 - rho * rho) / (1 + rho * rho);
}

/** K/S of an internal reflectance, kept off black and white. */
export function keptRatio(internal: number): number {
  const R = keptReflectance(internal);
  return (1 - R) ** 2 / (2 * R);
}

/** An internal reflectance, kept off black and white. */
export function keptReflectance(internal: number): number {
  return Math.min(Math.max(internal, DARKEST), PALEST);
}

/** Internal reflectance behind a reading: internalReflectance with its form worked out once. */
export function internalOf({ offset, gain, k2 }: SurfaceForm, measured: number): number {
  const body = measured - offset;
  return body / (gain + k2 * body);
}

/** Reading of an internal reflectance: measuredReflectance with its form worked out once. */
export function readingOf({ offset, gain, k2 }: SurfaceForm, internal: number): number {
  return offset + (gain * internal) / (1 - k2 * internal);
}

/**
 * K/S of a mixture of r parts of colour to one of white, Sw = 1.
 *
 *     theta = (Kw + r K)/(1 + r S), K = k E, S = s E; the colour itself for r = Infinity
 */
export function mixtureRatio(
  massRatio: number,
  extinction: number,
  rho: number,
  whiteRatio: number,
): number {
  const { k, s } = shares(rho);
  if (massRatio === Infinity) return k / s;
  return (whiteRatio + massRatio * extinction * k) / (1 + massRatio * extinction * s);
}

/** A reading [1] with its slopes by ln E (the same as by ln r) and by ln R-infinity. */
export interface ReadingSlopes {
  reading: number;
  byLogE: number;
  byLogRho: number;
}

/**
 * Fill in reading and slopes of a let-down.
 * @param rE mass ratio times E.
 * @param shared shares of R-infinity, which all let-downs of a wavelength have in common.
 */
export function tintReading(
  slopes: ReadingSlopes,
  { offset, gain, k2 }: SurfaceForm,
  rE: number,
  rho: number,
  { k, s, slope }: Shares,
  whiteRatio: number,
): void {
  const denominator = 1 + rE * s;
  const theta = (whiteRatio + rE * k) / denominator;
  // The slope by theta has no end at theta = 0, the perfect white.
  const root = Math.max(Math.sqrt(theta * (theta + 2)), 1e-9);
  const R = 1 / (1 + theta + root);
  const outer = 1 - k2 * R;
  const byTheta = (-R / root) * (gain / (outer * outer)) * (rE / denominator);
  slopes.reading = offset + (gain * R) / outer;
  slopes.byLogE = byTheta * (k - theta * s);
  slopes.byLogRho = -byTheta * rho * slope * (1 + theta);
}

/** Fill in reading and slopes of the masstone. */
export function masstoneReading(slopes: ReadingSlopes, form: SurfaceForm, rho: number): void {
  const outer = 1 - form.k2 * rho;
  slopes.reading = form.offset + (form.gain * rho) / outer;
  slopes.byLogE = 0;
  slopes.byLogRho = (rho * form.gain) / (outer * outer);
}
