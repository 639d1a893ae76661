/**
 * Where a let-down lies on the way from its white to the colour itself. In a mixture
 *
 *     K/S = (c Kc + (1 - c) Kw) / (c Sc + (1 - c) Sw)
 *
 * is a broken linear function of c: whatever the pigments, it goes one way at each wavelength,
 * and so does what is read, R of K/S and the surface included. More of the colour never lies
 * farther from the colour.
 *
 * @source duncan-1940, kubelka-munk-1931 : worked out from both
 */
import { domainError } from "../../diagnostics/diagnostic.ts";
import { at } from "../../quantities/at.ts";
import { median } from "../../quantities/median.ts";

/** Readings of the colour and of its white on one grid, as far as they are known. */
export interface LadderEnds {
  readonly masstone: readonly number[] | undefined;
  readonly white: readonly number[] | undefined;
}

/**
 * How much nearer to the colour one reading lies than another [1]: their difference at each
 * wavelength in the direction from white to colour, weighted by how far the two lie apart there.
 * A colour whose masstone is not known is taken to be darker than its white, a white that is not
 * known to read 1.
 *
 * @param one, other reflectance factors [1] on the grid of the ends, or any levels alike.
 * @returns below 0 where `one` lies nearer to the white.
 * @throws RangeError when the shapes differ.
 * @example nearerToColour([0.2], [0.5], { masstone: [0.1], white: [0.9] }) // 0.3
 */
export function nearerToColour(
  one: readonly number[],
  other: readonly number[],
  { masstone, white }: LadderEnds,
): number {
  for (const values of [other, masstone ?? one, white ?? one])
    if (values.length !== one.length)
      throw domainError("count of values", values.length, `${one.length}, as of the others`);
  let [sum, weights] = [0, 0];
  one.forEach((value, i) => {
    const way = (white?.[i] ?? 1) - (masstone?.[i] ?? 0);
    sum += way * (at(other, i) - value);
    weights += Math.abs(way);
  });
  return weights === 0 ? 0 : sum / weights;
}

/**
 * Parts of the colour to one of white [1] that a let-down would hold if colour and white
 * scattered alike, from the wavelengths at which they differ most.
 *
 *     c / w = (k - kw) / (kc - k),  k = K/S = (1 - R)^2 / 2R
 *
 * @param tint, ends reflectance factors [1], of one geometry.
 * @returns undefined where the let-down lies outside its ends there, or these are hardly apart.
 * @validity a rough figure: surface and scattering are left out. It tells a ratio upside down.
 * @source duncan-1940, kubelka-munk-1931
 */
export function apparentRatio(
  tint: readonly number[],
  { masstone, white }: { readonly masstone: readonly number[]; readonly white: readonly number[] },
): number | undefined {
  const apart = tint.map((_, i) => Math.abs(at(white, i) - at(masstone, i)));
  const most = Math.max(...apart);
  if (!(most > 0.1)) return undefined;
  const ratios = tint.flatMap((R, i) => {
    if ((apart[i] ?? 0) < 0.9 * most) return [];
    const [k, kc, kw] = [ratioKS(R), ratioKS(at(masstone, i)), ratioKS(at(white, i))];
    const ratio = (k - kw) / (kc - k);
    return ratio > 0 && ratio < Infinity ? [ratio] : [];
  });
  return ratios.length === 0 ? undefined : median(ratios);
}

function ratioKS(reflectance: number): number {
  const R = Math.min(Math.max(reflectance, 1e-4), 1);
  return (1 - R) ** 2 / (2 * R);
}
