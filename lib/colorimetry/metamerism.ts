import { domainError } from "../diagnostics/diagnostic.ts";
import type { Statement } from "../quantities/statement.ts";
import type { Spectrum } from "../quantities/spectrum.ts";
import { deltaE00 } from "./difference.ts";
import { xyzToLab } from "./lab.ts";
import { tristimulus } from "./tristimulus.ts";
import type { Xyz } from "./viewing.ts";

/** Up to here [Delta-E00] two colours pass for the same in daylight; from here on they part in lamplight. */
export const MATCHES_TO = 2;
export const PARTS_FROM = 2;

export type MetamerismRule = "differs-in-daylight" | "metameric-pair" | "matches-in-both-lights";

/** How two colours compare in daylight and in lamplight. */
export interface Metamerism {
  /** Delta-E00 under D65, 10 degree. */
  readonly daylight: number;
  /** Delta-E00 under A, 10 degree, as they are. */
  readonly lamplight: number;
  /** The same with the mismatch in daylight taken out first: what the light alone does. */
  readonly index: number;
  readonly ruling: Statement;
}

/**
 * Metamerism of two readings for a change from daylight to lamplight.
 *
 * The index multiplies the second colour's X, Y, Z under A by what brings it onto
 * the first under D65 (a black, whose value is zero, is left as it is).
 *
 * @returns both differences, the index, and a ruling: `differs-in-daylight` above
 *   Delta-E00 2 under D65; else `metameric-pair` from an index of 2 on, or `matches-in-both-lights`.
 * @throws RangeError as {@link tristimulus} does.
 * @source cie-15-2018 : special metamerism index, change of illuminant (from memory); metamerism-practice for the limits
 */
export function metamerism(one: Spectrum, other: Spectrum): Metamerism {
  const day = [tristimulus(one, "D65/10"), tristimulus(other, "D65/10")] as const;
  const lamp = [tristimulus(one, "A/10"), tristimulus(other, "A/10")] as const;
  const underLamp = xyzToLab(lamp[0], "A/10");
  const daylight = deltaE00(xyzToLab(day[0], "D65/10"), xyzToLab(day[1], "D65/10"));
  const lamplight = deltaE00(underLamp, xyzToLab(lamp[1], "A/10"));
  const index = deltaE00(underLamp, xyzToLab(corrected(lamp[1], day[0], day[1]), "A/10"));
  const rule = metamerismRule(daylight, index);
  return {
    daylight,
    lamplight,
    index,
    ruling: { rule, values: { daylight, lamplight, index }, source: "metamerism-practice" },
  };
}

/**
 * How a pair is spoken of; a difference of {@link MATCHES_TO} still matches, an index of {@link PARTS_FROM} parts.
 * @throws RangeError when a figure is negative or NaN.
 */
export function metamerismRule(daylight: number, index: number): MetamerismRule {
  for (const figure of [daylight, index])
    if (!(figure >= 0)) throw domainError("Delta-E00", figure, "Delta-E00 >= 0");
  if (daylight > MATCHES_TO) return "differs-in-daylight";
  return index >= PARTS_FROM ? "metameric-pair" : "matches-in-both-lights";
}

function corrected(lamp: Xyz, standard: Xyz, sample: Xyz): Xyz {
  const by = (channel: keyof Xyz): number =>
    lamp[channel] * (sample[channel] > 0 ? standard[channel] / sample[channel] : 1);
  return { X: by("X"), Y: by("Y"), Z: by("Z") };
}
