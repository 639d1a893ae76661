import type { DrierRow } from "../../drying/added-drier.ts";
import type { MediumChange } from "../../drying/medium-in-paint.ts";
import type { DryingStatement } from "../../drying/statements.ts";
import type { ValuesOf } from "../../quantities/statement.ts";
import { DRYING_CAUSES, OILS } from "../closed-sets.ts";
import {
  bracketed,
  dayCount,
  degrees,
  micrometres,
  percent,
  sentence,
  significant,
  timesTheDays,
  withUnit,
  within,
} from "./phrases.ts";

export const ACTS: Readonly<Record<DrierRow["acts"], string>> = {
  surface: "dries from the surface",
  through: "dries all through",
  auxiliary: "helps the other driers",
};

export const CONDITIONS = {
  filmThicknessUm: "film thickness",
  temperatureC: "temperature",
} as const;

export const CHANGES: Readonly<Record<MediumChange, string>> = {
  drying: "drying",
  finish: "the finish",
  "fat over lean": "fat over lean",
  yellowing: "yellowing",
};

type Of<R extends DryingStatement["rule"]> = ValuesOf<DryingStatement, R>;

export function classed({
  touchDryDays,
  filmThicknessUm,
  temperatureC,
}: Omit<Of<"drying-class">, "dryingClass">): string {
  return `touch dry in ${dayCount(touchDryDays)} (wet film of ${micrometres(filmThicknessUm)} at ${degrees(temperatureC)})`;
}

export function oilShare({ oil, massFraction }: Of<"linseed-sets-the-days">): string {
  return `${OILS[oil].en}${shareOf(massFraction, "oil")}`;
}

function shareOf(massFraction: number | undefined, whole: string): string {
  return massFraction !== undefined && massFraction < 1
    ? bracketed(`${percent(massFraction)} of the ${whole}`)
    : "";
}

type NamedShare = Pick<Acting, "pigment" | "massFraction">;

export function pigmentShare({ pigment, massFraction }: NamedShare): string {
  return `${within(pigment)}${shareOf(massFraction, "pigment")}`;
}

export function partShare({ part, ...share }: Of<"part-as-tried">): string {
  return pigmentShare({ ...share, pigment: part });
}

export function theWhite({ pigment, massFraction }: NamedShare): string {
  return `the white${bracketed(
    within(pigment),
    massFraction === undefined ? undefined : `${percent(massFraction)} of the pigment`,
  )}`;
}

export function alone({ daysInLinseed }: Pick<Acting, "daysInLinseed">): string {
  return `alone in linseed oil ${dayCount(daysInLinseed)}`;
}

type Acting = Of<"pigment-speeds-drying" | "white-speeds-drying" | "pigment-slows-drying">;

export function speeds(subject: string, v: Acting): string {
  return sentence(
    `${subject} speeds drying, since its ${v.chemistry} ${DRYING_CAUSES[v.cause].en} (${alone(v)})`,
  );
}

export function slows(subject: string, v: Acting): string {
  return sentence(`${subject} slows drying, since ${DRYING_CAUSES[v.cause].en} (${alone(v)})`);
}

export function takesNoPart(subject: string, v: Acting): string {
  return sentence(`${subject} takes no part in the drying (${alone(v)})`);
}

export function drier({ metal, percentOnOil }: Of<"added-drier">): string {
  return `${metal} drier (${withUnit(significant(percentOnOil, 2), "%")} metal on oil)`;
}

export function film({ filmThicknessUm, classFilmUm, factor }: Of<"thick-film-slows">): string {
  return `A film of ${micrometres(filmThicknessUm)} in place of ${micrometres(classFilmUm)}: ${timesTheDays(factor)}.`;
}

export function room({ temperatureC, classTemperatureC, factor }: Of<"cold-slows">): string {
  return `At ${degrees(temperatureC)} in place of ${degrees(classTemperatureC)}: ${timesTheDays(factor)}.`;
}

export function trial({
  touchDryDays,
  throughDryDays,
  filmThicknessUm,
  temperatureC,
  humidityPercent,
  toldBy,
}: Of<"trial-decides">): string {
  const through =
    throughDryDays === undefined ? "" : `, through dry in ${dayCount(throughDryDays)}`;
  const whose = toldBy === undefined ? "the workshop's own trial" : "a trial as stated by others";
  return `${whose}: touch dry in ${dayCount(touchDryDays)}${through}${bracketed(
    filmThicknessUm === undefined ? undefined : micrometres(filmThicknessUm),
    temperatureC === undefined ? undefined : degrees(temperatureC),
    humidityPercent === undefined
      ? undefined
      : `${withUnit(significant(humidityPercent, 2), "%")} humidity`,
  )}`;
}

export function beside({ touchDryDays, expectedDays }: Of<"trial-slower-than-expected">): string {
  return `touch dry in ${dayCount(touchDryDays)} against ${significant(expectedDays, 2)}`;
}

export function oilOfFilm({ oilVolumeFraction }: Of<"lean-film">): string {
  const judged = typeof oilVolumeFraction === "number" ? "" : ", by the middle of the estimate";
  return `${judged}: oil ${percent(oilVolumeFraction)} of the dry film by volume`;
}
