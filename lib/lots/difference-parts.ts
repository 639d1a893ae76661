/** A colour difference with its parts, so that a lot that is off can be told how. */
import { deltaE00 } from "../colorimetry/difference.ts";
import type { Lab } from "../colorimetry/viewing.ts";

/** Sample less standard, as CIEDE2000 takes them before weighing [1]. */
export interface DifferenceParts {
  readonly deltaE00: number;
  /** Delta-L': above 0 lighter. */
  readonly deltaL: number;
  /** Delta-C': above 0 more chromatic. */
  readonly deltaC: number;
  /** Delta-H': above 0 a hue angle further on. */
  readonly deltaH: number;
}

const POWER_25_7 = 25 ** 7;

/**
 * CIEDE2000 difference with Delta-L', Delta-C' and Delta-H'.
 *
 *     G  = 0.5 (1 - sqrt(Cm^7 / (Cm^7 + 25^7))),  Cm the mean of both C*ab
 *     a' = (1 + G) a*,  C' = sqrt(a'^2 + b*^2)
 *     Delta-H' = 2 sqrt(C'1 C'2) sin(Delta-h' / 2)
 *
 * @param standard, sample L*, a*, b* [1] of one viewing, finite.
 * @throws RangeError when a value is NaN or infinite.
 * @source sharma-2005
 */
export function differenceParts(standard: Lab, sample: Lab): DifferenceParts {
  const total = deltaE00(standard, sample);
  const mean = (Math.hypot(standard.a, standard.b) + Math.hypot(sample.a, sample.b)) / 2;
  const G = 0.5 * (1 - Math.sqrt(mean ** 7 / (mean ** 7 + POWER_25_7)));
  const [one, other] = [standard, sample].map(({ a, b }) => ({
    C: Math.hypot((1 + G) * a, b),
    h: Math.atan2(b, (1 + G) * a),
  })) as [{ C: number; h: number }, { C: number; h: number }];
  const turn = Math.atan2(Math.sin(other.h - one.h), Math.cos(other.h - one.h));
  return {
    deltaE00: total,
    deltaL: sample.L - standard.L,
    deltaC: other.C - one.C,
    deltaH: 2 * Math.sqrt(one.C * other.C) * Math.sin(turn / 2),
  };
}
