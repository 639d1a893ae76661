import { domainError } from "../diagnostics/diagnostic.ts";
import { ends, isInterval } from "../quantities/interval.ts";
import type { ComparedAmount } from "./compared-colour.ts";
import { COVERAGE, LEAST_DIFFERENCES } from "./least-differences.ts";
import type { ComparisonStatement, PlacesApart, Times } from "./statements.ts";

/** How far two colours lie apart in one thing. */
export interface Apart {
  readonly differs: boolean;
  /** Nothing lies between them. */
  readonly equal: boolean;
  /** To order pairs by. */
  readonly size: number;
  /** By how much; of what does not differ, why it is not told. */
  readonly ruling: ComparisonStatement;
}

interface Named {
  readonly name: string;
  readonly amount: ComparedAmount;
}

/** Estimates that overlap, days nearer than a day's look. */
const TOO_CLOSE: ComparisonStatement = { rule: "compared-too-close", values: {} };

/** Said of a difference between the nearer ends of estimates. */
const AT_LEAST = { atLeast: "the nearer ends" } as const;

/** Two masstones by their distance in L*a*b* (Delta-E*ab): it says which way, which Delta-E00 does not. */
export function masstonesApart(one: Named, other: Named): Apart {
  return coloursApart(one, other, COVERAGE.space, (values) => ({
    rule: "compared-masstones",
    values,
  }));
}

/** Two tints of one lightness by their distance in a*b*. */
export function tintsApart(one: Named, other: Named): Apart {
  return coloursApart(one, other, COVERAGE.plane, (values, L) => ({
    rule: "compared-tints",
    values: { ...values, L },
  }));
}

/** Lighter, redder, yellower are above 0: of the first against the second. */
function coloursApart(
  one: Named,
  other: Named,
  coverage: number,
  statement: (values: PlacesApart, L: number) => ComparisonStatement,
): Apart {
  if (one.amount.kind !== "colour" || other.amount.kind !== "colour")
    throw new RangeError("The amount is no colour; right would be one");
  const [lighter, redder, yellower] = [
    one.amount.L - other.amount.L,
    one.amount.a - other.amount.a,
    one.amount.b - other.amount.b,
  ];
  const distance = Math.hypot(lighter, redder, yellower);
  const borne = Math.max(
    LEAST_DIFFERENCES.colour,
    coverage * Math.hypot(one.amount.uncertainty ?? 0, other.amount.uncertainty ?? 0),
  );
  const differs = distance > borne;
  return {
    differs,
    equal: distance === 0,
    size: distance,
    ruling: differs
      ? statement(
          {
            one: one.name,
            other: other.name,
            a: one.amount.a,
            b: one.amount.b,
            lighter,
            redder,
            yellower,
            distance,
          },
          one.amount.L,
        )
      : { rule: "compared-within", values: { apart: distance, borne } },
  };
}

/** Two numbers by their ratio: single ones by their uncertainty, estimates by whether they overlap. */
export function numbersApart(one: Named, other: Named, of: Times): Apart {
  const { more, less, quantities } = ordered(one, other);
  const [least, most] = [ends(quantities.more)[0], ends(quantities.less)[1]];
  if (!(most > 0)) throw domainError(`amount of ${of}`, most, "> 0");
  const borne = Math.max(
    LEAST_DIFFERENCES.share * most,
    COVERAGE.number * Math.hypot(uncertainty(one), uncertainty(other)),
  );
  const differs = least - most > borne;
  const ratio = least / most;
  const isEstimate = isInterval(quantities.more) || isInterval(quantities.less);
  return {
    differs,
    equal: sameEnds(one, other),
    size: ratio,
    ruling: differs
      ? {
          rule: "compared-ratio",
          values: { of, more, less, ratio, ...(isEstimate ? AT_LEAST : {}) },
        }
      : isEstimate
        ? TOO_CLOSE
        : { rule: "compared-within-share", values: { share: ratio - 1, borne: borne / most } },
  };
}

/** Two drying times by the days between the end of the one and the start of the other. */
export function daysApart(one: Named, other: Named): Apart {
  const { more, less, quantities } = ordered(one, other);
  const [later, earlier] = [ends(quantities.more), ends(quantities.less)];
  const days = later[0] - earlier[1];
  const differs = days >= LEAST_DIFFERENCES.days;
  const exact = later[0] === later[1] && earlier[0] === earlier[1];
  return {
    differs,
    equal: sameEnds(one, other),
    size: days,
    ruling: differs
      ? {
          rule: "compared-days",
          values: { later: more, earlier: less, days, ...(exact ? {} : AT_LEAST) },
        }
      : TOO_CLOSE,
  };
}

function ordered(one: Named, other: Named) {
  if (one.amount.kind !== "number" || other.amount.kind !== "number")
    throw new RangeError("The amount is no number; right would be one");
  const [first, second] = [one.amount.value, other.amount.value];
  const isMore = ends(first)[0] + ends(first)[1] >= ends(second)[0] + ends(second)[1];
  return isMore
    ? { more: one.name, less: other.name, quantities: { more: first, less: second } }
    : { more: other.name, less: one.name, quantities: { more: second, less: first } };
}

function uncertainty({ amount }: Named): number {
  return amount.kind === "number" ? (amount.uncertainty ?? 0) : 0;
}

function sameEnds(one: Named, other: Named): boolean {
  if (one.amount.kind !== "number" || other.amount.kind !== "number") return false;
  const [first, second] = [ends(one.amount.value), ends(other.amount.value)];
  return first[0] === second[0] && first[1] === second[1];
}
