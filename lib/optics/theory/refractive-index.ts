/** Refractive indices of whites and of what stands for them, by wavelength. */
import { domainError } from "../../diagnostics/diagnostic.ts";
import type { SourceKey } from "../../sources/source.ts";

/** n and k [1] of n + i k; k >= 0 absorbs. */
export interface ComplexIndex {
  readonly n: number;
  readonly k: number;
}

/** One published (or guessed) set of indices of a substance. */
export interface IndexSet {
  readonly name: string;
  readonly source: SourceKey;
  /** Index in vacuum wavelength [nm]; domain 380-730. */
  readonly at: (wavelengthNm: number) => ComplexIndex;
}

/**
 * A crystal of two indices as one: (2 no + ne)/3, since a paint holds grains lying every way.
 * @throws RangeError when the wavelength is outside 380-730 nm, or NaN.
 */
function meanIndex(
  wavelengthNm: number,
  ordinarySquare: (L: number) => number,
  extraordinarySquare: (L: number) => number,
): ComplexIndex {
  requireVisible(wavelengthNm);
  const L = wavelengthNm / 1000;
  return { n: (2 * Math.sqrt(ordinarySquare(L)) + Math.sqrt(extraordinarySquare(L))) / 3, k: 0 };
}

/** @throws RangeError when the wavelength is outside 380-730 nm, or NaN. */
export function requireVisible(wavelengthNm: number): void {
  if (!(wavelengthNm >= 380 && wavelengthNm <= 730))
    throw domainError("wavelength", wavelengthNm, "380 <= wavelength <= 730 nm");
}

/**
 * Titanium dioxide, rutile; L in um.
 *
 *     no^2 = 5.913 + 0.2441/(L^2 - 0.0803),  ne^2 = 7.197 + 0.3322/(L^2 - 0.0843)
 *
 * @validity 430-1530 nm; below it is carried on, and the absorption edge near 400 nm is left out.
 * @source devore-1951
 */
export const RUTILE: IndexSet = {
  name: "rutile",
  source: "devore-1951",
  at: (nm) =>
    meanIndex(
      nm,
      (L) => 5.913 + 0.2441 / (L * L - 0.0803),
      (L) => 7.197 + 0.3322 / (L * L - 0.0843),
    ),
};

/**
 * Zinc oxide, zincite; L in um.
 *
 *     no^2 = 2.81418 + 0.87968 L^2/(L^2 - 0.3042^2) - 0.00711 L^2
 *     ne^2 = 2.80333 + 0.94470 L^2/(L^2 - 0.3004^2) - 0.00714 L^2
 *
 * @validity from 450 nm; below it is carried on.
 * @source bond-1965
 */
export const ZINCITE: IndexSet = {
  name: "zincite",
  source: "bond-1965",
  at: (nm) =>
    meanIndex(
      nm,
      (L) => 2.81418 + (0.87968 * L * L) / (L * L - 0.3042 ** 2) - 0.00711 * L * L,
      (L) => 2.80333 + (0.9447 * L * L) / (L * L - 0.3004 ** 2) - 0.00714 * L * L,
    ),
};

/**
 * Calcite; the extraordinary index, 1.488, without its dispersion. L in um.
 *
 *     no^2 - 1 = 0.73358749 + 0.96464345 L^2/(L^2 - 0.0194325203) + 1.82831454 L^2/(L^2 - 120)
 *
 * @source ghosh-1999
 */
export const CALCITE: IndexSet = {
  name: "calcite",
  source: "ghosh-1999",
  at: (nm) =>
    meanIndex(
      nm,
      (L) =>
        1.73358749 +
        (0.96464345 * L * L) / (L * L - 0.0194325203) +
        (1.82831454 * L * L) / (L * L - 120),
      () => 1.488 ** 2,
    ),
};

/**
 * Basic lead carbonate: mean of its mineral's indices, 2.04. Its dispersion is not
 * published; none is one guess and a weak one, as of the clear crystals of its index, the other.
 * @source basic-lead-carbonate-index
 */
export const LEAD_CARBONATE: readonly IndexSet[] = [
  {
    name: "basic lead carbonate, no dispersion",
    source: "basic-lead-carbonate-index",
    at: (nm) => flatIndex(nm, 2.04),
  },
  {
    name: "basic lead carbonate, weak dispersion",
    source: "basic-lead-carbonate-index",
    at: (nm) => flatIndex(nm, 2.04 + 0.02 * ((589 / nm) ** 2 - 1)),
  },
];

/** The same index at every wavelength. */
function flatIndex(wavelengthNm: number, n: number): ComplexIndex {
  requireVisible(wavelengthNm);
  return { n, k: 0 };
}

/**
 * A substance of which a record knows one index, and of what absorbs one k, and no dispersion of either.
 * @param n [1], 1 < n < 4.
 * @param k [1], 0 <= k < 4; 0 of a clear one.
 * @throws RangeError when the index is outside its domain, or NaN.
 */
export function statedIndex(name: string, n: number, k = 0): IndexSet {
  if (!(n > 1 && n < 4)) throw domainError("refractive index", n, "1 < n < 4");
  if (!(k >= 0 && k < 4)) throw domainError("absorption index", k, "0 <= k < 4");
  return { name, source: "stated-index", at: (nm) => ({ n: flatIndex(nm, n).n, k }) };
}
