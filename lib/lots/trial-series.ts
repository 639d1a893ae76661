/** Trials that take months, as what has been read of them so far. */
import {
  LIGHTFASTNESS_LIMITS,
  lightfastnessRuling,
  type LightfastnessCategory,
} from "../permanence/lightfastness.ts";
import type { Interval } from "../quantities/interval.ts";
import { TOUCHES, type Touch } from "../drying/touch.ts";
import { addedDays, daysBetween } from "./calendar.ts";

export interface DatedChange {
  /** YYYY-MM-DD. */
  readonly date: string;
  /** Delta-E*ab (CIE 1976) from the unexposed half [1]. */
  readonly deltaEab: number;
}

/** An exposure as far as it has gone. */
export interface ExposureSoFar {
  /** Days from the start, and the change by then, the start itself first. */
  readonly curve: readonly { readonly day: number; readonly deltaEab: number }[];
  /** By the greatest change so far: a colour does not come back. Absent before the first reading. */
  readonly category?: LightfastnessCategory;
  /** Upper limit of that category [Delta-E*ab]; absent of the last. */
  readonly limit?: number;
  /** When to read again; absent once it has ended. */
  readonly nextDate?: string;
}

/** Readings double their distance from the start, and none is further off than this [days]. Common practice, no source. */
const FIRST_READING_DAYS = 30;
const LONGEST_PAUSE_DAYS = 180;

/**
 * @param started, ended YYYY-MM-DD. @param readings in order of date.
 * @source astm-d4303 : the limits; the category is of what has been read so far, not of the standard's exposure
 */
export function exposureSoFar(
  started: string,
  readings: readonly DatedChange[],
  ended?: string,
): ExposureSoFar {
  const curve = [
    { day: 0, deltaEab: 0 },
    ...readings.map(({ date, deltaEab }) => ({ day: daysBetween(started, date), deltaEab })),
  ];
  const last = curve.at(-1)?.day ?? 0;
  const worst = Math.max(...readings.map(({ deltaEab }) => deltaEab));
  const found = readings.length === 0 ? undefined : lightfastnessRuling(worst);
  const isLast = found?.category === LIGHTFASTNESS_LIMITS.at(-1)?.category;
  return {
    curve,
    ...(found !== undefined && { category: found.category }),
    ...(found === undefined || isLast ? {} : { limit: found.limit.deltaEabMax }),
    ...(ended === undefined
      ? {
          nextDate: addedDays(
            started,
            last === 0 ? FIRST_READING_DAYS : last + Math.min(last, LONGEST_PAUSE_DAYS),
          ),
        }
      : {}),
  };
}

/** A drying trial as far as it has gone: each state was reached between two days. */
export interface DryingSoFar {
  readonly curve: readonly { readonly day: number; readonly touch: Touch }[];
  /** After the last day on which it was not, and by the first on which it was [days]. */
  readonly touchDryDays?: Interval;
  readonly throughDryDays?: Interval;
  readonly nextDate?: string;
}

/** @param touched in order of date. */
export function dryingSoFar(
  started: string,
  touched: readonly { readonly date: string; readonly touch: Touch }[],
  ended?: string,
): DryingSoFar {
  const curve: DryingSoFar["curve"] = [
    { day: 0, touch: "wet" },
    ...touched.map(({ date, touch }) => ({ day: daysBetween(started, date), touch })),
  ];
  const reached = (touch: Touch): Interval | undefined => {
    const first = curve.findIndex((one) => TOUCHES.indexOf(one.touch) >= TOUCHES.indexOf(touch));
    const [before, at] = [curve[first - 1], curve[first]];
    return before === undefined || at === undefined ? undefined : [before.day, at.day];
  };
  const [touchDryDays, throughDryDays] = [reached("touch dry"), reached("through dry")];
  const last = curve.at(-1)?.day ?? 0;
  return {
    curve,
    ...(touchDryDays !== undefined && { touchDryDays }),
    ...(throughDryDays !== undefined && { throughDryDays }),
    ...(ended !== undefined || throughDryDays !== undefined
      ? {}
      : { nextDate: addedDays(started, last + (touchDryDays === undefined ? 1 : 7)) }),
  };
}
