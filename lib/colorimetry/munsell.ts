/** The one module that imports npm munsell: 125 kB of renotation data, for build time only. */
import { labToMhvc, mhvcToLab } from "munsell";
import { domainError } from "../diagnostics/diagnostic.ts";
import type { Ruling } from "../quantities/ruling.ts";
import { labToXyz } from "./lab.ts";
import { hueFamily, hueText, type MunsellColour } from "./munsell-notation.ts";
import { munsellValue } from "./munsell-value.ts";
import { requireFinite, type Lab } from "./viewing.ts";

/** Below this chroma a colour has no hue; up to the next it is a near neutral. */
const NEUTRAL_BELOW = 0.05;
const NEAR_NEUTRAL_BELOW = 0.3;

/** The renotation's chroma is extrapolated above this value. */
const CHROMA_KNOWN_TO_VALUE = 9;

/** A Munsell notation worked out of a Lab. */
export interface Munsell extends MunsellColour {
  /** Hue with its letters, to two decimals; null for a neutral. */
  readonly hue: string | null;
  readonly form: "neutral" | "near-neutral" | "full";
  /** As printed: `N 1.2/`, `N 6.3/(PB 0.2)`, `5PB 3.1/1.2`. */
  readonly text: string;
  /** Whether chroma lies beyond the renotation (V > 9): say so beside it. */
  readonly chromaExtrapolated: boolean;
}

/** How far hue and chroma may be claimed; see munsell-uncertainty.ts. */
export interface MunsellDoubt {
  /** Standard uncertainty of chroma [1], >= 0: a chroma below twice of it claims no hue. */
  readonly chroma: number;
  /** Standard uncertainty of hue [hundred steps], >= 0: from 1 on no decimal is printed. */
  readonly hueNumber: number;
}

/**
 * Munsell renotation of a colour, interpolated in LCHab by npm munsell (not in
 * x, y as D1535 does: see munsell-uncertainty.ts for what that costs).
 *
 * A colour with chroma below .05, or below twice its own uncertainty, is printed
 * as a neutral and has no hue; up to .3 the near-neutral form keeps the coolness
 * that is the point of a grey.
 *
 * @param lab under illuminant C, 2 degree, finite, L* >= 0. Not D65: adapt first (lab-under.ts).
 * @returns the notation, or the ruling `lighter-than-munsell-white` above the perfect diffuser.
 * @throws RangeError when a value is NaN, infinite, or L* is negative.
 * @validity Chroma and hue below V 1 and above V 9 rest on extrapolated renotations.
 * @source newhall-1943, astm-d1535, munsell-npm
 */
export function munsellOfLab(lab: Lab, doubt: MunsellDoubt = { chroma: 0, hueNumber: 0 }): Munsell | Ruling {
  requireFinite("L*, a* or b*", [lab.L, lab.a, lab.b]);
  if (!(lab.L >= 0)) throw domainError("L*", lab.L, "L* >= 0");
  const { Y } = labToXyz(lab, "C/2");
  if (Y > 100 + 1e-6) return { rule: "lighter-than-munsell-white", values: { luminanceFactor: Y }, source: "astm-d1535" };

  const value = munsellValue(Y);
  // The package inverts nothing at V = 0 or at no chroma, but returns a hue all the same.
  const [turn, , chroma] = labToMhvc(Math.min(lab.L, 100), lab.a, lab.b);
  const chromaExtrapolated = value > CHROMA_KNOWN_TO_VALUE;
  if (chroma < NEUTRAL_BELOW || chroma < 2 * doubt.chroma) {
    return { hue: null, hueNumber: null, value, chroma, form: "neutral", text: `N ${value.toFixed(1)}/`, chromaExtrapolated };
  }
  const hueNumber = turn > 0 ? turn : 100;
  const form = chroma < NEAR_NEUTRAL_BELOW ? "near-neutral" : "full";
  const text = form === "near-neutral"
    ? `N ${value.toFixed(1)}/(${hueFamily(hueNumber)} ${chroma.toFixed(1)})`
    : `${hueText(hueNumber, doubt.hueNumber < 1 ? 1 : 0)} ${value.toFixed(1)}/${chroma.toFixed(1)}`;
  return { hue: hueText(hueNumber, 2), hueNumber, value, chroma, form, text, chromaExtrapolated };
}

/**
 * Lab of a Munsell colour, such as a chip judged by eye; inverse of {@link munsellOfLab}.
 *
 * @param colour value 0-10, chroma >= 0, hue null only at chroma 0.
 * @returns Lab under illuminant C, 2 degree.
 * @throws RangeError when a figure is outside the notation or NaN.
 * @validity A chip is one step of 1 in value and 1 or 2 in chroma: an eye places no finer.
 * @source newhall-1943, astm-d1535, munsell-npm
 */
export function labOfMunsell({ hueNumber, value, chroma }: MunsellColour): Lab {
  if (!(value >= 0 && value <= 10)) throw domainError("Munsell value", value, "0 <= V <= 10");
  if (!(chroma >= 0 && chroma < Infinity)) throw domainError("Munsell chroma", chroma, "0 <= chroma < Infinity");
  if (hueNumber === null && chroma > 0) throw domainError("Munsell chroma of a neutral", chroma, "chroma = 0");
  if (hueNumber !== null && !(hueNumber > 0 && hueNumber <= 100)) throw domainError("Munsell hue number", hueNumber, "0 < H <= 100");
  const [L, a, b] = mhvcToLab(hueNumber ?? 0, value, chroma);
  return { L, a, b };
}
