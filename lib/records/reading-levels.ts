import { parseMunsell } from "../colorimetry/munsell-notation.ts";
import type { Reading } from "./records.ts";

/** A reading as numbers that are compared one by one with those of another of the same scale. */
export interface Levels {
  /** Equal where two readings compare: one grid and gloss, or lightness alone. */
  readonly scale: string;
  readonly isSpectral: boolean;
  /** Reflectance factors [1], or L* / 100. */
  readonly values: readonly number[];
  /** Difference of means [1] that no noise makes. */
  readonly least: number;
}

/** Levels of a reading: its spectrum, else its lightness, of a chip ten times its Munsell value. */
export function levelsOf(reading: Reading | undefined): Levels | undefined {
  if (reading === undefined) return undefined;
  if (reading.form === "spectrum") {
    const { spectrum, geometry } = reading;
    const gloss = geometry === "d/8 included" ? "included" : "shut out";
    const { startNm, stepNm, count } = spectrum.grid;
    return {
      scale: `${gloss} ${startNm} ${stepNm} ${count}`,
      isSpectral: true,
      values: spectrum.values,
      least: 0.005,
    };
  }
  const lightness =
    reading.form === "lab" ? reading.lab.L / 10 : parseMunsell(reading.munsell)?.value;
  return lightness === undefined
    ? undefined
    : {
        scale: "lightness",
        isSpectral: false,
        values: [lightness / 10],
        least: reading.form === "lab" ? 0.01 : 0.05,
      };
}

/** Mean of the values of a reading's levels. */
export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
