import { domainError } from "../diagnostics/diagnostic.ts";
import { naturalSpline } from "./cubic-spline.ts";
import { CONE_OBSERVER } from "./cone-observer.ts";
import { LAMP_ILLUMINANTS } from "./lamp-illuminants.ts";
import { ILLUMINANT_END_NM, STANDARD_ILLUMINANTS } from "./standard-illuminants.ts";
import { STANDARD_OBSERVERS } from "./standard-observers.ts";
import type { SummedViewing, Xyz } from "./viewing.ts";
import { at } from "../quantities/at.ts";

/** Illuminant times colour-matching functions, between the tabulated wavelengths as well. */
export interface CieTable {
  readonly startNm: number;
  readonly endNm: number;
  /** S(l) x(l), S(l) y(l), S(l) z(l) [1, not scaled] at a wavelength [nm] within the ends. */
  readonly at: (nm: number) => Xyz;
}

/** Below this [nm] the carried tables of D50 and D65 drift, and no observer sees to speak of. */
const START_NM = 380;

/** Where the functions of CIE 2006 begin [nm]. */
const CONE_START_NM = 390;

const OBSERVER_COLUMNS = { 2: [1, 2, 3], 10: [4, 5, 6] } as const;
const ILLUMINANT_COLUMNS = { A: 1, C: 2, D50: 3, D65: 4 } as const;
const LAMP_COLUMNS = { "LED-B3": 1, FL11: 2 } as const;

type Illuminant = keyof typeof ILLUMINANT_COLUMNS;
type LampIlluminant = keyof typeof LAMP_COLUMNS;

const PARTS: Readonly<
  Record<SummedViewing, readonly [Illuminant | LampIlluminant, 2 | 10 | 2006]>
> = {
  "C/2": ["C", 2],
  "D65/2": ["D65", 2],
  "D65/10": ["D65", 10],
  "D50/2": ["D50", 2],
  "A/10": ["A", 10],
  "LED-B3/10": ["LED-B3", 10],
  "FL11/10": ["FL11", 10],
  "D65/2006": ["D65", 2006],
  "A/2006": ["A", 2006],
  "LED-B3/2006": ["LED-B3", 2006],
  "FL11/2006": ["FL11", 2006],
};

/**
 * The tables of a viewing between their 10 nm rows. CIE defines the D illuminants
 * as straight lines between rows; A and C are smooth curves and take a cubic
 * spline like the observers (straight lines cost C up to 0.08 in Delta-E00).
 * @source cie-15-2018 : interpolation of tabulated data
 */
export function cieTable(viewing: SummedViewing): CieTable {
  const [illuminant, observer] = PARTS[viewing];
  const startNm = observer === 2006 ? CONE_START_NM : START_NM;
  const [x, y, z] = observerFunctions(observer);
  if (x === undefined || y === undefined || z === undefined)
    throw new Error("The observer has not three functions");
  const { endNm, power } = isLamp(illuminant) ? lampPower(illuminant) : illuminantPower(illuminant);
  return {
    startNm,
    endNm,
    at: (nm) => {
      if (!(nm >= startNm && nm <= endNm))
        throw domainError("wavelength", nm, `${startNm} <= wavelength <= ${endNm} nm`);
      const S = power(nm);
      // Between near-zero rows a spline dips below zero; no colour-matching function does.
      return { X: S * Math.max(x(nm), 0), Y: S * Math.max(y(nm), 0), Z: S * Math.max(z(nm), 0) };
    },
  };
}

/** x, y and z over wavelength [nm]. */
function observerFunctions(observer: 2 | 10 | 2006): ((nm: number) => number)[] {
  return observer === 2006
    ? ([1, 2, 3] as const).map((column) =>
        naturalSpline(
          CONE_START_NM,
          5,
          CONE_OBSERVER.map((row) => row[column]),
        ),
      )
    : OBSERVER_COLUMNS[observer].map((column) =>
        naturalSpline(
          360,
          10,
          STANDARD_OBSERVERS.map((row) => row[column]),
        ),
      );
}

/** Relative power over wavelength, and the last wavelength [nm] that it is known at. */
interface Power {
  readonly endNm: number;
  readonly power: (nm: number) => number;
}

function isLamp(illuminant: Illuminant | LampIlluminant): illuminant is LampIlluminant {
  return illuminant in LAMP_COLUMNS;
}

function illuminantPower(illuminant: Illuminant): Power {
  const endNm = ILLUMINANT_END_NM[illuminant];
  const between = illuminant === "A" || illuminant === "C" ? naturalSpline : linear;
  const rows = STANDARD_ILLUMINANTS.filter(([nm]) => nm <= endNm);
  const column = rows.map((row) => row[ILLUMINANT_COLUMNS[illuminant]]);
  return { endNm, power: between(360, 10, column) };
}

/** Straight between rows at 5 nm: a spline would swing beside a tube's lines. */
function lampPower(lamp: LampIlluminant): Power {
  const column = LAMP_ILLUMINANTS.map((row) => row[LAMP_COLUMNS[lamp]]);
  return { endNm: 780, power: linear(380, 5, column) };
}

function linear(start: number, step: number, values: readonly number[]): (x: number) => number {
  return (x) => {
    const left = Math.min(Math.floor((x - start) / step), values.length - 2);
    const t = (x - start) / step - left;
    return (1 - t) * at(values, left) + t * at(values, left + 1);
  };
}
