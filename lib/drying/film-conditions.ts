/**
 * What film and room do to drying, beside the film and room of the classes.
 *
 * @source practice-drying : both laws are estimates. Oxygen reaches a thick film
 *   more slowly: days go as thickness to the power of .5 to 1. Warmth speeds: ten
 *   degrees change the days 1.6 to 2.2 times.
 */
import { domainError } from "../diagnostics/diagnostic.ts";
import type { Interval } from "../quantities/interval.ts";
import { estimated, type StatementOf } from "../quantities/statement.ts";
import { signOf, type Contribution } from "./contribution.ts";
import { CLASS_FILM_UM, CLASS_TEMPERATURE_C } from "./drying-class.ts";

const THICKNESS_POWER: Interval = [0.5, 1];
const TEN_DEGREES: Interval = [1.6, 2.2];

/** Where the laws still say something: thinner is a stain, thicker never dries through as a film does; nobody paints colder or hotter. */
export const FILM_REACH_UM: Interval = [5, 1000];
export const TEMPERATURE_REACH_C: Interval = [5, 40];

export type FilmStatement = StatementOf<
  "film-as-classed" | "thick-film-slows" | "thin-film-speeds",
  { readonly filmThicknessUm: number; readonly classFilmUm: number; readonly factor: Interval }
>;

export type RoomStatement = StatementOf<
  "temperature-as-classed" | "cold-slows" | "warmth-speeds",
  { readonly temperatureC: number; readonly classTemperatureC: number; readonly factor: Interval }
>;

/**
 * @param filmThicknessUm wet film [um], 5-1000.
 * @throws RangeError outside that.
 */
export function filmContribution(filmThicknessUm: number): Contribution<FilmStatement> {
  const [least, most] = FILM_REACH_UM;
  if (!(filmThicknessUm >= least && filmThicknessUm <= most))
    throw domainError("film thickness", filmThicknessUm, `${least} <= thickness <= ${most} um`);
  const times = filmThicknessUm / CLASS_FILM_UM;
  const factor = ordered(times ** THICKNESS_POWER[0], times ** THICKNESS_POWER[1]);
  return {
    sign: signOf(factor),
    factor,
    statement: estimated(
      times === 1 ? "film-as-classed" : times > 1 ? "thick-film-slows" : "thin-film-speeds",
      { filmThicknessUm, classFilmUm: CLASS_FILM_UM, factor },
      "practice-drying",
    ),
  };
}

/**
 * @param temperatureC [degrees C], 5-40.
 * @throws RangeError outside that.
 */
export function temperatureContribution(temperatureC: number): Contribution<RoomStatement> {
  const [least, most] = TEMPERATURE_REACH_C;
  if (!(temperatureC >= least && temperatureC <= most))
    throw domainError("temperature", temperatureC, `${least} <= temperature <= ${most} degrees C`);
  const tens = (CLASS_TEMPERATURE_C - temperatureC) / 10;
  const factor = ordered(TEN_DEGREES[0] ** tens, TEN_DEGREES[1] ** tens);
  return {
    sign: signOf(factor),
    factor,
    statement: estimated(
      tens === 0 ? "temperature-as-classed" : tens > 0 ? "cold-slows" : "warmth-speeds",
      { temperatureC, classTemperatureC: CLASS_TEMPERATURE_C, factor },
      "practice-drying",
    ),
  };
}

function ordered(one: number, other: number): Interval {
  return [Math.min(one, other), Math.max(one, other)];
}
