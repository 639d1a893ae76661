/** Which paints of a large range are offered to be mixed at once: more would be too much to send and to choose from. */
import type { MixingPaint } from "./mixing-paint.ts";

/** Our own choice, by what a reader waits for: a paint is about a kilobyte. */
export const OFFERED_MOST = 96;
/** Whites and mediums among them. */
const OTHERS_MOST = 16;

/**
 * All of a few paints; of many, the first whites and mediums, the usual colour, and the colours
 * that lie farthest apart in L*a*b*, each next one farthest from all that are chosen.
 * @param usual slug of the colour that is always among them.
 * @param whites slugs, those of most let-downs first.
 * @returns in the order of the range.
 */
export function offeredPaints(
  paints: readonly MixingPaint[],
  whites: readonly string[],
  usual: string | undefined,
): readonly MixingPaint[] {
  if (paints.length <= OFFERED_MOST) return paints;
  const others = [
    ...whites.flatMap((slug) => paints.filter((paint) => paint.slug === slug)),
    ...paints.filter(({ kind }) => kind === "medium"),
  ].slice(0, OTHERS_MOST);
  const chosen = new Set([
    ...others,
    ...farthestApart(
      paints.filter((paint) => isMixedColour(paint) && !others.includes(paint)),
      OFFERED_MOST - others.length,
      usual,
    ),
  ]);
  return paints.filter((paint) => chosen.has(paint));
}

function isMixedColour({ kind, fit, lab, isDiscontinued = false }: MixingPaint): boolean {
  return kind === "colour" && fit !== undefined && lab !== undefined && !isDiscontinued;
}

function farthestApart(
  colours: readonly MixingPaint[],
  most: number,
  usual: string | undefined,
): MixingPaint[] {
  const first = colours.find(({ slug }) => slug === usual) ?? colours[0];
  if (first === undefined) return [];
  const chosen = [first];
  let left = colours
    .filter((colour) => colour !== first)
    .map((colour) => ({ colour, distance: apart(colour, first) }));
  while (chosen.length < most && left.length > 0) {
    const next = left.reduce((one, other) => (other.distance > one.distance ? other : one));
    chosen.push(next.colour);
    left = left
      .filter((one) => one !== next)
      .map(({ colour, distance }) => ({
        colour,
        distance: Math.min(distance, apart(colour, next.colour)),
      }));
  }
  return chosen;
}

/** Delta-E*ab of the masstones. */
function apart({ lab: one }: MixingPaint, { lab: other }: MixingPaint): number {
  return Math.hypot(...[0, 1, 2].map((i) => (one?.[i] ?? 0) - (other?.[i] ?? 0)));
}
