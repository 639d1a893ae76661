import type { Known } from "../quantities/figure.ts";
import { ends, isInterval, type Quantity } from "../quantities/interval.ts";
import type { ClaimRecord } from "../records/schema/answer.ts";
import { plainText, type ClaimFault } from "./verdict.ts";

/** A figure that can be compared: its path as the claim has it, and its number or estimate. */
export interface Compared {
  readonly path: string;
  readonly value: Quantity;
}

export type NumberClaim = Extract<
  ClaimRecord,
  { below: unknown } | { above: unknown } | { between: unknown }
>;

/** The figure as a number or range; undefined for a word, a notation or a series. */
export function quantityOf(
  figure: Known<number | string | readonly number[]>,
): Quantity | undefined {
  const { value } = figure;
  return typeof value === "number"
    ? value
    : typeof value !== "string" && isInterval(value)
      ? value
      : undefined;
}

/**
 * A number, or an estimate with both its ends, against a value, two limits or another
 * figure. An estimate stands only where all of it does: below means its upper end.
 * Limits themselves hold for `between`, and not for `below` and `above`.
 */
export function comparisonFault(
  claim: NumberClaim,
  own: Compared,
  other?: Compared,
): ClaimFault | undefined {
  const [lower, upper] = ends(own.value);
  if ("between" in claim) {
    const [from, to] = claim.between;
    return lower >= from && upper <= to
      ? undefined
      : valueFault(
          "claims/value",
          "between",
          own,
          `between ${plainText(from)} and ${plainText(to)}`,
        );
  }
  const [side, wanted] =
    "below" in claim ? (["below", claim.below] as const) : (["above", claim.above] as const);
  const limit = other === undefined ? Number(wanted) : ends(other.value)[side === "below" ? 0 : 1];
  if (isApart(side === "below" ? limit - upper : lower - limit, claim.by)) return undefined;
  const margin = marginText(claim.by);
  return other === undefined
    ? valueFault("claims/value", side, own, `${side} ${plainText(limit)}${margin}`)
    : valueFault(
        "claims/order",
        side,
        own,
        `${side} ${other.path}, ${plainText(other.value)}${margin === "" ? "" : `,${margin}`}`,
      );
}

/** First of its rivals, by a margin where the claim asks for one. Rivals leave the figure's own colour out. */
export function rankFault(
  side: "lowestOf" | "highestOf",
  own: Compared,
  rivals: readonly Compared[],
  by?: number,
): ClaimFault | undefined {
  const [lower, upper] = ends(own.value);
  const beaten = rivals.find(({ value }) => {
    const [least, most] = ends(value);
    return !isApart(side === "lowestOf" ? least - upper : lower - most, by);
  });
  const word = side === "lowestOf" ? "below" : "above";
  return (
    beaten &&
    valueFault(
      "claims/rank",
      side,
      own,
      `${word} every rival${marginText(by)}, and ${beaten.path} is ${plainText(beaten.value)}`,
    )
  );
}

function isApart(distance: number, by = 0): boolean {
  return by === 0 ? distance > 0 : distance >= by;
}

function marginText(by = 0): string {
  return by === 0 ? "" : ` by ${plainText(by)}`;
}

function valueFault(
  rule: ClaimFault["rule"],
  key: string,
  { path, value }: Compared,
  wanted: string,
): ClaimFault {
  return {
    rule,
    key,
    message: `${path} is ${plainText(value)}; the claim wants it ${wanted}`,
    actual: plainText(value),
    expected: wanted,
  };
}
