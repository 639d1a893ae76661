import { isKnown } from "../quantities/figure.ts";
import { remembered } from "../quantities/remembered.ts";
import type { EqualLightness, Sheet } from "../sheet/sheet.ts";

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

export function singleBlacks(sheets: readonly Sheet[]): Sheet[] {
  return sheets.filter(({ family, pigments }) => family === "black" && pigments.length === 1);
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
