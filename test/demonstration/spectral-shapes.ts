/** A coefficient over wavelength [nm]: absorption or scattering of a pigment, per millimetre and unit volume of it. */
export type Shape = (nm: number) => number;

/** Reference wavelength [nm] at which a power law takes its height. */
const REFERENCE_NM = 550;

/** height (lambda / 550 nm)^-exponent */
export function power(height: number, exponent: number): Shape {
  return (nm) => height * (nm / REFERENCE_NM) ** -exponent;
}

/** A bell: height at the centre, standard deviation `width` [nm]. */
export function bell(height: number, centreNm: number, width: number): Shape {
  return (nm) => height * Math.exp(-(((nm - centreNm) / width) ** 2) / 2);
}

/** An absorption edge, high on the short-wave side: falls in the logarithm from `high` to `low` around `atNm`. */
export function edge(high: number, low: number, atNm: number, width: number): Shape {
  return (nm) => low * (high / low) ** (1 / (1 + Math.exp((nm - atNm) / width)));
}

export function sum(...shapes: readonly Shape[]): Shape {
  return (nm) => shapes.reduce((total, shape) => total + shape(nm), 0);
}

export function scaled(factor: number, shape: Shape): Shape {
  return (nm) => factor * shape(nm);
}
