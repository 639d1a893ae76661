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
  { path, value }: Compared,
  other?: Compared,
): ClaimFault | undefined {
  const [lower, upper] = ends(value);
  if ("between" in claim) {
    const [from, to] = claim.between;
    if (lower >= from && upper <= to) return undefined;
    return {
      rule: "claims/value",
      key: "between",
      message: `${path} is ${plainText(value)}; the claim wants it between ${plainText(from)} and ${plainText(to)}`,
      actual: plainText(value),
      expected: `between ${plainText(from)} and ${plainText(to)}`,
    };
  }
  const by = claim.by ?? 0;
  const margin = by === 0 ? "" : ` by ${plainText(by)}`;
  const [side, wanted] =
    "below" in claim ? (["below", claim.below] as const) : (["above", claim.above] as const);
  const limit = other === undefined ? Number(wanted) : ends(other.value)[side === "below" ? 0 : 1];
  const apart = side === "below" ? limit - upper : lower - limit;
  if (by === 0 ? apart > 0 : apart >= by) return undefined;
  const wantedText =
    `${side} ${other === undefined ? plainText(limit) : `${other.path}, ${plainText(other.value)},`}${margin}`.replace(
      /,$/,
      "",
    );
  return {
    rule: other === undefined ? "claims/value" : "claims/order",
    key: side,
    message: `${path} is ${plainText(value)}; the claim wants it ${wantedText}`,
    actual: plainText(value),
    expected: wantedText,
  };
}

/** First of its rivals, by a margin where the claim asks for one. Rivals leave the figure's own colour out. */
export function rankFault(
  side: "lowestOf" | "highestOf",
  path: string,
  value: Quantity,
  rivals: readonly Compared[],
  by = 0,
): ClaimFault | undefined {
  const beaten = rivals.find((rival) => {
    const apart =
      side === "lowestOf"
        ? ends(rival.value)[0] - ends(value)[1]
        : ends(value)[0] - ends(rival.value)[1];
    return !(by === 0 ? apart > 0 : apart >= by);
  });
  if (beaten === undefined) return undefined;
  const word = side === "lowestOf" ? "below" : "above";
  return {
    rule: "claims/rank",
    key: side,
    message: `${path} is ${plainText(value)}; the claim wants it ${word} every rival${by === 0 ? "" : ` by ${plainText(by)}`}, and ${beaten.path} is ${plainText(beaten.value)}`,
    actual: plainText(value),
    expected: `${word} every rival${by === 0 ? "" : ` by ${plainText(by)}`}, and ${beaten.path} is ${plainText(beaten.value)}`,
  };
}
