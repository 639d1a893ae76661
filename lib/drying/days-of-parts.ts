/**
 * Days to touch dry of several paints or pigments together, from what each takes alone: a trial
 * of a part stands for all that rules would reckon of it, and each part counts by its share.
 *
 * @source practice-drying : a rule of this project.
 */
import { domainError } from "../diagnostics/diagnostic.ts";
import { at } from "../quantities/at.ts";
import { ends, spanning, type Interval, type Quantity } from "../quantities/interval.ts";
import type { StatementOf } from "../quantities/statement.ts";
import { requireDays } from "./drying-class.ts";

/** How far [1] a trial is trusted either way once its paint is mixed with another. */
export const TRIAL_SPREAD = 1.25;

export interface PartAlone {
  readonly name: string;
  /** Days to touch dry alone [d], > 0: as tried, or as the rules expect. */
  readonly touchDryDays: Quantity;
  readonly isTried: boolean;
  /** Share of the dry pigment by mass, 0-1; undefined when the parts are not recorded. */
  readonly massFraction: number | undefined;
  /** Share from which it acts on the oil in full: a drying metal and a fine carbon act in small amounts. */
  readonly fullFromMassFraction: number;
}

export type PartStatement = StatementOf<
  "part-as-tried" | "part-by-the-rules",
  { readonly part: string; readonly daysAlone: Quantity; readonly massFraction?: number }
>;

export interface DaysOfParts {
  /** [d], no later than the slowest part alone, no sooner than the fastest with its spread. */
  readonly touchDryDays: Interval;
  readonly statements: readonly PartStatement[];
}

/**
 * Between the geometric mean weighed by mass and the one weighed by how fully each part acts,
 *
 *     days = days_1 ^ w_1 days_2 ^ w_2 ...,  w from massFraction to a / sum a,  a = min(1, share / full)
 *
 * or, where a share is not known, from the fastest part to the slowest.
 *
 * @throws RangeError when days or shares are out of domain.
 * @example titanium white tried at 9 days with 5 % of lamp black tried at 8: about [6.8, 9]
 */
export function daysOfParts(parts: readonly PartAlone[]): DaysOfParts {
  parts.forEach(requirePart);
  const days = parts.map(({ touchDryDays, isTried }): Interval => {
    const [earlier, later] = ends(touchDryDays);
    return isTried ? [earlier / TRIAL_SPREAD, later * TRIAL_SPREAD] : [earlier, later];
  });
  return {
    touchDryDays: noLaterThanAlone(
      together(days, weightings(parts)),
      parts.map(({ touchDryDays }) => touchDryDays),
    ),
    statements: parts.map(({ name, touchDryDays, isTried, massFraction }) => ({
      rule: isTried ? "part-as-tried" : "part-by-the-rules",
      values: {
        part: name,
        daysAlone: touchDryDays,
        ...(massFraction !== undefined && { massFraction }),
      },
      standing: isTried ? "measured" : "estimated",
      ...(isTried ? {} : { source: "practice-drying" }),
    })),
  };
}

/**
 * Days of a mixture [d], which dries no later than the slowest of its paints does alone.
 * @param alone [d] of each.
 */
export function noLaterThanAlone([earlier, later]: Interval, alone: readonly Quantity[]): Interval {
  const slowest = Math.max(...alone.map((days) => ends(days)[1]));
  return [Math.min(earlier, slowest), Math.min(later, slowest)];
}

function together(days: readonly Interval[], weights: readonly (readonly number[])[]): Interval {
  if (weights.length === 0) return spanning(days);
  const corners = weights.flatMap((one) =>
    ([0, 1] as const).map((end) =>
      days.reduce((product, ownDays, i) => product * ownDays[end] ** at(one, i), 1),
    ),
  );
  return [Math.min(...corners), Math.max(...corners)];
}

/** By mass, and by how fully each acts; none where an amount is not known. */
function weightings(parts: readonly PartAlone[]): number[][] {
  const shares = parts.flatMap(({ massFraction }) => massFraction ?? []);
  if (shares.length < parts.length) return [];
  const acting = parts.map(({ fullFromMassFraction }, i) =>
    Math.min(1, at(shares, i) / fullFromMassFraction),
  );
  return [shares, acting].map((weights) => {
    const whole = weights.reduce((sum, weight) => sum + weight, 0);
    return weights.map((weight) => weight / whole);
  });
}

function requirePart({ touchDryDays, massFraction, fullFromMassFraction }: PartAlone): void {
  requireDays(touchDryDays);
  if (massFraction !== undefined && !(massFraction >= 0 && massFraction <= 1))
    throw domainError("share of the dry pigment", massFraction, "0 <= share <= 1");
  if (!(fullFromMassFraction > 0 && fullFromMassFraction <= 1))
    throw domainError("share that acts in full", fullFromMassFraction, "0 < share <= 1");
}
