/**
 * Gases that a pigment can give off; `gases-given-off.csv` tells which do, and when. Mercury
 * sulphide is not among them: acids that take it up turn its sulphur to no gas, and the mercury that
 * it gives off when it is heated is told by `metals.csv`, as are the fumes of other metals.
 */
export const GASES = [
  "hydrogen cyanide",
  "hydrogen sulphide",
  "hydrogen sulphide and hydrogen selenide",
] as const;
/** What sets it free. */
export const GAS_RELEASES = ["strong heat or strong acid", "strong acid", "any acid"] as const;

export type GasGivenOff = {
  readonly gas: (typeof GASES)[number];
  readonly release: (typeof GAS_RELEASES)[number];
};
