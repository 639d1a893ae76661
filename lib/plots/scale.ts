import { requirePositive } from "../quantities/positive.ts";
import { domainError } from "../diagnostics/diagnostic.ts";
import { refusal } from "./svg.ts";

/** From a value to a place in user units. */
export type Scale = (value: number) => number;

/**
 * Even scale: equal differences are drawn equal. Values outside the domain go on in a line.
 * @throws RangeError when the domain is empty or not finite.
 */
export function evenScale(
  domain: readonly [number, number],
  range: readonly [number, number],
): Scale {
  const [low, high] = domain;
  if (!(high > low && Number.isFinite(high - low)))
    throw refusal("axis from, to", domain.join(", "), "from < to, finite");
  return (value) => range[0] + ((value - low) / (high - low)) * (range[1] - range[0]);
}

/**
 * The smallest step of a closed list that holds a value, so that two sheets are
 * drawn to the same scale or to visibly different ones, never to nearly the same.
 * @param steps rising.
 * @throws RangeError when the value is NaN or above the last step.
 */
export function smallestHolding<S extends number>(
  steps: readonly S[],
  value: number,
  subject: string,
): S {
  const step = steps.find((candidate) => value <= candidate);
  if (step === undefined) throw domainError(subject, value, `at most ${steps.at(-1) ?? "nothing"}`);
  return step;
}

/** The smallest of 1, 2, 5, 10, 20, 50 ... (and .5, .2, .1 ...) that holds a value above 0. */
export function smallestRoundHolding(value: number, subject: string): number {
  requirePositive(subject, value, "", "value");
  const decade = 10 ** Math.floor(Math.log10(value));
  // Not decade * step alone: 3e-7 would come out as 3.0000000000000004e-7.
  const factor = [1, 2, 5, 10, 20].find((step) => value <= decade * step * (1 + 1e-12)) ?? 20;
  return Number((decade * factor).toPrecision(1));
}
