import { domainError } from "../diagnostics/diagnostic.ts";
import type { Statement } from "../quantities/statement.ts";
import type { Spectrum } from "../quantities/spectrum.ts";
import { adaptedXyz } from "./adaptation.ts";
import { deltaE00 } from "./difference.ts";
import { labToLch, xyzToLab } from "./lab.ts";
import { tristimulus } from "./tristimulus.ts";
import type { Lab } from "./viewing.ts";

/** From here on [Delta-E00] a colour shifts slightly, then clearly, in lamplight. Our own bands: no standard draws any. */
export const SHIFTS_SLIGHTLY_FROM = 2;
export const SHIFTS_CLEARLY_FROM = 4;

/** A change of lightness or chroma smaller than this [1] is not spoken of. */
const SPOKEN_OF_FROM = 1;

export type LamplightRule =
  "holds-in-lamplight" | "shifts-slightly-in-lamplight" | "shifts-clearly-in-lamplight";

/** What lamplight does to a colour. */
export interface Lamplight {
  /** Lab in daylight, D65/10. */
  readonly daylight: Lab;
  /** Lab under A as an eye used to it sees it, carried to D65/10 by CAT16. */
  readonly lamplight: Lab;
  /** Colour inconstancy, Delta-E00 between the two. */
  readonly deltaE00: number;
  readonly ruling: Statement;
}

/**
 * Colour inconstancy of a reading from daylight (D65) to lamplight (A), both 10 degree.
 *
 * @param spectrum as {@link tristimulus} takes it.
 * @returns both Labs, their Delta-E00, and a ruling: `holds-in-lamplight`,
 *   `shifts-slightly-in-lamplight` or `shifts-clearly-in-lamplight`, the last two with
 *   `towards` (red, yellow, green, blue), `lightness` (lighter, darker, same) and
 *   `chroma` (stronger, duller, same).
 * @validity A strong colour shifts by 4-10 without being odd: adaptation models cover
 *   no more of it. Incandescent light only, not lamps of other spectra.
 * @source li-2017, cie-15-2018
 */
export function lamplight(spectrum: Spectrum): Lamplight {
  const daylight = xyzToLab(tristimulus(spectrum, "D65/10"), "D65/10");
  const underLamp = xyzToLab(adaptedXyz(tristimulus(spectrum, "A/10"), "A/10", "D65/10"), "D65/10");
  const shift = deltaE00(daylight, underLamp);
  const rule = lamplightRule(shift);
  const values =
    rule === "holds-in-lamplight"
      ? { deltaE00: shift }
      : {
          deltaE00: shift,
          towards: direction(underLamp.a - daylight.a, underLamp.b - daylight.b),
          lightness: change(underLamp.L - daylight.L, "lighter", "darker"),
          chroma: change(labToLch(underLamp).C - labToLch(daylight).C, "stronger", "duller"),
        };
  return {
    daylight,
    lamplight: underLamp,
    deltaE00: shift,
    ruling: { rule, values, source: "metamerism-practice" },
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

function direction(a: number, b: number): "red" | "yellow" | "green" | "blue" {
  if (Math.abs(a) >= Math.abs(b)) return a >= 0 ? "red" : "green";
  return b >= 0 ? "yellow" : "blue";
}

function change(by: number, more: string, less: string): string {
  if (Math.abs(by) < SPOKEN_OF_FROM) return "same";
  return by > 0 ? more : less;
}
