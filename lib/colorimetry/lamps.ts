import type { LampViewing } from "./viewing.ts";

/**
 * Lamps of today by their CIE illuminant: an incandescent or halogen lamp (A, 2,856 K), a white
 * LED (LED-B3, 4,103 K) and a three-band fluorescent tube (FL11, 4,000 K).
 * @source cie-15-2018
 */
export const LAMPS = {
  incandescent: "A/10",
  led: "LED-B3/10",
  fluorescent: "FL11/10",
} as const satisfies Readonly<Record<string, LampViewing>>;

export type Lamp = keyof typeof LAMPS;

/** One figure of each lamp. */
export type ByLamp = Readonly<Record<Lamp, number>>;

export function byLamp(compute: (viewing: LampViewing) => number): ByLamp {
  return {
    incandescent: compute(LAMPS.incandescent),
    led: compute(LAMPS.led),
    fluorescent: compute(LAMPS.fluorescent),
  };
}

/** The lamp of the largest figure. */
export function worstLamp(figures: ByLamp): Lamp {
  return (Object.keys(LAMPS) as Lamp[]).reduce((worst, lamp) =>
    figures[lamp] > figures[worst] ? lamp : worst,
  );
}
