import { domainError } from "../diagnostics/diagnostic.ts";
import type { StatementOf } from "../quantities/statement.ts";
import type { Spectrum } from "../quantities/spectrum.ts";
import { deltaE00 } from "./difference.ts";
import { xyzToLab } from "./lab.ts";
import { byLamp, LIGHTS, worstLamp, type ByLamp, type Lamp } from "./lamps.ts";
import { spectrumLab } from "./spectrum-lab.ts";
import { tristimulus } from "./tristimulus.ts";
import type { JudgingObserver, Xyz } from "./viewing.ts";

/** Up to here [Delta-E00] two colours pass for the same in daylight; from here on they part in lamplight. */
export const MATCHES_TO = 2;
const PARTS_FROM = 2;

/** Delta-E00 in daylight, the lamp that parts the two most, and how far it does [Delta-E00]. */
export interface PairInLights {
  readonly daylight: number;
  readonly lamp: Lamp;
  readonly index: number;
}

export type MetamerismStatement = StatementOf<
  "differs-in-daylight" | "metameric-pair" | "matches-in-both-lights",
  PairInLights
>;

export type MetamerismRule = MetamerismStatement["rule"];

/** How two colours compare in daylight and in lamplight. */
export interface Metamerism {
  /** Delta-E00 under D65. */
  readonly daylight: number;
  /** Delta-E00 under A, as they are. */
  readonly lamplight: number;
  /** Under each lamp with the mismatch in daylight taken out first: what the light alone does. */
  readonly index: ByLamp;
  readonly statement: MetamerismStatement;
}

/**
 * Metamerism of two readings for a change from daylight to lamps of today.
 *
 * An index multiplies the second colour's X, Y, Z under a lamp by what brings it onto
 * the first under D65 (a black, whose value is zero, is left as it is).
 *
 * @returns both differences, the indices, and a statement by the largest: `differs-in-daylight`
 *   above Delta-E00 2 under D65; else `metameric-pair` from an index of 2 on, or `matches-in-both-lights`.
 * @throws RangeError as {@link tristimulus} does.
 * @source cie-15-2018 : special metamerism index, change of illuminant (from memory); metamerism-practice for the limits
 */
export function metamerism(
  one: Spectrum,
  other: Spectrum,
  observer: JudgingObserver = "CIE 1964",
): Metamerism {
  const { daylight: light, lamps } = LIGHTS[observer];
  const day = [tristimulus(one, light), tristimulus(other, light)] as const;
  const daylight = deltaE00(xyzToLab(day[0], light), xyzToLab(day[1], light));
  const lamplight = deltaE00(
    spectrumLab(one, lamps.incandescent),
    spectrumLab(other, lamps.incandescent),
  );
  const index = byLamp(observer, (viewing) =>
    deltaE00(
      spectrumLab(one, viewing),
      xyzToLab(corrected(tristimulus(other, viewing), day[0], day[1]), viewing),
    ),
  );
  const lamp = worstLamp(index);
  return {
    daylight,
    lamplight,
    index,
    statement: {
      rule: metamerismRule(daylight, index[lamp]),
      values: { daylight, lamp, index: index[lamp] },
      source: "metamerism-practice",
    },
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
