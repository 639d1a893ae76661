import type { Sheet, TintSection } from "../sheet/sheet.ts";

/** A near-neutral of the range in one white. */
export interface NearNeutral {
  readonly sheet: Sheet;
  readonly tint: TintSection;
}

/** The white and what of the range stays grey in it. */
export interface NeutralsInWhite {
  readonly white: TintSection["white"];
  readonly neutrals: readonly NearNeutral[];
}

/** Rules by which the sentence on a tint speaks of a grey: by its own a*, b*, and not by family or name. */
const GREY_RULES = new Set(["stays-near-neutral", "leans", "turns-clearly", "turns-strongly"]);

/** Whether a colour is spoken of as a grey in some white. */
export function isNearNeutral({ tints }: Sheet): boolean {
  return tints.some(({ sentence }) => GREY_RULES.has(sentence.rule));
}

/** The near-neutrals of a range in each white that one of them was let down in, the white of most of them first. */
export function nearNeutrals(sheets: readonly Sheet[]): NeutralsInWhite[] {
  const found = sheets.flatMap((sheet) =>
    sheet.tints
      .filter(({ sentence }) => GREY_RULES.has(sentence.rule))
      .map((tint): NearNeutral => ({ sheet, tint })),
  );
  const whites = [...new Map(found.map(({ tint: { white } }) => [white.slug, white])).values()];
  return whites
    .map((white) => ({
      white,
      neutrals: found.filter(({ tint }) => tint.white.slug === white.slug),
    }))
    .sort(
      (one, other) =>
        other.neutrals.length - one.neutrals.length || (one.white.slug < other.white.slug ? -1 : 1),
    );
}
