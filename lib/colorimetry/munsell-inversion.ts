/** The one module that imports npm munsell: 125 kB of renotation data, for build time only. */
import { labToMhvc, mhvcToLab } from "munsell";
import { domainError } from "../diagnostics/diagnostic.ts";
import { aboveValueNine, atValueNine, RENOTATION_TO_VALUE } from "./munsell-toward-white.ts";
import { luminanceOfValue } from "./munsell-value.ts";
import { xyzToLab } from "./lab.ts";
import type { MunsellColour } from "./munsell-notation.ts";
import { WHITE_POINTS, type Lab } from "./viewing.ts";

/** Hue and chroma of a Lab under illuminant C; the hue of a neutral is some number without meaning. */
export interface HueChroma {
  readonly hueNumber: number;
  readonly chroma: number;
}

/** L* of value 9, under C. */
const LIGHTNESS_OF_NINE = xyzToLab(
  { ...WHITE_POINTS["C/2"], Y: luminanceOfValue(RENOTATION_TO_VALUE) },
  "C/2",
).L;

/** Nearer to white than this [a*, b*] the perfect diffuser's own luminance leaves no hue to tell. */
const WHITE_WITHIN = 1e-6;

/**
 * Hue and chroma of a Lab in the renotation, by npm munsell; above value 9 by the
 * interpolation to white of D1535.
 *
 * @param lab under illuminant C, 2 degree, finite, 0 <= L* <= 100: the package clamps
 *   a lightness outside that silently, and answers NaN with NaN.
 * @returns nothing where the package finds no answer: dark colours far beyond any pigment, and
 *   tinted ones as light as the perfect diffuser.
 * @source newhall-1943, astm-d1535, munsell-npm
 */
export function hueChromaOfLab(lab: Lab): HueChroma | undefined {
  if (lab.L <= LIGHTNESS_OF_NINE) return renotated(lab);
  if (Math.hypot(lab.a, lab.b) < WHITE_WITHIN) return { hueNumber: 100, chroma: 0 };
  const nine = atValueNine(lab);
  return nine && renotated(nine);
}

function renotated({ L, a, b }: Lab): HueChroma | undefined {
  try {
    const [turn, , chroma] = labToMhvc(L, a, b);
    return { hueNumber: turn > 0 ? turn : 100, chroma };
  } catch (error) {
    if (error instanceof Error && error.message.includes("maxIteration")) return undefined;
    throw error;
  }
}

/**
 * Lab of a Munsell colour, such as a chip judged by eye.
 *
 * @param colour value 0-10, chroma >= 0, hue null only at chroma 0.
 * @returns Lab under illuminant C, 2 degree.
 * @throws RangeError when a figure is outside the notation or NaN.
 * @validity A chart's steps are 1 in value and 1 or 2 in chroma: an eye places little finer.
 * @source newhall-1943, astm-d1535, munsell-npm
 * @example labOfMunsell({ hueNumber: null, value: 5, chroma: 0 }) // L* 51.0
 */
export function labOfMunsell({ hueNumber, value, chroma }: MunsellColour): Lab {
  if (!(value >= 0 && value <= 10)) throw domainError("Munsell value", value, "0 <= V <= 10");
  if (!(chroma >= 0 && chroma < Infinity))
    throw domainError("Munsell chroma", chroma, "0 <= chroma < Infinity");
  if (hueNumber === null && chroma > 0)
    throw domainError("Munsell chroma of a neutral", chroma, "chroma = 0");
  if (hueNumber !== null && !(hueNumber > 0 && hueNumber <= 100))
    throw domainError("Munsell hue number", hueNumber, "0 < H <= 100");
  const within = Math.min(value, RENOTATION_TO_VALUE);
  const [L, a, b] = mhvcToLab(hueNumber ?? 0, within, chroma);
  if (value <= RENOTATION_TO_VALUE) return { L, a, b };
  const above = aboveValueNine({ L, a, b }, value);
  if (above === undefined)
    throw domainError("Munsell chroma", chroma, `a colour of value ${value}`);
  return above;
}
