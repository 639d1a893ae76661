/** Gases that a pigment can give off when strongly heated or under strong acid; `gases-given-off.csv` tells which do. */
export const GASES_GIVEN_OFF = ["hydrogen cyanide"] as const;
export type GasGivenOff = (typeof GASES_GIVEN_OFF)[number];
