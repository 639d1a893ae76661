import type { MunsellColour } from "./munsell-notation.ts";
import type { MunsellUncertainty } from "./munsell-uncertainty.ts";

/** A name of the ISCC-NBS system. */
export interface IsccNbsName {
  /** Number of the name in SP 440, 1-267. */
  readonly number: number;
  readonly name: string;
}

/**
 * A block of the Munsell solid and the name that it bears: hue numbers on the hundred-step circle from and
 * to (5R is 5, through 100), value and chroma from and to. A notation on a border belongs to every block
 * that touches it.
 */
export interface IsccNbsBlock extends IsccNbsName {
  readonly hueFrom: number;
  readonly hueTo: number;
  readonly valueFrom: number;
  readonly valueTo: number;
  readonly chromaFrom: number;
  readonly chromaTo: number;
}

const EXACT: MunsellUncertainty = { value: 0, chroma: 0, hueNumber: 0 };

/**
 * The ISCC-NBS names of a Munsell colour: that of its block, and of the block beside it
 * whose border lies within one standard uncertainty. A notation on a border has both names.
 *
 * A border is as far as the root of the squares of its distances in hue, value and chroma,
 * each by its own uncertainty. A colour of which no hue is told has the name of the neutral of its value:
 * whatever chroma was worked out for it, no name of a hue can be told of it.
 *
 * @param colour value 0-10, chroma >= 0.
 * @param blocks all that the system has.
 * @returns one name or two, the nearest first.
 * @source nbs-sp-440
 * @example isccNbsNames({ hueNumber: null, value: 0.3, chroma: 0 }, blocks) // with all blocks: [{ number: 267, name: "Black" }]
 */
export function isccNbsNames(
  colour: MunsellColour,
  blocks: readonly IsccNbsBlock[],
  uncertainty: MunsellUncertainty = EXACT,
): IsccNbsName[] {
  const nearest = new Map<number, IsccNbsName & { readonly distance: number }>();
  for (const block of blocks) {
    const distance = distanceTo(block, colour, uncertainty);
    const { number, name } = block;
    if (distance <= Math.min(1, nearest.get(number)?.distance ?? 1))
      nearest.set(number, { number, name, distance });
  }
  return [...nearest.values()]
    .toSorted((one, other) => one.distance - other.distance)
    .slice(0, 2)
    .map(({ number, name }) => ({ number, name }));
}

/** Names as printed: "Deep red", "Deep red or strong red". */
export function isccNbsText(names: readonly IsccNbsName[]): string {
  return names
    .map(({ name }, i) => (i === 0 ? name : name.charAt(0).toLowerCase() + name.slice(1)))
    .join(" or ");
}

/** Distance of a colour from a block in standard uncertainties; 0 inside and on its border. */
function distanceTo(
  { hueFrom, hueTo, valueFrom, valueTo, chromaFrom, chromaTo }: IsccNbsBlock,
  { hueNumber, value, chroma }: MunsellColour,
  uncertainty: MunsellUncertainty,
): number {
  const inValue = inSigmas(gap(value, valueFrom, valueTo), uncertainty.value);
  if (hueNumber === null) return chromaFrom === 0 ? inValue : Infinity;
  return Math.hypot(
    inSigmas(hueGap(hueNumber, hueFrom, hueTo), uncertainty.hueNumber),
    inValue,
    inSigmas(gap(chroma, chromaFrom, chromaTo), uncertainty.chroma),
  );
}

function gap(at: number, from: number, to: number): number {
  return Math.max(from - at, at - to, 0);
}

/** How far a hue lies outside an arc of the circle, by the nearer way. */
function hueGap(hue: number, from: number, to: number): number {
  const turned = (of: number): number => ((of % 100) + 100) % 100;
  return turned(hue - from) <= turned(to - from)
    ? 0
    : Math.min(turned(from - hue), turned(hue - to));
}

function inSigmas(distance: number, sigma: number): number {
  return distance === 0 ? 0 : distance / sigma;
}
