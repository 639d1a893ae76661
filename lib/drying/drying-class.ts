/**
 * Drying class in a word, by days to touch dry of a 75 um film at 20 degrees C.
 *
 * @source practice-drying : the limits are an estimate of this project.
 */
import { requirePositive } from "../quantities/positive.ts";
import { ends, midpoint, type Quantity } from "../quantities/interval.ts";
import type { StatementOf } from "../quantities/statement.ts";
import { certain } from "../quantities/at.ts";

export type DryingClass = "fast" | "medium" | "slow" | "very slow";

export interface DryingLimit {
  readonly dryingClass: DryingClass;
  /** Most days to touch dry [d] still in this class, inclusive. */
  readonly touchDryDaysMax: number;
}

/** Film thickness [um, wet] and temperature [degrees C] that the classes are meant for. */
export const CLASS_FILM_UM = 75;
export const CLASS_TEMPERATURE_C = 20;

export const DRYING_LIMITS: readonly DryingLimit[] = [
  { dryingClass: "fast", touchDryDaysMax: 3 },
  { dryingClass: "medium", touchDryDaysMax: 6 },
  { dryingClass: "slow", touchDryDaysMax: 12 },
  { dryingClass: "very slow", touchDryDaysMax: Infinity },
];

interface ClassedDays {
  readonly touchDryDays: Quantity;
  readonly filmThicknessUm: number;
  readonly temperatureC: number;
}

export type DryingClassStatement =
  | StatementOf<"drying-class", ClassedDays & { readonly dryingClass: DryingClass }>
  | StatementOf<
      "drying-class-over-several",
      ClassedDays & { readonly spans: readonly DryingClass[] }
    >;

export interface DryingClassRuling {
  /** By the middle of a range: what a colour is counted under where one class has to do. */
  readonly dryingClass: DryingClass;
  readonly limit: DryingLimit;
  /** Every class that the days reach into, fastest first. */
  readonly spans: readonly DryingClass[];
  readonly reason: DryingClassStatement;
}

/**
 * @param touchDryDays [d], > 0; a range is counted by its middle, so that an estimate never ranks below a measured
 *   colour only because it is a range, and said with every class that it reaches into.
 * @returns the ruling; a figure on a limit belongs to the faster class, a range that begins on one to the slower.
 * @throws RangeError when an end is not a finite number above 0.
 * @example dryingClassRuling([3, 6]).dryingClass // "medium", by 4.5 days
 */
export function dryingClassRuling(touchDryDays: Quantity): DryingClassRuling {
  const [earlier, later] = ends(touchDryDays);
  requireDays(touchDryDays);
  const decidedAt = midpoint(touchDryDays);
  const limit = limitOf(decidedAt);
  const first = DRYING_LIMITS.findIndex((row) =>
    earlier < later ? earlier < row.touchDryDaysMax : earlier <= row.touchDryDaysMax,
  );
  const spans = DRYING_LIMITS.slice(first, DRYING_LIMITS.indexOf(limitOf(later)) + 1).map(
    (row) => row.dryingClass,
  );
  const classed = {
    touchDryDays,
    filmThicknessUm: CLASS_FILM_UM,
    temperatureC: CLASS_TEMPERATURE_C,
  };
  const ground = { standing: "estimated", source: "practice-drying" } as const;
  return {
    dryingClass: limit.dryingClass,
    limit,
    spans,
    reason:
      spans.length === 1
        ? {
            rule: "drying-class",
            values: { dryingClass: limit.dryingClass, ...classed },
            ...ground,
          }
        : { rule: "drying-class-over-several", values: { spans, ...classed }, ...ground },
  };
}

/** @throws RangeError unless each end is a finite number above 0. */
export function requireDays(touchDryDays: Quantity): void {
  for (const days of ends(touchDryDays)) {
    requirePositive("days to touch dry", days, "", "days");
  }
}

function limitOf(days: number): DryingLimit {
  return certain(DRYING_LIMITS.find((limit) => days <= limit.touchDryDaysMax));
}
