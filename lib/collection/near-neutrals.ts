import type { Sheet } from "../sheet/sheet.ts";
import type { TintSection } from "../sheet/tints/tint-figures.ts";
import type { GlossInReading } from "./compared-masstone.ts";
import { slugOrder } from "../quantities/name-order.ts";

/** A black or grey of the range in one white. */
export interface NearNeutral {
  readonly sheet: Sheet;
  readonly tint: TintSection;
}

/** The white and every black and grey that was let down in it. */
export interface NeutralsInWhite {
  readonly white: TintSection["white"];
  readonly neutrals: readonly NearNeutral[];
}

/** Rules by which the sentence on a tint speaks of a grey: by its own a*, b*. */
const GREY_RULES = new Set(["stays-near-neutral", "leans", "turns-clearly", "turns-strongly"]);

/** A black or grey by its family, whatever its tints do; one of no family by what its tints are called. */
export function isNearNeutral(sheet: Sheet): boolean {
  const { family } = sheet;
  // Tints are another thing with every reading: those of other families are not asked for.
  if (family === undefined) return sheet.tints.some(isGreyTint);
  return (family === "black" || family === "grey") && sheet.tints.length > 0;
}

/** Whether a tint is a grey, and not a colour that its black has become. */
export function isGreyTint({ sentence }: TintSection): boolean {
  return GREY_RULES.has(sentence.rule);
}

/** The blacks and greys of a range in each white that one of them was let down in, the white of most of them first. */
export function nearNeutrals(sheets: readonly Sheet[]): NeutralsInWhite[] {
  const found = sheets
    .filter(isNearNeutral)
    .flatMap((sheet) => sheet.tints.map((tint): NearNeutral => ({ sheet, tint })));
  const whites = [...new Map(found.map(({ tint: { white } }) => [white.slug, white])).values()];
  return whites
    .map((white) => ({
      white,
      neutrals: found.filter(({ tint }) => tint.white.slug === white.slug),
    }))
    .sort(
      (one, other) =>
        other.neutrals.length - one.neutrals.length || slugOrder(one.white.slug, other.white.slug),
    );
}

/** Whether gloss is in the readings of a tint's let-downs. */
export function glossOfTint({ steps }: Pick<TintSection, "steps">): GlossInReading {
  return steps.some(({ geometry }) => geometry === "d/8 included") ? "included" : "shut out";
}

/** Names of those that were read with their gloss where others were read without: as read they do not compare. None where all were read alike. */
export function readWithGloss(neutrals: readonly NearNeutral[]): string[] {
  const withGloss = neutrals.filter(({ tint }) => glossOfTint(tint) === "included");
  return withGloss.length === neutrals.length
    ? []
    : [...new Set(withGloss.map(({ sheet }) => sheet.name))];
}
