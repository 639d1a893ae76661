/** Hue families in the order of the hundred-step circle: R ends at 10, YR at 20, RP at 100. */
export const HUE_FAMILIES = ["R", "YR", "Y", "GY", "G", "BG", "B", "PB", "P", "RP"] as const;
export type HueFamily = (typeof HUE_FAMILIES)[number];

/** Hue by number, value and chroma of a Munsell colour. */
export interface MunsellColour {
  /** Hue on the hundred-step circle, 0 < H <= 100: 5R is 5, 10RP is 100; null for a neutral. */
  readonly hueNumber: number | null;
  /** V [1], 0 black to 10 white. */
  readonly value: number;
  /** C [1], >= 0; 0 for a neutral. */
  readonly chroma: number;
}

const NEUTRAL = /^N\s*(\d+(?:\.\d+)?)\s*\/?$/;
const NEAR_NEUTRAL =
  /^N\s*(\d+(?:\.\d+)?)\s*\/\s*\(\s*(\d+(?:\.\d+)?)?\s*([A-Z]{1,2})[\s,]+(\d+(?:\.\d+)?)\s*\)$/;
const FULL = /^(\d+(?:\.\d+)?)\s*([A-Z]{1,2})\s+(\d+(?:\.\d+)?)\s*\/\s*(\d+(?:\.\d+)?)$/;

/** The strongest chroma that a notation may say: the renotation's own end lies at 38. */
const CHROMA_MAX = 50;

/**
 * A Munsell notation as a painter writes it: `5PB 3/1`, `10YR 5.5/6`, `N 2/`, or
 * the near-neutral `N 6.3/(PB 0.2)`, whose bare hue letter is read as the middle
 * of its family.
 *
 * @param text hue 0-10 with its letters, value 0-10, chroma 0-50.
 * @returns the colour, or nothing when the text is no such notation.
 * @source astm-d1535 : designation (near-neutral form from memory)
 * @example parseMunsell("10YR 5/6") // { hueNumber: 20, value: 5, chroma: 6 }
 */
export function parseMunsell(text: string): MunsellColour | undefined {
  const tidy = text.trim().toUpperCase();
  const neutral = NEUTRAL.exec(tidy);
  if (neutral !== null) return colour(null, Number(neutral[1]), 0);
  const near = NEAR_NEUTRAL.exec(tidy);
  if (near !== null)
    return colour(hueNumber(near[2] ?? "5", near[3]), Number(near[1]), Number(near[4]));
  const full = FULL.exec(tidy);
  if (full !== null) return colour(hueNumber(full[1], full[2]), Number(full[3]), Number(full[4]));
  return undefined;
}

function hueNumber(prefix: string | undefined, letters: string | undefined): number | undefined {
  const family = HUE_FAMILIES.findIndex((name) => name === letters);
  const step = Number(prefix);
  if (family < 0 || !(step >= 0 && step <= 10)) return undefined;
  return family * 10 + step === 0 ? 100 : family * 10 + step;
}

function colour(
  hue: number | null | undefined,
  value: number,
  chroma: number,
): MunsellColour | undefined {
  if (hue === undefined || !(value <= 10) || !(chroma <= CHROMA_MAX)) return undefined;
  return { hueNumber: chroma === 0 ? null : hue, value, chroma };
}

/**
 * Hue in letters, rounded; a figure that ends in .0 drops it.
 * @param hueNumber H, 0 < H <= 100.
 * @example hueText(73.04, 1) // "3PB"
 */
export function hueText(hueNumber: number, decimals: number): string {
  const { step, family } = rounded(hueNumber, decimals);
  return `${step}${family}`;
}

/** Letters of the family that a hue belongs to: 10R is still R. */
export function hueFamily(hueNumber: number): HueFamily {
  return rounded(hueNumber, 9).family;
}

function rounded(
  hueNumber: number,
  decimals: number,
): { readonly step: number; readonly family: HueFamily } {
  const scale = 10 ** decimals;
  const turned = Math.round(hueNumber * scale) % (100 * scale);
  const hue = turned === 0 ? 100 * scale : turned;
  const index = Math.ceil(hue / (10 * scale)) - 1;
  return { step: (hue - index * 10 * scale) / scale, family: HUE_FAMILIES[index] ?? "R" };
}
