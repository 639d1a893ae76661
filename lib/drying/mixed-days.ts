/**
 * Days to touch dry of two paints mixed, from what each takes alone: a trial of a part stands for
 * all that rules would reckon of it, and each part counts by its share.
 *
 * @source practice-drying : a rule of this project.
 */
import { domainError } from "../diagnostics/diagnostic.ts";
import { ends, type Interval, type Quantity } from "../quantities/interval.ts";

/** How far [1] a trial, or a mixture of two, is trusted either way. */
export const MIXTURE_SPREAD = 1.25;

export interface MixedPart {
  /** Days to touch dry alone [d], > 0: as tried, or as the rules expect. */
  readonly touchDryDays: Quantity;
  /** Share of the dry pigment by mass, 0-1. */
  readonly massFraction: number;
  /** Share from which it acts on the oil in full: a drying metal and a fine carbon act in small amounts. */
  readonly fullFromMassFraction: number;
}

/**
 * Days of the mixture: between the mean by mass and the mean by how fully each part acts,
 *
 *     days = days_1 ^ (1 - w) days_2 ^ w,  w from massFraction_2 to a_2 / (a_1 + a_2),  a = min(1, share / full)
 *
 * @returns [d], never outside the days of its two parts by more than the spread.
 * @throws RangeError when days or shares are out of domain.
 * @example mixedDays({ touchDryDays: 9, massFraction: .95, fullFromMassFraction: .25 }, { touchDryDays: 8, massFraction: .05, fullFromMassFraction: .02 }) // about [6.8, 11]
 */
export function mixedDays(one: MixedPart, other: MixedPart): Interval {
  for (const { touchDryDays, massFraction, fullFromMassFraction } of [one, other]) {
    for (const days of ends(touchDryDays))
      if (!(days > 0 && days < Infinity))
        throw domainError("days to touch dry", days, "0 < days < Infinity");
    if (!(massFraction >= 0 && massFraction <= 1))
      throw domainError("share of the dry pigment", massFraction, "0 <= share <= 1");
    if (!(fullFromMassFraction > 0 && fullFromMassFraction <= 1))
      throw domainError("share that acts in full", fullFromMassFraction, "0 < share <= 1");
  }
  const [first, second] = [acting(one), acting(other)];
  const byMass = other.massFraction / (one.massFraction + other.massFraction);
  const byAction = second / (first + second);
  const [a, b] = [ends(one.touchDryDays), ends(other.touchDryDays)];
  const corners = [byMass, byAction].flatMap((w) =>
    [0, 1].map((i) => (a[i] ?? NaN) ** (1 - w) * (b[i] ?? NaN) ** w),
  );
  return [Math.min(...corners) / MIXTURE_SPREAD, Math.max(...corners) * MIXTURE_SPREAD];
}

function acting({ massFraction, fullFromMassFraction }: MixedPart): number {
  return Math.min(1, massFraction / fullFromMassFraction);
}
