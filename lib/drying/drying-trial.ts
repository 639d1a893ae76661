/**
 * A workshop's own drying trial: it overrides the estimate, and is shown with the
 * conditions it was made under. Nothing is reckoned from it to other conditions.
 */
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { ends, type Quantity, type Range } from "../quantities/range.ts";
import type { Ruling } from "../quantities/ruling.ts";
import { CLASS_FILM_UM, CLASS_TEMPERATURE_C, dryingClassRuling, type DryingClassRuling } from "./drying-class.ts";
import type { DryingEstimate } from "./drying-estimate.ts";
import { FILM_REACH_UM, TEMPERATURE_REACH_C } from "./film-conditions.ts";

export interface DryingTrial {
  /** [d], > 0; two ends when the film was looked at now and then. */
  readonly touchDryDays: Quantity;
  readonly throughDryDays?: Quantity | undefined;
  readonly filmThicknessUm?: number | undefined;
  readonly temperatureC?: number | undefined;
  readonly humidityPercent?: number | undefined;
}

export interface DryingTrialRuling {
  readonly ruling: DryingClassRuling;
  readonly touchDryDays: Quantity;
  readonly reason: Ruling;
  /** Conditions that the record leaves out. */
  readonly wanting: readonly ("filmThicknessUm" | "temperatureC")[];
}

/** How far the trial may differ from the classes' film [1] and room [degrees C] before the class is said to be of another film. */
const SAME_FILM = 0.34;
const SAME_ROOM_C = 3;

/**
 * Class from the trial.
 * @throws RangeError when the days are not finite numbers above 0.
 */
export function dryingTrialRuling(trial: DryingTrial): DryingTrialRuling {
  const { touchDryDays, filmThicknessUm, temperatureC } = trial;
  const ruling = dryingClassRuling(touchDryDays);
  const wanting = (["filmThicknessUm", "temperatureC"] as const).filter((condition) => trial[condition] === undefined);
  const asClassed = filmThicknessUm !== undefined && temperatureC !== undefined
    && Math.abs(filmThicknessUm / CLASS_FILM_UM - 1) <= SAME_FILM && Math.abs(temperatureC - CLASS_TEMPERATURE_C) <= SAME_ROOM_C;
  const rule = wanting.length > 0 ? "trial-without-conditions" : asClassed ? "trial-decides" : "trial-decides-for-its-own-film";
  return {
    ruling, touchDryDays, wanting,
    reason: { rule, values: { ...given(trial), dryingClass: ruling.dryingClass, wanting }, standing: "measured" },
  };
}

function given(trial: DryingTrial): Record<string, Quantity> {
  const entries = (["touchDryDays", "throughDryDays", "filmThicknessUm", "temperatureC", "humidityPercent"] as const)
    .flatMap((key) => (trial[key] === undefined ? [] : [[key, trial[key]] as const]));
  return Object.fromEntries(entries);
}

/** How far [1] a trial may lie beyond the estimate, either way, before the two contradict each other. */
export const TRIAL_TOLERANCE = 1.5;

/**
 * @param estimate made for the trial's own film, room and drier: an estimate for others is no measure of it.
 * @returns the contradiction, else undefined.
 */
export function trialContradiction({ touchDryDays }: DryingTrial, estimate: DryingEstimate): Ruling | undefined {
  const [earlier, later] = ends(touchDryDays);
  const [least, most]: Range = estimate.touchDryDays;
  if (later * TRIAL_TOLERANCE >= least && earlier <= most * TRIAL_TOLERANCE) return undefined;
  return {
    rule: earlier > most ? "trial-slower-than-expected" : "trial-faster-than-expected",
    values: { touchDryDays, expectedDays: estimate.touchDryDays, tolerance: TRIAL_TOLERANCE }, standing: "derived", source: "practice-drying",
  };
}

/** A diagnostic still without its place: the record's reader knows that. */
export type Complaint = Omit<Diagnostic, "place">;

/** Days [d] after which a film that is not touch dry was most likely timed in hours. */
const LONGEST_TOUCH_DRY_DAYS = 120;

/** Faults of a trial as recorded: conditions left out or out of reach, days that cannot be. */
export function trialComplaints(trial: DryingTrial): Complaint[] {
  const complaint = (severity: Complaint["severity"], rule: string, subject: string, actual: unknown, expected: string, hint?: string): Complaint =>
    ({ severity, rule: `drying/${rule}`, subject, actual: String(actual), expected, ...(hint === undefined ? {} : { hint }) });
  const reach = (subject: string, value: number | undefined, [least, most]: Range, unit: string): Complaint[] =>
    value === undefined || (value >= least && value <= most) ? [] : [complaint("error", "trial-reach", subject, value, `${least} to ${most} ${unit}`)];
  const touch = ends(trial.touchDryDays)[1];
  const through = trial.throughDryDays === undefined ? Infinity : ends(trial.throughDryDays)[1];
  return [
    ...dryingTrialWanting(trial).map((condition) => complaint("warning", "trial-conditions", "drying trial", `no ${condition}`, "film thickness and temperature beside the days")),
    ...reach("film thickness of a drying trial", trial.filmThicknessUm, FILM_REACH_UM, "um"),
    ...reach("temperature of a drying trial", trial.temperatureC, TEMPERATURE_REACH_C, "degrees C"),
    ...reach("humidity of a drying trial", trial.humidityPercent, [0, 100], "%"),
    ...(touch > LONGEST_TOUCH_DRY_DAYS
      ? [complaint("warning", "trial-days", "days to touch dry", touch, `at most ${LONGEST_TOUCH_DRY_DAYS}`, `${Number((touch / 24).toPrecision(3))} days if it was given in hours`)] : []),
    ...(through < touch ? [complaint("error", "trial-order", "days to through dry", through, `at least the ${touch} days to touch dry`)] : []),
  ];
}

function dryingTrialWanting(trial: DryingTrial): readonly string[] {
  return (["filmThicknessUm", "temperatureC"] as const).filter((condition) => trial[condition] === undefined);
}
