import { domainError } from "../diagnostics/diagnostic.ts";

/** Illuminant and observer [degree] that a colour is worked out for, named beside every XYZ and Lab. */
export const VIEWINGS = ["C/2", "D65/2", "D65/10", "D50/2", "A/10"] as const;
export type Viewing = (typeof VIEWINGS)[number];

/** Lamps that a colour is looked at by beside daylight, to the 10 degree observer; nothing is reported under them. */
export type LampViewing = "A/10" | "LED-B3/10" | "FL11/10";

/** Daylight and lamps to the 10 degree observer of CIE 2006, where a workshop goes by it. */
export type ConeViewing = "D65/2006" | "A/2006" | "LED-B3/2006" | "FL11/2006";

/** Every viewing that a spectrum can be summed for. */
export type SummedViewing = Viewing | LampViewing | ConeViewing;

/** Whose eyes a colour is judged by beside daylight: the 10 degree observer of 1964, or that of 2006. */
export const JUDGING_OBSERVERS = ["CIE 1964", "CIE 2006"] as const;
export type JudgingObserver = (typeof JUDGING_OBSERVERS)[number];

/** CIE tristimulus values [1]; Y of the perfect diffuser is 100. */
export interface Xyz {
  readonly X: number;
  readonly Y: number;
  readonly Z: number;
}

/** CIE 1976 L*, a*, b* [1]; L* of the perfect diffuser is 100. Means nothing without its {@link Viewing}. */
export interface Lab {
  readonly L: number;
  readonly a: number;
  readonly b: number;
}

/** Every viewing that a Lab may be stated for; no reading is worked out for the last three. */
export const LAB_VIEWINGS = [...VIEWINGS, "A/2", "C/10", "D50/10"] as const;
export type LabViewing = (typeof LAB_VIEWINGS)[number];

/** Viewings of a spectrum's own Lab: those, and daylight to the observer of 2006. */
export const SHOWN_VIEWINGS = [...LAB_VIEWINGS, "D65/2006"] as const;

/**
 * Tristimulus values of the perfect diffuser, as printed (two decimals); of the two lamps, and of
 * all lights to the observer of 2006, summed from the tables at 5 nm.
 * @source cie-15-2018 : white points
 * @source cie-170-2
 */
export const WHITE_POINTS: Readonly<Record<LabViewing | SummedViewing, Xyz>> = {
  "A/2": { X: 109.85, Y: 100, Z: 35.58 },
  "C/2": { X: 98.07, Y: 100, Z: 118.22 },
  "D50/2": { X: 96.42, Y: 100, Z: 82.51 },
  "D65/2": { X: 95.04, Y: 100, Z: 108.88 },
  "A/10": { X: 111.14, Y: 100, Z: 35.2 },
  "C/10": { X: 97.29, Y: 100, Z: 116.14 },
  "D50/10": { X: 96.72, Y: 100, Z: 81.43 },
  "D65/10": { X: 94.81, Y: 100, Z: 107.32 },
  "LED-B3/10": { X: 103.35, Y: 100, Z: 68.01 },
  "FL11/10": { X: 103.86, Y: 100, Z: 65.61 },
  "D65/2006": { X: 94.72, Y: 100, Z: 107.17 },
  "A/2006": { X: 111.78, Y: 100, Z: 35.01 },
  "LED-B3/2006": { X: 103.89, Y: 100, Z: 68.89 },
  "FL11/2006": { X: 104.7, Y: 100, Z: 66.46 },
};

/** @throws RangeError naming the first of a colour's numbers that is NaN or infinite. */
export function requireFinite(subject: string, numbers: readonly number[]): void {
  for (const number of numbers) {
    if (!Number.isFinite(number)) throw domainError(subject, number, "a finite number");
  }
}
