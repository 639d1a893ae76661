import { certain } from "../quantities/at.ts";
import { slugOrder } from "../quantities/name-order.ts";

/** A range ranked by tinting strength, the strongest tube first; and what is let down but does not compare. */
export interface StrengthOrder<One> {
  readonly ranked: readonly One[];
  readonly others: readonly One[];
}

/** @param strengthOf tinting strength beside the workshop's reference [1]; undefined of what does not compare. */
export function strengthOrder<One extends { readonly slug: string }>(
  all: readonly One[],
  strengthOf: (one: One) => number | undefined,
  isLetDown: (one: One) => boolean,
): StrengthOrder<One> {
  return {
    ranked: all
      .filter((one) => strengthOf(one) !== undefined)
      .toSorted(
        (one, other) =>
          certain(strengthOf(other)) - certain(strengthOf(one)) || slugOrder(one.slug, other.slug),
      ),
    others: all.filter((one) => isLetDown(one) && strengthOf(one) === undefined),
  };
}
