import { domainError } from "../diagnostics/diagnostic.ts";
import type { StatementOf } from "../quantities/statement.ts";
import { labToXyz } from "./lab.ts";
import { hueChromaOfLab } from "./munsell-inversion.ts";
import { hueFamily, hueText, type MunsellColour } from "./munsell-notation.ts";
import { RENOTATION_TO_VALUE } from "./munsell-toward-white.ts";
import {
  munsellNoise,
  munsellUncertainty,
  type MunsellUncertainty,
} from "./munsell-uncertainty.ts";
import { munsellValue } from "./munsell-value.ts";
import { requireFinite, type Lab } from "./viewing.ts";

/** Below this chroma a colour has no hue; up to the next it is a near neutral. */
const NEUTRAL_BELOW = 0.05;
const NEAR_NEUTRAL_BELOW = 0.3;

/** Below this value (L* 5) no reading tells a hue: the instrument's zero is a tenth of it. */
const HUE_FROM_VALUE = 0.5;

/** Up to what is taken for a rounding error of the perfect diffuser, Y = 100. */
const ROUNDING = 1e-6;

/** A Munsell notation worked out of a Lab. */
export interface Munsell extends MunsellColour {
  /** Hue with its letters, to two decimals; null where none can be claimed. */
  readonly hue: string | null;
  readonly form: "neutral" | "near-neutral" | "full";
  /** As printed: `N 1.2/`, `N 6.3/(PB 0.2)`, `5PB 3.1/1.2`. */
  readonly text: string;
  /** Whether hue and chroma were interpolated between the renotation's palest colours and white (V > 9): say so beside it. */
  readonly betweenNineAndWhite: boolean;
  /** Reading, grid and interpolation together; without an uncertainty of the Lab, interpolation alone. */
  readonly uncertainty: MunsellUncertainty;
}

/** Why a colour has no Munsell notation. */
export type MunsellStatement =
  | StatementOf<"lighter-than-munsell-white", { readonly luminanceFactor: number }>
  | StatementOf<"beyond-munsell-renotation", Lab>;

const NO_UNCERTAINTY: Lab = { L: 0, a: 0, b: 0 };

/**
 * Munsell renotation of a colour, interpolated in LCHab by npm munsell (not in
 * x, y as D1535 does: munsell-uncertainty.ts says what that costs).
 *
 * A colour is printed as a neutral and has no hue below chroma .05, below twice
 * the noise of its chroma, and below V 0.5; up to .3 the near-neutral form keeps
 * the coolness that is the point of a grey. A hue noisier than 1 step loses its decimal.
 *
 * @param lab under illuminant C, 2 degree, finite, L* >= 0. Not D65: see lab-under.ts.
 * @param labUncertainty standard uncertainty of each coordinate, >= 0; see lab-uncertainty.ts.
 * @returns the notation, or a ruling why there is none: `lighter-than-munsell-white`
 *   above the perfect diffuser, `beyond-munsell-renotation` far beyond any pigment.
 * @throws RangeError when a value is NaN or infinite, or L* or an uncertainty negative.
 * @validity Chroma and hue below V 1 rest on extrapolated renotations; above V 9 a small error of a
 *   reading weighs the more, the nearer to white, and is in the uncertainty.
 * @source newhall-1943, astm-d1535, munsell-npm
 */
export function munsellOfLab(
  lab: Lab,
  labUncertainty: Lab = NO_UNCERTAINTY,
): Munsell | MunsellStatement {
  requireFinite("L*, a* or b*", [lab.L, lab.a, lab.b]);
  if (!(lab.L >= 0)) throw domainError("L*", lab.L, "L* >= 0");
  for (const part of [labUncertainty.L, labUncertainty.a, labUncertainty.b]) {
    if (!(part >= 0 && part < Infinity))
      throw domainError("uncertainty of L*, a* or b*", part, "0 <= uncertainty < Infinity");
  }
  const { Y } = labToXyz(lab, "C/2");
  if (Y > 100 + ROUNDING)
    return {
      rule: "lighter-than-munsell-white",
      values: { luminanceFactor: Y },
      source: "astm-d1535",
    };
  const known = { ...lab, L: Math.min(lab.L, 100) };
  const at = hueChromaOfLab(known);
  if (at === undefined)
    return {
      rule: "beyond-munsell-renotation",
      values: { L: lab.L, a: lab.a, b: lab.b },
      source: "munsell-npm",
    };

  const value = munsellValue(Y);
  const noise = munsellNoise(known, labUncertainty, at);
  const shared = {
    value,
    chroma: at.chroma,
    betweenNineAndWhite: value > RENOTATION_TO_VALUE,
    uncertainty: munsellUncertainty(value, noise),
  };
  const [V, C] = [value.toFixed(1), at.chroma.toFixed(1)];
  if (at.chroma < NEUTRAL_BELOW || at.chroma < 2 * noise.chroma || value < HUE_FROM_VALUE) {
    return { ...shared, hue: null, hueNumber: null, form: "neutral", text: `N ${V}/` };
  }
  const hue = { hue: hueText(at.hueNumber, 2), hueNumber: at.hueNumber };
  if (at.chroma < NEAR_NEUTRAL_BELOW)
    return {
      ...shared,
      ...hue,
      form: "near-neutral",
      text: `N ${V}/(${hueFamily(at.hueNumber)} ${C})`,
    };
  return {
    ...shared,
    ...hue,
    form: "full",
    text: `${hueText(at.hueNumber, noise.hueNumber < 1 ? 1 : 0)} ${V}/${C}`,
  };
}
