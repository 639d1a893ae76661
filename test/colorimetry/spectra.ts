import {
  wavelengthsNm,
  type Spectrum,
  type WavelengthGrid,
} from "../../lib/quantities/spectrum.ts";

/** Smooth spectra of known formula: reflectance factor at a wavelength [nm]. */
export type Curve = (nm: number) => number;

/** Rises from `low` to `high` around `centreNm`, as a yellow or red does. */
export const edge =
  (centreNm: number, widthNm: number, low: number, high: number): Curve =>
  (nm) =>
    low + (high - low) / (1 + Math.exp((centreNm - nm) / widthNm));

/** Peaks by `height` over `low`, as a blue or green does. */
export const peak =
  (centreNm: number, widthNm: number, low: number, height: number): Curve =>
  (nm) =>
    low + height * Math.exp(-0.5 * ((nm - centreNm) / widthNm) ** 2);

export const CURVES = {
  "red edge": edge(590, 12, 0.04, 0.85),
  "yellow edge": edge(500, 20, 0.04, 0.85),
  "blue peak": peak(460, 45, 0.04, 0.6),
  "green peak": peak(530, 30, 0.04, 0.6),
  "warm black": edge(600, 60, 0.004, 0.012),
} as const satisfies Readonly<Record<string, Curve>>;

export type CurveName = keyof typeof CURVES;

export const gridOf = (startNm: number, endNm: number, stepNm: number): WavelengthGrid => ({
  startNm,
  stepNm,
  count: Math.round((endNm - startNm) / stepNm) + 1,
});

export const sampled = (curve: Curve, grid: WavelengthGrid): Spectrum => ({
  grid,
  values: wavelengthsNm(grid).map(curve),
});
