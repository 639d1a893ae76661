import { wetFilmStatements, type WetFilm, type WetFilmStatement } from "../drying/wet-film.ts";
import { dryingSoFar, exposureSoFar } from "../lots/trial-series.ts";
import {
  changeSoFarStatements,
  SAME_CHANGE,
  type ChangeSoFar,
  type ChangeSoFarStatement,
} from "../permanence/change-so-far.ts";
import { lightfastnessRuling, type LightfastnessCategory } from "../permanence/lightfastness.ts";
import { ends, type Interval } from "../quantities/interval.ts";
import type { Records } from "../records/records.ts";
import type { ColourRecord } from "../records/schema/colour.ts";
import type { TrialRecord } from "../records/schema/trial.ts";
import { recordedTrial } from "../sheet/drying/drying-trials.ts";
import { recordedExposure } from "../sheet/permanence/fading-components.ts";
import { changeSoFar, wetSoFar } from "../sheet/trials/found-so-far.ts";

/** What a trial that is over has found. */
export type TrialResult =
  | {
      readonly kind: "exposure";
      /** The greatest change read [Delta-E*ab]: a colour does not come back. */
      readonly deltaEab: number;
      readonly category: LightfastnessCategory;
    }
  /** Dry to the touch after the first day and by the second [days]. */
  | { readonly kind: "drying"; readonly touchDryDays: Interval };

/** A result that the record of its colour does not have. */
export interface OpenResult {
  /** The trial's. */
  readonly slug: string;
  readonly trial: TrialRecord;
  /** YYYY-MM-DD. */
  readonly ended: string;
  readonly result: TrialResult;
  /** What the record says in its place, where that is better: a change [Delta-E*ab], or days to the touch. */
  readonly better?: number;
}

/** Results of trials that are over and do not stand in the records of their colours, the oldest first. */
export function openResults(
  { trials, colours }: Pick<Records, "trials" | "colours">,
  ofColour?: string,
): OpenResult[] {
  return [...trials.values()]
    .filter(({ record }) => ofColour === undefined || record.colour === ofColour)
    .flatMap(({ slug, record: trial }): OpenResult[] => {
      const over = trialResult(trial);
      const colour = colours.get(trial.colour)?.record;
      if (over === undefined || colour === undefined) return [];
      const { isThere, better } = besideRecord(over.result, trial, colour);
      return isThere ? [] : [{ slug, trial, ...over, ...(better !== undefined && { better }) }];
    })
    .toSorted((one, other) => (one.ended < other.ended ? -1 : 1));
}

/** What a trial without a result has found so far. */
export interface FoundSoFar {
  /** The trial's. */
  readonly slug: string;
  readonly trial: TrialRecord;
  readonly found:
    | (ChangeSoFar & { readonly kind: "exposure"; readonly category: LightfastnessCategory })
    | (WetFilm & { readonly kind: "drying" });
  /** Where the record of its colour tells it better. */
  readonly contradiction?: WetFilmStatement | ChangeSoFarStatement;
}

/** Of trials that go on, and of films that never dried, what cannot become better any more. */
export function foundSoFar(
  { trials, colours }: Pick<Records, "trials" | "colours">,
  ofColour?: string,
): FoundSoFar[] {
  return [...trials.values()]
    .filter(({ record }) => ofColour === undefined || record.colour === ofColour)
    .flatMap(({ slug, record: trial }): FoundSoFar[] => {
      const colour = colours.get(trial.colour)?.record;
      if (colour === undefined || trialResult(trial) !== undefined) return [];
      if (trial.kind === "exposure") {
        const change = changeSoFar(trial);
        if (change === undefined) return [];
        const { category } = lightfastnessRuling(change.deltaEab);
        const [contradiction] = changeSoFarStatements(
          change,
          (colour.exposures ?? []).map(recordedExposure),
        );
        return [
          {
            slug,
            trial,
            found: { kind: "exposure", ...change, category },
            ...(contradiction !== undefined && { contradiction }),
          },
        ];
      }
      const film = wetSoFar(trial);
      if (film === undefined) return [];
      const recorded = (colour.dryingTrials ?? []).filter(
        ({ tintedWith }) => tintedWith === trial.tintedWith,
      );
      const [contradiction] = wetFilmStatements(film, recorded.map(recordedTrial));
      return [
        {
          slug,
          trial,
          found: { kind: "drying", ...film },
          ...(contradiction !== undefined && { contradiction }),
        },
      ];
    });
}

/** Undefined while it goes on, and of one that ended before anything was found that a record takes. */
export function trialResult(trial: TrialRecord): Pick<OpenResult, "ended" | "result"> | undefined {
  if (trial.kind === "exposure") {
    const { category } = exposureSoFar(trial.started, trial.readings, trial.ended);
    if (trial.ended === undefined || category === undefined) return undefined;
    const deltaEab = Math.max(...trial.readings.map((reading) => reading.deltaEab));
    return { ended: trial.ended, result: { kind: "exposure", deltaEab, category } };
  }
  const { touchDryDays, nextDate } = dryingSoFar(trial.started, touches(trial), trial.ended);
  const ended = trial.ended ?? trial.touched.at(-1)?.date;
  if (nextDate !== undefined || ended === undefined || touchDryDays === undefined) return undefined;
  return { ended, result: { kind: "drying", touchDryDays } };
}

/** What a finger found, day by day. */
export function touches({ touched }: Extract<TrialRecord, { kind: "drying" }>) {
  return touched.map(({ date, found }) => ({ date, touch: found }));
}

function besideRecord(
  result: TrialResult,
  trial: TrialRecord,
  colour: ColourRecord,
): { readonly isThere: boolean; readonly better?: number } {
  if (result.kind === "exposure") {
    const form = trial.kind === "exposure" ? trial.form : undefined;
    const changes = (colour.exposures ?? [])
      .filter((exposure) => exposure.form === form)
      .map(({ deltaEab }) => amountEnds(deltaEab));
    const mean = changes.reduce((sum, [, most]) => sum + most, 0) / changes.length;
    return {
      isThere: changes.some(
        ([least, most]) =>
          result.deltaEab >= least - SAME_CHANGE && result.deltaEab <= most + SAME_CHANGE,
      ),
      ...(mean < result.deltaEab - SAME_CHANGE && { better: mean }),
    };
  }
  const tintedWith = trial.kind === "drying" ? trial.tintedWith : undefined;
  const days = (colour.dryingTrials ?? [])
    .filter((one) => one.tintedWith === tintedWith)
    .map(({ touchDryDays }) => amountEnds(touchDryDays));
  const slowest = Math.max(...days.map(([, most]) => most));
  const [wet, dry] = result.touchDryDays;
  return {
    isThere: days.some(([least, most]) => least <= dry && most >= wet),
    ...(days.length > 0 && slowest < wet && { better: slowest }),
  };
}

function amountEnds(amount: NonNullable<ColourRecord["exposures"]>[number]["deltaEab"]): Interval {
  return ends(typeof amount === "number" ? amount : amount.value);
}
