import { differenceCiede2000, modeLab65, useMode } from "culori/fn";
import { requireFinite, type Lab } from "./viewing.ts";

useMode(modeLab65);
const ciede2000 = differenceCiede2000();

/**
 * CIEDE2000 colour difference Delta-E00 (kL = kC = kH = 1) by culori.
 *
 * @param one L*, a*, b* [1], finite.
 * @param other the same, under the same viewing.
 * @returns Delta-E00 [1], >= 0.
 * @throws RangeError when a value is NaN or infinite.
 * @validity Set from industrial differences below about 5; a larger figure only orders colours.
 * @source sharma-2005, iso-11664-6
 */
export function deltaE00(one: Lab, other: Lab): number {
  requireFinite("L*, a* or b*", [one.L, one.a, one.b, other.L, other.a, other.b]);
  return ciede2000(
    { mode: "lab65", l: one.L, a: one.a, b: one.b },
    { mode: "lab65", l: other.L, a: other.a, b: other.b },
  );
}

/**
 * What independent uncertainties of L*, a* and b* come to together as Delta-E00 [1], each axis moved by itself.
 * @param uncertainty of each axis [1], >= 0.
 * @throws RangeError as {@link deltaE00}.
 */
export function uncertaintyDeltaE00(lab: Lab, uncertainty: Lab): number {
  return Math.hypot(
    deltaE00(lab, { ...lab, L: lab.L + uncertainty.L }),
    deltaE00(lab, { ...lab, a: lab.a + uncertainty.a }),
    deltaE00(lab, { ...lab, b: lab.b + uncertainty.b }),
  );
}

/**
 * CIE 1976 colour difference Delta-E*ab, the distance in L*a*b*: what the
 * lightfastness categories are set in, and not Delta-E00.
 *
 * @param one L*, a*, b* [1], finite.
 * @param other the same, under the same viewing.
 * @throws RangeError when a value is NaN or infinite.
 * @source cie-15-2018
 * @example deltaEab({ L: 50, a: 0, b: 0 }, { L: 50, a: 3, b: 4 }) // 5
 */
export function deltaEab(one: Lab, other: Lab): number {
  requireFinite("L*, a* or b*", [one.L, one.a, one.b, other.L, other.a, other.b]);
  return Math.hypot(one.L - other.L, one.a - other.a, one.b - other.b);
}
