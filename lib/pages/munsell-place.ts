import { parseMunsell } from "../colorimetry/munsell-notation.ts";
import { isKnown } from "../quantities/figure.ts";
import type { Sheet } from "../sheet/sheet.ts";

/** Where a masstone stands in the Munsell solid; hue null for a neutral. */
export interface MunsellPlace {
  readonly hue: number | null;
  readonly value: number;
  readonly chroma: number;
}

export function munsellPlace({ notations: { masstone } }: Sheet): MunsellPlace | undefined {
  const munsell = masstone?.munsell;
  if (munsell === undefined || !isKnown(munsell.value) || !isKnown(munsell.chroma))
    return undefined;
  const hue =
    munsell.hue !== null && isKnown(munsell.hue)
      ? (parseMunsell(`${munsell.hue.value} 5/5`)?.hueNumber ?? null)
      : null;
  return { hue, value: munsell.value.value, chroma: munsell.chroma.value };
}

/** Below this chroma a hue is what a colour gives least, and no place on a circle. */
export const NEAR_NEUTRAL_BELOW = 1;

/** The hue that a colour is sorted by; null for a neutral and for one too near it. */
export function hueGiven({ hue, chroma }: MunsellPlace): number | null {
  return chroma < NEAR_NEUTRAL_BELOW ? null : hue;
}
