/** Faults of a drying trial as recorded. */
import type { Complaint } from "../diagnostics/complaint.ts";
import { given } from "../quantities/given.ts";
import { ends, type Interval } from "../quantities/interval.ts";
import { missingConditions, type DryingTrial } from "./drying-trial.ts";
import { FILM_REACH_UM, TEMPERATURE_REACH_C } from "./film-conditions.ts";
import { filmUnitHint } from "./film-units.ts";

const CONDITION_WORDS = {
  filmThicknessUm: "its film thickness",
  temperatureC: "its temperature",
} as const;

/** What rooms are painted in [degrees C]. Common practice. */
const ROOM_C: Interval = [10, 35];
/** Days [d] after which a film that is not touch dry was most likely timed in hours. */
const LONGEST_TOUCH_DRY_DAYS = 120;

/** A complaint with the field of the trial that it is about; none when it is about the trial as a whole. */
export interface TrialComplaint extends Complaint {
  readonly field?: keyof DryingTrial;
}

/** Faults of a trial as recorded: conditions left out or out of reach, days that cannot be. */
export function trialComplaints(trial: DryingTrial): TrialComplaint[] {
  const complaint = (
    severity: Complaint["severity"],
    rule: string,
    field: keyof DryingTrial | undefined,
    message: string,
    actual: unknown,
    expected: string,
    hint?: string,
  ): TrialComplaint => ({
    severity,
    rule: `drying/${rule}`,
    ...(field !== undefined && { field }),
    message,
    actual: String(actual),
    expected,
    hint,
  });
  const reach = (
    field: "filmThicknessUm" | "temperatureC" | "humidityPercent",
    named: string,
    [least, most]: Interval,
    unit: string,
    hintOf: (value: number) => string | undefined = () => undefined,
  ): TrialComplaint[] => {
    const value = trial[field];
    return value === undefined || (value >= least && value <= most)
      ? []
      : [
          complaint(
            "error",
            "trial-reach",
            field,
            `The ${named} of a drying trial is ${value} ${unit}, and lies between ${least} and ${most} ${unit}`,
            value,
            `${least} to ${most} ${unit}`,
            hintOf(value),
          ),
        ];
  };
  const touch = ends(trial.touchDryDays)[1];
  const through = trial.throughDryDays === undefined ? Infinity : ends(trial.throughDryDays)[1];
  return given([
    ...missingConditions(trial).map((condition) =>
      complaint(
        "warning",
        "trial-conditions",
        undefined,
        `A drying trial tells days without ${CONDITION_WORDS[condition]}: they mean little without film thickness and temperature`,
        `no ${condition}`,
        "film thickness and temperature beside the days",
      ),
    ),
    ...reach("filmThicknessUm", "film thickness", FILM_REACH_UM, "um", filmUnitHint),
    ...reach("temperatureC", "temperature", TEMPERATURE_REACH_C, "degrees C", celsiusHint),
    ...reach("humidityPercent", "humidity", [0, 100], "%"),
    touch > LONGEST_TOUCH_DRY_DAYS &&
      complaint(
        "warning",
        "trial-days",
        "touchDryDays",
        `${touch} days to touch dry are more than the ${LONGEST_TOUCH_DRY_DAYS} that a trial takes`,
        touch,
        `at most ${LONGEST_TOUCH_DRY_DAYS}`,
        `${Number((touch / 24).toPrecision(3))} days if it was given in hours`,
      ),
    through < touch &&
      complaint(
        "error",
        "trial-order",
        "throughDryDays",
        `${through} days to through dry are fewer than the ${touch} days to touch dry`,
        through,
        `at least the ${touch} days to touch dry`,
      ),
  ]);
}

/** Of a room too warm in degrees Celsius, what it is if it was read in Fahrenheit. */
function celsiusHint(degrees: number): string | undefined {
  const celsius = ((degrees - 32) * 5) / 9;
  return celsius >= ROOM_C[0] && celsius <= ROOM_C[1]
    ? `${Math.round(celsius)} C if it was given in degrees Fahrenheit`
    : undefined;
}
