/** A film that is touched day by day, beside the days that the record of its colour tells. */
import { ends } from "../quantities/interval.ts";
import type { StatementOf } from "../quantities/statement.ts";
import { SAME_FILM, SAME_ROOM_C, type DryingTrial } from "./drying-trial.ts";

/** A film on the last day on which it was found not to be dry to the touch. */
export interface WetFilm extends FilmAndRoom {
  readonly found: "wet" | "tacky";
  /** From the start [d]. */
  readonly day: number;
}

type FilmAndRoom = Pick<DryingTrial, "filmThicknessUm" | "temperatureC">;

export type WetFilmStatement = StatementOf<
  "film-wet-beyond-record",
  { readonly found: WetFilm["found"]; readonly day: number; readonly recordedDays: number }
>;

/**
 * Days to the touch [d] that the trials on record tell of such a film in such a room, where they are sooner than it was
 * found: of several the slowest. A trial that leaves film or room out is no measure of it.
 */
export function sooner(film: WetFilm, recorded: readonly DryingTrial[]): number | undefined {
  const slowest = Math.max(
    ...recorded
      .filter((one) => isAlike(one, film))
      .map(({ touchDryDays }) => ends(touchDryDays)[1]),
  );
  return slowest > 0 && slowest < film.day ? slowest : undefined;
}

/** That a film was not dry yet on a day on which by the record it is. */
export function wetFilmStatements(
  film: WetFilm,
  recorded: readonly DryingTrial[],
): WetFilmStatement[] {
  const recordedDays = sooner(film, recorded);
  return recordedDays === undefined
    ? []
    : [
        {
          rule: "film-wet-beyond-record",
          values: { found: film.found, day: film.day, recordedDays },
          standing: "measured",
        },
      ];
}

function isAlike(
  { filmThicknessUm = NaN, temperatureC = NaN }: FilmAndRoom,
  { filmThicknessUm: otherUm = NaN, temperatureC: otherC = NaN }: FilmAndRoom,
): boolean {
  return (
    Math.abs(otherUm / filmThicknessUm - 1) <= SAME_FILM &&
    Math.abs(otherC - temperatureC) <= SAME_ROOM_C
  );
}
