import { hueChromaOfLab, type HueChroma } from "./munsell-inversion.ts";
import { RENOTATION_TO_VALUE } from "./munsell-toward-white.ts";
import { munsellValue } from "./munsell-value.ts";
import { labToXyz } from "./lab.ts";
import type { Lab } from "./viewing.ts";

/** Standard uncertainty of a Munsell notation: value [1], chroma [1], hue [hundred steps, at most 50]. */
export interface MunsellUncertainty {
  readonly value: number;
  readonly chroma: number;
  readonly hueNumber: number;
}

/**
 * How far interpolation in LCHab lies from interpolation in x, y (D1535), on 876
 * surface colours: 95 % are nearer than this. Value is the same in both.
 * @source munsell-npm : against an independent implementation of D1535 (derived)
 */
export const MUNSELL_INTERPOLATION = [
  { valueFrom: 1, valueTo: 2, chroma95: 0.26, hueNumber95: 0.74 },
  { valueFrom: 2, valueTo: 4, chroma95: 0.12, hueNumber95: 0.36 },
  { valueFrom: 4, valueTo: 6, chroma95: 0.1, hueNumber95: 0.18 },
  { valueFrom: 6, valueTo: 9, chroma95: 0.04, hueNumber95: 0.15 },
] as const;

export type MunsellInterpolation = (typeof MUNSELL_INTERPOLATION)[number];

/**
 * The row for a value; none below V 1, where nothing was compared. Above V 9 hue and chroma
 * are those of a colour of value 9. A value on a limit takes the larger uncertainty.
 */
export function munsellInterpolation(value: number): MunsellInterpolation | undefined {
  return MUNSELL_INTERPOLATION.find(
    ({ valueFrom, valueTo }) =>
      Math.min(value, RENOTATION_TO_VALUE) >= valueFrom &&
      Math.min(value, RENOTATION_TO_VALUE) <= valueTo,
  );
}

/**
 * Uncertainty of a Munsell notation from that of its Lab alone, without the
 * interpolation: whether a hue can be claimed at all depends on this.
 *
 * @param lab under illuminant C, 2 degree, 0 <= L* <= 100.
 * @param labUncertainty standard uncertainty of each coordinate, >= 0.
 * @param at hue and chroma of that Lab, as munsell-inversion.ts gives them.
 */
export function munsellNoise(lab: Lab, labUncertainty: Lab, at: HueChroma): MunsellUncertainty {
  const shifted = [
    hueChromaOfLab({ ...lab, a: lab.a + labUncertainty.a }),
    hueChromaOfLab({ ...lab, b: lab.b + labUncertainty.b }),
    hueChromaOfLab({ ...lab, L: Math.max(lab.L - labUncertainty.L, 0) }),
  ];
  const chroma = Math.hypot(
    ...shifted.map((other) => (other === undefined ? at.chroma : other.chroma - at.chroma)),
  );
  const hueNumber = Math.hypot(
    ...shifted.map((other) =>
      other === undefined ? 50 : hueDistance(other.hueNumber, at.hueNumber),
    ),
  );
  const value = (valueAt(lab.L + labUncertainty.L) - valueAt(lab.L - labUncertainty.L)) / 2;
  return { value, chroma, hueNumber: Math.min(hueNumber, 50) };
}

/** Noise and interpolation (half of its 95 %) in quadrature; without a row for the value, noise alone. */
export function munsellUncertainty(value: number, noise: MunsellUncertainty): MunsellUncertainty {
  const row = munsellInterpolation(value);
  if (row === undefined) return noise;
  return {
    value: noise.value,
    chroma: Math.hypot(noise.chroma, row.chroma95 / 2),
    hueNumber: Math.min(Math.hypot(noise.hueNumber, row.hueNumber95 / 2), 50),
  };
}

function hueDistance(one: number, other: number): number {
  const apart = Math.abs(one - other);
  return Math.min(apart, 100 - apart);
}

function valueAt(L: number): number {
  return munsellValue(labToXyz({ L: Math.min(Math.max(L, 0), 100), a: 0, b: 0 }, "C/2").Y);
}
