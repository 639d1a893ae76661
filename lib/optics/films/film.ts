/**
 * Kubelka-Munk optics of a film of finite thickness over a ground.
 *
 * K absorption and S scattering coefficient [1/um], X thickness [um]; any other
 * pair of a length and its inverse does as well, since only K X and S X enter.
 * All reflectances are internal, the ground's too: as seen from inside the film.
 *
 * @source kubelka-munk-1931, kubelka-1948
 */
import { domainError } from "../../diagnostics/diagnostic.ts";

/** Below this optical depth sqrt(K (K + 2 S)) X the exponential form divides nothing by nothing. */
const THIN = 0.1;

/**
 * Internal reflectance factor of a film over a ground.
 *
 *     R = (1 - Rg (a - b coth bSX)) / (a - Rg + b coth bSX),  a = 1 + K/S, b = sqrt(a^2 - 1)
 *     K = 0: R = ((1 - Rg) S X + Rg) / ((1 - Rg) S X + 1)
 *     S = 0: R = Rg exp(-2 K X)
 *
 * @param absorption K [1/um], finite and >= 0.
 * @param scattering S [1/um], finite and >= 0.
 * @param thickness X [um], finite and >= 0; 0 leaves the bare ground.
 * @param ground Rg [1], internal, 0 <= Rg <= 1.
 * @returns R [1], 0 <= R <= 1.
 * @throws RangeError when an argument is outside its domain, or NaN.
 * @validity dried, diffusely lit film in optical contact with its ground.
 * @source kubelka-1948 : hyperbolic solution, here in its exponential form
 * @example filmReflectance(0, 1, 1, 0) // 0.5
 */
export function filmReflectance(
  absorption: number,
  scattering: number,
  thickness: number,
  ground: number,
): number {
  const [K, S, X, Rg] = [absorption, scattering, thickness, ground];
  if (!(K >= 0 && K < Infinity))
    throw domainError("absorption coefficient K", K, "0 <= K < Infinity");
  if (!(S >= 0 && S < Infinity))
    throw domainError("scattering coefficient S", S, "0 <= S < Infinity");
  if (!(X >= 0 && X < Infinity)) throw domainError("film thickness", X, "0 <= X < Infinity um");
  if (!(Rg >= 0 && Rg <= 1)) throw domainError("ground reflectance", Rg, "0 <= Rg <= 1");
  const attenuation = Math.sqrt(K) * Math.sqrt(K + 2 * S);
  const depth = attenuation * X;
  if (depth < THIN) {
    // tanh(bSX) / bS by its series, so that K = 0 needs no case of its own.
    const T = X * (1 - depth ** 2 / 3 + (2 * depth ** 4) / 15 - (17 * depth ** 6) / 315);
    return (Rg + (S - Rg * (K + S)) * T) / (1 + (K + S - Rg * S) * T);
  }
  // In exponentials nothing cancels, however black or thick the film.
  const R = S / (K + S + attenuation);
  const e = Math.exp(-2 * depth);
  return (R * (1 - e) + Rg * (e - R * R)) / (1 - e * R * R - Rg * R * (1 - e));
}

/**
 * Scattering power S X of a film of known masstone, from its reflectance over one ground.
 *
 *     S X = (1/b) (arcoth((a - R)/b) - arcoth((a - Rg)/b))
 *     black ground: S X = (1/b) arcoth((1 - a R0)/(b R0))
 *
 * @param film R [1], internal, of the film over the ground; strictly between ground and masstone.
 * @param masstone R-infinity [1], internal, 0 < R-infinity <= 1.
 * @param ground Rg [1], internal, 0 <= Rg <= 1.
 * @returns S X [1], > 0.
 * @throws RangeError when R is not between ground and masstone: thicker than hiding, or no film at all.
 * @validity loses its hold as R nears R-infinity: there the film hides, and S X is only a least figure.
 * @source kubelka-1948
 */
export function scatteringPower(film: number, masstone: number, ground: number): number {
  const [R, Rinf, Rg] = [film, masstone, ground];
  if (!(Rinf > 0 && Rinf <= 1)) throw domainError("internal reflectance", Rinf, "0 < R <= 1");
  if (!(Rg >= 0 && Rg <= 1)) throw domainError("ground reflectance", Rg, "0 <= Rg <= 1");
  if (!((Rg < R && R < Rinf) || (Rinf < R && R < Rg))) {
    throw domainError("film reflectance", R, `between ground ${Rg} and masstone ${Rinf}`);
  }
  if (Rinf === 1) return R / (1 - R) - Rg / (1 - Rg);
  // With q the ratio of the distances from R-infinity and from its reciprocal,
  // q(R) = q(Rg) exp(-2 b S X): the arcoths written out as logarithms.
  const q = (r: number): number => (r - Rinf) / (1 / Rinf - r);
  const b = (1 / Rinf - Rinf) / 2;
  return Math.log(q(Rg) / q(R)) / (2 * b);
}

/**
 * K/S of a film from its reflectances over two grounds, whatever its thickness.
 *
 *     a = ((1 + Rb gb)(gw - Rw) - (1 + Rw gw)(gb - Rb)) / ((Rb + gb)(gw - Rw) - (Rw + gw)(gb - Rb))
 *     gb = 0: a = (Rw + (Rb - Rw + gw) / (Rb gw)) / 2
 *
 * @param overBlack, overWhite Rb, Rw [1] of the film over the grounds `black` gb and `white` gw, all internal.
 * @returns K/S = a - 1 [1], >= 0; undefined when no film of K, S >= 0 gives such readings.
 * @throws RangeError when a reading is NaN, or the black ground is not the darker.
 * @source kubelka-1948
 */
export function twoGroundRatio(
  overBlack: number,
  overWhite: number,
  black: number,
  white: number,
): number | undefined {
  const [Rb, Rw, gb, gw] = [overBlack, overWhite, black, white];
  if (!(gb >= 0 && gb < gw && gw <= 1))
    throw domainError("reflectance of the black ground", gb, `0 <= black < white ${gw} <= 1`);
  for (const R of [Rb, Rw])
    if (!(R >= 0 && R <= 1)) throw domainError("film reflectance", R, "0 <= R <= 1");
  const top = (1 + Rb * gb) * (gw - Rw) - (1 + Rw * gw) * (gb - Rb);
  const bottom = (Rb + gb) * (gw - Rw) - (Rw + gw) * (gb - Rb);
  const a = top / bottom;
  return a >= 1 && a < Infinity ? a - 1 : undefined;
}
