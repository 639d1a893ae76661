/** Faults of a drying trial as recorded. */
import type { Complaint } from "../diagnostics/complaint.ts";
import { ends, type Interval } from "../quantities/interval.ts";
import { missingConditions, type DryingTrial } from "./drying-trial.ts";
import { FILM_REACH_UM, TEMPERATURE_REACH_C } from "./film-conditions.ts";

/** Days [d] after which a film that is not touch dry was most likely timed in hours. */
export const LONGEST_TOUCH_DRY_DAYS = 120;

/** Faults of a trial as recorded: conditions left out or out of reach, days that cannot be. */
export function trialComplaints(trial: DryingTrial): Complaint[] {
  const complaint = (
    severity: Complaint["severity"],
    rule: string,
    subject: string,
    actual: unknown,
    expected: string,
    hint?: string,
  ): Complaint => ({
    severity,
    rule: `drying/${rule}`,
    subject,
    actual: String(actual),
    expected,
    ...(hint === undefined ? {} : { hint }),
  });
  const reach = (
    subject: string,
    value: number | undefined,
    [least, most]: Interval,
    unit: string,
  ): Complaint[] =>
    value === undefined || (value >= least && value <= most)
      ? []
      : [complaint("error", "trial-reach", subject, value, `${least} to ${most} ${unit}`)];
  const touch = ends(trial.touchDryDays)[1];
  const through = trial.throughDryDays === undefined ? Infinity : ends(trial.throughDryDays)[1];
  return [
    ...missingConditions(trial).map((condition) =>
      complaint(
        "warning",
        "trial-conditions",
        "drying trial",
        `no ${condition}`,
        "film thickness and temperature beside the days",
      ),
    ),
    ...reach("film thickness of a drying trial", trial.filmThicknessUm, FILM_REACH_UM, "um"),
    ...reach("temperature of a drying trial", trial.temperatureC, TEMPERATURE_REACH_C, "degrees C"),
    ...reach("humidity of a drying trial", trial.humidityPercent, [0, 100], "%"),
    ...(touch > LONGEST_TOUCH_DRY_DAYS
      ? [
          complaint(
            "warning",
            "trial-days",
            "days to touch dry",
            touch,
            `at most ${LONGEST_TOUCH_DRY_DAYS}`,
            `${Number((touch / 24).toPrecision(3))} days if it was given in hours`,
          ),
        ]
      : []),
    ...(through < touch
      ? [
          complaint(
            "error",
            "trial-order",
            "days to through dry",
            through,
            `at least the ${touch} days to touch dry`,
          ),
        ]
      : []),
  ];
}
