import type { Lab } from "../colorimetry/viewing.ts";

/** Shares of cyan, magenta, yellow and black, 0 to 1. */
export type Cmyk = readonly [cyan: number, magenta: number, yellow: number, black: number];

/** A colour in process inks. */
export interface ProcessInk {
  readonly cmyk: Cmyk;
  /** What these inks show, white of their paper being white. */
  readonly shown: Lab;
  /** Between that and the colour wanted. */
  readonly deltaE00: number;
}

/** A document whose paints are drawn in process inks, as a preview. */
export interface Proof {
  /** Said on every page. */
  readonly notice: string;
  /** ICC profile of the inks, which the document carries. */
  readonly profile: Uint8Array;
  readonly inks: ReadonlyMap<string, ProcessInk>;
  /** Colours that were asked for, by their keys; those without inks are drawn in Lab. */
  readonly wanted: Map<string, Lab>;
}

/** One colour, one key: nearer than half a hundredth no ink is another. */
export function inkKey({ L, a, b }: Lab): string {
  return [L, a, b].map((value) => (Math.round(value * 100) / 100 + 0).toFixed(2)).join(" ");
}

/** The inks of a colour, where they are known; it is noted as asked for. */
export function inkOfProof({ inks, wanted }: Proof, lab: Lab): ProcessInk | undefined {
  const key = inkKey(lab);
  wanted.set(key, lab);
  return inks.get(key);
}
