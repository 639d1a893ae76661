import { keysOf } from "../quantities/members.ts";
import type { JudgingObserver, SummedViewing } from "./viewing.ts";

/**
 * Lamps of today by their CIE illuminant: an incandescent or halogen lamp (A, 2,856 K), a white
 * LED (LED-B3, 4,103 K) and a three-band fluorescent tube (FL11, 4,000 K), with daylight beside
 * them (D65), each to the observer that judges.
 * @source cie-15-2018, cie-170-2
 */
export const LIGHTS = {
  "CIE 1964": {
    daylight: "D65/10",
    lamps: { incandescent: "A/10", led: "LED-B3/10", fluorescent: "FL11/10" },
  },
  "CIE 2006": {
    daylight: "D65/2006",
    lamps: { incandescent: "A/2006", led: "LED-B3/2006", fluorescent: "FL11/2006" },
  },
} as const satisfies Readonly<
  Record<
    JudgingObserver,
    { readonly daylight: SummedViewing; readonly lamps: Readonly<Record<Lamp, SummedViewing>> }
  >
>;

export const LAMPS = ["incandescent", "led", "fluorescent"] as const;
export type Lamp = (typeof LAMPS)[number];

/** One figure of each lamp. */
export type ByLamp = Readonly<Record<Lamp, number>>;

export function byLamp(
  observer: JudgingObserver,
  compute: (viewing: SummedViewing) => number,
): ByLamp {
  const { incandescent, led, fluorescent } = LIGHTS[observer].lamps;
  return {
    incandescent: compute(incandescent),
    led: compute(led),
    fluorescent: compute(fluorescent),
  };
}

/** The lamp of the largest figure. */
export function worstLamp(figures: ByLamp): Lamp {
  return keysOf(figures).reduce((worst, lamp) => (figures[lamp] > figures[worst] ? lamp : worst));
}
