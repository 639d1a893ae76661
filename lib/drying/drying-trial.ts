/**
 * A drying trial, the workshop's own or one that somebody states: it overrides the estimate, and is shown with the
 * conditions it was made under. Nothing is reckoned from it to other conditions.
 */
import { ends, type Quantity, type Interval } from "../quantities/interval.ts";
import type { StatementOf } from "../quantities/statement.ts";
import {
  CLASS_FILM_UM,
  CLASS_TEMPERATURE_C,
  dryingClassRuling,
  type DryingClassRuling,
} from "./drying-class.ts";
import type { DryingEstimate } from "./drying-estimate.ts";

export interface DryingTrial {
  /** [d], > 0; two ends when the film was looked at now and then. */
  readonly touchDryDays: Quantity;
  readonly throughDryDays?: Quantity | undefined;
  readonly filmThicknessUm?: number | undefined;
  readonly temperatureC?: number | undefined;
  readonly humidityPercent?: number | undefined;
  /** Where the record names somebody else's trial. */
  readonly toldBy?: "others" | undefined;
}

export type TrialStatement = StatementOf<
  "trial-decides" | "trial-decides-for-its-own-film" | "trial-without-conditions",
  TrialValues
>;

interface Tried {
  readonly touchDryDays: Quantity;
  readonly throughDryDays?: Quantity;
  readonly filmThicknessUm?: number;
  readonly temperatureC?: number;
  readonly humidityPercent?: number;
  readonly toldBy?: "others";
  /** Conditions that the record leaves out. */
  readonly wanting: readonly Condition[];
}
type TrialValues = Pick<Tried, keyof Tried>;

export interface DryingTrialRuling {
  readonly ruling: DryingClassRuling;
  readonly touchDryDays: Quantity;
  readonly reason: TrialStatement;
  /** Conditions that the record leaves out. */
  readonly wanting: readonly Condition[];
}

/** What a trial's days mean nothing without. */
const TRIAL_CONDITIONS = ["filmThicknessUm", "temperatureC"] as const;
export type Condition = (typeof TRIAL_CONDITIONS)[number];

/** Conditions that a trial leaves out. */
export function missingConditions(trial: DryingTrial): readonly Condition[] {
  return TRIAL_CONDITIONS.filter((condition) => trial[condition] === undefined);
}

/** How far a trial may differ from another's film [1] and room [degrees C], or from the classes', and be of the same. */
export const SAME_FILM = 0.34;
export const SAME_ROOM_C = 3;

/**
 * Class from the trial.
 * @throws RangeError when the days are not finite numbers above 0.
 */
export function dryingTrialRuling(trial: DryingTrial): DryingTrialRuling {
  const { touchDryDays, filmThicknessUm, temperatureC } = trial;
  const ruling = dryingClassRuling(touchDryDays);
  const wanting = missingConditions(trial);
  const asClassed =
    filmThicknessUm !== undefined &&
    temperatureC !== undefined &&
    Math.abs(filmThicknessUm / CLASS_FILM_UM - 1) <= SAME_FILM &&
    Math.abs(temperatureC - CLASS_TEMPERATURE_C) <= SAME_ROOM_C;
  const rule =
    wanting.length > 0
      ? "trial-without-conditions"
      : asClassed
        ? "trial-decides"
        : "trial-decides-for-its-own-film";
  return {
    ruling,
    touchDryDays,
    wanting,
    reason: {
      rule,
      values: { ...recorded(trial), wanting },
      standing: trial.toldBy === undefined ? "measured" : "stated",
    },
  };
}

/** Without what was not recorded. */
function recorded({
  touchDryDays,
  throughDryDays,
  filmThicknessUm,
  temperatureC,
  humidityPercent,
  toldBy,
}: DryingTrial): Omit<TrialValues, "wanting"> {
  return {
    touchDryDays,
    ...(throughDryDays !== undefined && { throughDryDays }),
    ...(filmThicknessUm !== undefined && { filmThicknessUm }),
    ...(temperatureC !== undefined && { temperatureC }),
    ...(humidityPercent !== undefined && { humidityPercent }),
    ...(toldBy !== undefined && { toldBy }),
  };
}

/** How far [1] a trial may lie beyond the estimate, either way, before the two contradict each other. */
const TRIAL_TOLERANCE = 1.5;

export type TrialContradiction = StatementOf<
  "trial-slower-than-expected" | "trial-faster-than-expected",
  { readonly touchDryDays: Quantity; readonly expectedDays: Interval }
>;

/**
 * @param estimate made for the trial's own film, room and drier: an estimate for others is no measure of it.
 * @returns the contradiction, else undefined.
 */
export function trialContradiction(
  { touchDryDays }: DryingTrial,
  estimate: Pick<DryingEstimate, "touchDryDays">,
): TrialContradiction | undefined {
  const [earlier, later] = ends(touchDryDays);
  const [least, most]: Interval = estimate.touchDryDays;
  if (later * TRIAL_TOLERANCE >= least && earlier <= most * TRIAL_TOLERANCE) return undefined;
  return {
    rule: earlier > most ? "trial-slower-than-expected" : "trial-faster-than-expected",
    values: { touchDryDays, expectedDays: estimate.touchDryDays },
    standing: "derived",
    source: "practice-drying",
  };
}
