import { isKnown } from "../quantities/figure.ts";
import { remembered } from "../quantities/remembered.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { EqualLightness } from "../sheet/tints/tint-figures.ts";

/** A black of one pigment in a white, at the lightnesses that its ladder reaches. */
export interface BlackInWhite {
  readonly slug: string;
  readonly name: string;
  readonly atL: Sheet["tints"][number]["atL"];
}

/** Blacks of the range that are made of one pigment, in order of slug, with what each does in a white. */
export const singleBlacksIn = remembered(
  (sheets: readonly Sheet[], white: string): readonly BlackInWhite[] =>
    singleBlacks(sheets).flatMap(({ slug, name, tints }) => {
      const atL = tints.find((tint) => tint.white.slug === white)?.atL;
      return atL === undefined ? [] : [{ slug, name, atL }];
    }),
);

/** Of blacks in a white so many whose greys at L* 50 lie nearest to a tint's in a*, b*, in the order of the range; all of a few, and of a tint that has none the first. */
export function nearestBlacks(
  blacks: readonly BlackInWhite[],
  tint: Pick<BlackInWhite, "atL"> | undefined,
  most: number,
): readonly BlackInWhite[] {
  if (blacks.length <= most) return blacks;
  const own = tint && greyAt(tint, "50");
  const apart = (black: BlackInWhite): number => {
    const its = greyAt(black, "50");
    return own === undefined || its === undefined
      ? Infinity
      : Math.hypot(its.a - own.a, its.b - own.b);
  };
  const farthest = blacks.map(apart).toSorted((one, other) => one - other)[most - 1];
  return blacks.filter((black) => apart(black) <= (farthest ?? Infinity)).slice(0, most);
}

export function singleBlacks(sheets: readonly Sheet[]): Sheet[] {
  // Of those of other families no more is asked.
  return sheets.filter((sheet) => sheet.family === "black" && sheet.pigments.length === 1);
}

/** a*, b* and the standard uncertainty of b* at a lightness; undefined where the ladder does not reach it. */
export function greyAt(
  { atL }: Pick<BlackInWhite, "atL">,
  level: EqualLightness,
): { readonly a: number; readonly b: number; readonly uncertainty: number } | undefined {
  const at = atL[level];
  if (at === undefined || !isKnown(at.a) || !isKnown(at.b)) return undefined;
  return { a: at.a.value, b: at.b.value, uncertainty: at.b.uncertainty ?? 0 };
}
