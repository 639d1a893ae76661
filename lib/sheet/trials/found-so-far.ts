/** What a trial that is read day by day has found that cannot become better: no colour comes back, and no film was dry before it was wet. */
import type { WetFilm } from "../../drying/wet-film.ts";
import { daysBetween } from "../../lots/calendar.ts";
import type { ChangeSoFar } from "../../permanence/change-so-far.ts";
import type { Checked, Records } from "../../records/records.ts";
import type { TrialRecord } from "../../records/schema/trial.ts";

type Trials = Pick<Records, "trials">;
type ExposureRecord = Extract<TrialRecord, { kind: "exposure" }>;
type DryingRecord = Extract<TrialRecord, { kind: "drying" }>;

export function trialsOf(colour: string, { trials }: Trials): readonly Checked<TrialRecord>[] {
  return [...trials.values()].filter(({ record }) => record.colour === colour);
}

/** The greatest change of an exposure; undefined before its first reading. */
export function changeSoFar({ form, readings }: ExposureRecord): ChangeSoFar | undefined {
  return readings.length === 0
    ? undefined
    : { form, deltaEab: Math.max(...readings.map(({ deltaEab }) => deltaEab)) };
}

/** The last look at a film that was not dry to the touch; undefined where none was. */
export function wetSoFar({
  started,
  filmThicknessUm,
  temperatureC,
  touched,
}: DryingRecord): WetFilm | undefined {
  const last = touched.findLast(({ found }) => found === "wet" || found === "tacky");
  return last === undefined || (last.found !== "wet" && last.found !== "tacky")
    ? undefined
    : { found: last.found, day: daysBetween(started, last.date), filmThicknessUm, temperatureC };
}

/** Of the trials of a colour's paint as it is, what exposures and films have found so far. */
export function foundSoFar(
  colour: string,
  records: Trials,
): { readonly changes: readonly ChangeSoFar[]; readonly films: readonly WetFilm[] } {
  const trials = trialsOf(colour, records).map(({ record }) => record);
  return {
    changes: trials.flatMap((trial) =>
      trial.kind === "exposure" ? (changeSoFar(trial) ?? []) : [],
    ),
    films: trials.flatMap((trial) =>
      trial.kind === "drying" && trial.tintedWith === undefined ? (wetSoFar(trial) ?? []) : [],
    ),
  };
}
