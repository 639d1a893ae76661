import { domainError } from "../diagnostics/diagnostic.ts";
import type { StatementOf } from "../quantities/statement.ts";
import type { Spectrum } from "../quantities/spectrum.ts";
import { adaptedXyz } from "./adaptation.ts";
import { deltaE00 } from "./difference.ts";
import { labToLch, xyzToLab } from "./lab.ts";
import { byLamp, LIGHTS, worstLamp, type ByLamp, type Lamp } from "./lamps.ts";
import { spectrumLab } from "./spectrum-lab.ts";
import { tristimulus } from "./tristimulus.ts";
import type { JudgingObserver, Lab, SummedViewing } from "./viewing.ts";

/** From here on [Delta-E00] a colour shifts slightly, then clearly, in lamplight. Our own bands: no standard draws any. */
const SHIFTS_SLIGHTLY_FROM = 2;
const SHIFTS_CLEARLY_FROM = 4;

/** A change of lightness or chroma smaller than this [1] is not spoken of. */
const SPOKEN_OF_FROM = 1;

/** How a colour changes under the lamp that changes it most, beside its Delta-E00 under each. */
export interface LampShift extends ByLamp {
  readonly lamp: Lamp;
  readonly towards: "red" | "yellow" | "green" | "blue";
  readonly lightness: "lighter" | "darker" | "same";
  readonly chroma: "stronger" | "duller" | "same";
}

export type LamplightStatement =
  | StatementOf<"holds-in-lamplight", ByLamp>
  | StatementOf<"shifts-slightly-in-lamplight" | "shifts-clearly-in-lamplight", LampShift>;

export type LamplightRule = LamplightStatement["rule"];

/** What lamplight does to a colour. */
export interface Lamplight {
  /** Lab in daylight, D65. */
  readonly daylight: Lab;
  /** Lab under A as an eye used to it sees it, carried to D65 by CAT16. */
  readonly lamplight: Lab;
  /** Colour inconstancy under each lamp: Delta-E00 between daylight and the lamp. */
  readonly deltaE00: ByLamp;
  readonly statement: LamplightStatement;
}

/**
 * Colour inconstancy of a reading from daylight (D65) to lamps of today, all 10 degree.
 *
 * @param spectrum as {@link tristimulus} takes it.
 * @returns Labs in daylight and under A, Delta-E00 under each lamp, and a statement by the
 *   lamp of the largest: `holds-in-lamplight`, `shifts-slightly-in-lamplight` or
 *   `shifts-clearly-in-lamplight`.
 * @validity A strong colour shifts by 4-10 without being odd: adaptation models cover no
 *   more of it. One LED and one tube of many: another of the same name may differ.
 * @source li-2017, cie-15-2018, cie-170-2
 */
export function lamplight(spectrum: Spectrum, observer: JudgingObserver = "CIE 1964"): Lamplight {
  const { daylight: day, lamps } = LIGHTS[observer];
  const daylight = spectrumLab(spectrum, day);
  const seen = (viewing: SummedViewing): Lab =>
    xyzToLab(adaptedXyz(tristimulus(spectrum, viewing), viewing, day), day);
  const shifts = byLamp(observer, (viewing) => deltaE00(daylight, seen(viewing)));
  const lamp = worstLamp(shifts);
  return {
    daylight,
    lamplight: seen(lamps.incandescent),
    deltaE00: shifts,
    statement: lamplightStatement(shifts, lamp, daylight, seen(lamps[lamp])),
  };
}

function lamplightStatement(
  shifts: ByLamp,
  lamp: Lamp,
  daylight: Lab,
  underLamp: Lab,
): LamplightStatement {
  const rule = lamplightRule(shifts[lamp]);
  const source = "metamerism-practice";
  if (rule === "holds-in-lamplight") return { rule, values: shifts, source };
  return {
    rule,
    values: {
      ...shifts,
      lamp,
      towards: direction(underLamp.a - daylight.a, underLamp.b - daylight.b),
      lightness: change(underLamp.L - daylight.L, "lighter", "darker"),
      chroma: change(labToLch(underLamp).C - labToLch(daylight).C, "stronger", "duller"),
    },
    source,
  };
}

/**
 * Which band an inconstancy falls in; a figure on a limit belongs to the larger shift.
 * @throws RangeError when it is negative or NaN.
 */
export function lamplightRule(deltaE00: number): LamplightRule {
  if (!(deltaE00 >= 0))
    throw domainError("colour inconstancy Delta-E00", deltaE00, "Delta-E00 >= 0");
  if (deltaE00 < SHIFTS_SLIGHTLY_FROM) return "holds-in-lamplight";
  return deltaE00 < SHIFTS_CLEARLY_FROM
    ? "shifts-slightly-in-lamplight"
    : "shifts-clearly-in-lamplight";
}

function direction(a: number, b: number): LampShift["towards"] {
  if (Math.abs(a) >= Math.abs(b)) return a >= 0 ? "red" : "green";
  return b >= 0 ? "yellow" : "blue";
}

function change<More extends string, Less extends string>(
  by: number,
  more: More,
  less: Less,
): More | Less | "same" {
  if (Math.abs(by) < SPOKEN_OF_FROM) return "same";
  return by > 0 ? more : less;
}
