/**
 * Light on one sphere, by the series of Lorenz and Mie.
 *
 * x = pi d n/lambda is the size parameter of a sphere of diameter d in a medium of
 * index n, m = n' + i k its index over the medium's (k > 0 absorbs).
 *
 * @source bohren-huffman-1983, wiscombe-1979
 */
import { requirePositive } from "../../quantities/positive.ts";
import { domainError } from "../../diagnostics/diagnostic.ts";

/** Cross sections over the geometric one [1], and the mean cosine of scattering g [1]. */
export interface SphereEfficiencies {
  readonly ext: number;
  readonly sca: number;
  /** ext - sca: rounding noise about 0 where nothing is absorbed. */
  readonly abs: number;
  readonly back: number;
  readonly g: number;
}

/** The logarithmic derivatives need |mx| numbers of room: not a particle of any paint beyond this. */
const SIZE_MAX = 1e5;
let derivatives: { readonly re: Float64Array; readonly im: Float64Array } = {
  re: new Float64Array(0),
  im: new Float64Array(0),
};

/**
 * Efficiencies of a sphere.
 *
 *     a_n = ((D_n/m + n/x) psi_n - psi_n-1) / ((D_n/m + n/x) xi_n - xi_n-1),  b_n with m D_n
 *     Qext = (2/x^2) Sum (2n+1) Re(a_n + b_n),  Qsca = (2/x^2) Sum (2n+1)(|a_n|^2 + |b_n|^2)
 *
 * @param sizeParameter x [1], 0 < x <= 1e5 and |mx| <= 1e6.
 * @param n, k real and imaginary part of m [1], n > 0, k >= 0.
 * @throws RangeError when an argument is outside its domain, or NaN.
 * @validity one smooth sphere, far from others. Pigments are neither round nor far apart.
 * @source bohren-huffman-1983 : equations 4.61, 4.62, 4.88 and p. 120
 * @example sphereEfficiencies(5.2128197, 1.55, 0).ext // 3.10543
 */
export function sphereEfficiencies(
  sizeParameter: number,
  n: number,
  k: number,
): SphereEfficiencies {
  const x = sizeParameter;
  if (!(x > 0 && x <= SIZE_MAX)) throw domainError("size parameter x", x, `0 < x <= ${SIZE_MAX}`);
  requirePositive("real part of m", n, "", "n");
  if (!(k >= 0 && k < Infinity)) throw domainError("imaginary part of m", k, "0 <= k < Infinity");
  const terms = Math.floor(x + 4 * Math.cbrt(x) + 2);
  const { re: dRe, im: dIm } = logarithmicDerivatives(x * n, x * k, terms);
  const m2 = n * n + k * k;
  let [psiBefore, psi, chiBefore, chi] = [Math.cos(x), Math.sin(x), -Math.sin(x), Math.cos(x)];
  let [ext, sca, asymmetry, backRe, backIm] = [0, 0, 0, 0, 0];
  let [aRe, aIm, bRe, bIm] = [0, 0, 0, 0];
  for (let i = 1; i <= terms; i++) {
    const psiNext = ((2 * i - 1) * psi) / x - psiBefore;
    const chiNext = ((2 * i - 1) * chi) / x - chiBefore;
    const D = dRe[i] ?? NaN;
    const Di = dIm[i] ?? NaN;
    const last = { aRe, aIm, bRe, bIm };
    // D/m + i/x, and m D + i/x.
    let pRe = (D * n + Di * k) / m2 + i / x;
    let pIm = (Di * n - D * k) / m2;
    // xi = psi - i chi
    let upRe = pRe * psiNext - psi;
    let upIm = pIm * psiNext;
    let downRe = upRe + pIm * chiNext;
    let downIm = upIm - pRe * chiNext + chi;
    let square = downRe * downRe + downIm * downIm;
    aRe = (upRe * downRe + upIm * downIm) / square;
    aIm = (upIm * downRe - upRe * downIm) / square;
    pRe = D * n - Di * k + i / x;
    pIm = D * k + Di * n;
    upRe = pRe * psiNext - psi;
    upIm = pIm * psiNext;
    downRe = upRe + pIm * chiNext;
    downIm = upIm - pRe * chiNext + chi;
    square = downRe * downRe + downIm * downIm;
    bRe = (upRe * downRe + upIm * downIm) / square;
    bIm = (upIm * downRe - upRe * downIm) / square;

    ext += (2 * i + 1) * (aRe + bRe);
    sca += (2 * i + 1) * (aRe * aRe + aIm * aIm + bRe * bRe + bIm * bIm);
    const sign = i % 2 === 0 ? 1 : -1;
    backRe += sign * (2 * i + 1) * (aRe - bRe);
    backIm += sign * (2 * i + 1) * (aIm - bIm);
    asymmetry += ((2 * i + 1) / (i * (i + 1))) * (aRe * bRe + aIm * bIm);
    if (i > 1)
      asymmetry +=
        (((i - 1) * (i + 1)) / i) *
        (last.aRe * aRe + last.aIm * aIm + last.bRe * bRe + last.bIm * bIm);
    psiBefore = psi;
    psi = psiNext;
    chiBefore = chi;
    chi = chiNext;
  }
  const scale = 2 / (x * x);
  return {
    ext: scale * ext,
    sca: scale * sca,
    abs: scale * (ext - sca),
    back: (backRe * backRe + backIm * backIm) / (x * x),
    g: (2 * asymmetry) / sca,
  };
}

/**
 * D_n(y) = psi_n'(y)/psi_n(y) for n = 1 to `terms`, y = mx, by downward recurrence:
 *
 *     D_n-1 = n/y - 1/(D_n + n/y)
 *
 * Begun far above |y|: from |y| + 16, as printed, the 4th digit is wrong at x = 1000.
 * @source bohren-huffman-1983 : equation 4.89
 */
function logarithmicDerivatives(
  yRe: number,
  yIm: number,
  terms: number,
): { readonly re: Float64Array; readonly im: Float64Array } {
  const size = Math.hypot(yRe, yIm);
  if (!(size <= 10 * SIZE_MAX)) throw domainError("|mx|", size, `|mx| <= ${10 * SIZE_MAX}`);
  const start = Math.ceil(Math.max(size + 8 * Math.cbrt(size), terms) + 30);
  if (derivatives.re.length <= start)
    derivatives = { re: new Float64Array(2 * start), im: new Float64Array(2 * start) };
  const { re, im } = derivatives;
  const [qRe, qIm] = [yRe / (size * size), -yIm / (size * size)];
  let [D, Di] = [0, 0];
  for (let i = start; i > 1; i--) {
    const nRe = D + i * qRe;
    const nIm = Di + i * qIm;
    const square = nRe * nRe + nIm * nIm;
    D = i * qRe - nRe / square;
    Di = i * qIm + nIm / square;
    if (i - 1 <= terms) {
      re[i - 1] = D;
      im[i - 1] = Di;
    }
  }
  return derivatives;
}
