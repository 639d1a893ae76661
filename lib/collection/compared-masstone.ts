import type { Lab } from "../colorimetry/viewing.ts";
import { spectrumLab } from "../colorimetry/spectrum-lab.ts";
import { isKnown, type Figure } from "../quantities/figure.ts";
import type { InRange, MasstoneInRange } from "./in-range.ts";
import { knownLab } from "../sheet/notations/known-lab.ts";

/** Light from the surface is in a reading or shut out of it; the two never compare as read. */
export type GlossInReading = "included" | "shut out";

/** A masstone's Lab under D65/10 as it is held against others', with the larger of its standard uncertainties. */
export interface ComparedMasstone {
  readonly lab: Lab;
  readonly gloss: GlossInReading;
  readonly uncertainty?: number;
}

/**
 * A masstone brought to gloss shut out: as read in 45/0 or with gloss excluded, else with the
 * surface light of its own paint taken off. A Lab read with gloss included has no spectrum to
 * take it off, and compares with its like alone.
 *
 * @returns undefined where no Lab under D65/10 is known.
 */
export function comparedMasstone(
  notations: Omit<MasstoneInRange, "curve"> | undefined,
): ComparedMasstone | undefined {
  const read = notations?.lab["D65/10"];
  const lab = knownLab(read);
  if (read === undefined || lab === undefined) return undefined;
  const uncertainty = largest(read.L, read.a, read.b);
  const excluded = notations?.glossExcludedCurve;
  if (excluded !== undefined)
    return {
      lab: spectrumLab(excluded),
      gloss: "shut out",
      ...uncertainty,
    };
  return {
    lab,
    gloss: notations?.geometry === "d/8 included" ? "included" : "shut out",
    ...uncertainty,
  };
}

/** Whether a masstone was read on a film that lets its ground through: another thickness is another colour, so that it compares with none. */
export function showsItsGround({ optics }: Pick<InRange, "optics">): boolean {
  return optics.reasons.some(
    ({ rule }) => rule === "masstone-is-a-film" || rule === "masstone-by-both-grounds",
  );
}

/** The largest of figures' standard uncertainties, where one has any. */
export function largest(...figures: readonly Figure<number>[]): { readonly uncertainty?: number } {
  const known = figures.flatMap((figure) =>
    isKnown(figure) && figure.uncertainty !== undefined ? [figure.uncertainty] : [],
  );
  return known.length === 0 ? {} : { uncertainty: Math.max(...known) };
}
