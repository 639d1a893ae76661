import type { DrierRow } from "../../drying/added-drier.ts";
import type { MediumChange } from "../../drying/medium-in-paint.ts";
import type { DryingStatement } from "../../drying/statements.ts";
import type { ValuesOf } from "../../quantities/statement.ts";
import { CHEMISTRIES, DRYING_CAUSES, METALS, OILS, wordOf } from "../closed-sets.ts";
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
  surface: "seca por la superficie",
  through: "seca en toda la masa",
  auxiliary: "ayuda a los demás secantes",
};

/** What a finger finds of a film that is not dry to the touch. */
export const NOT_DRY = { wet: "húmeda", tacky: "pegajosa" } as const;

export const CONDITIONS = {
  filmThicknessUm: "el espesor de la película",
  temperatureC: "la temperatura",
} as const;

export const CHANGES: Readonly<Record<MediumChange, string>> = {
  drying: "al secado",
  finish: "al acabado",
  "fat over lean": "a la regla de graso sobre magro",
  yellowing: "al amarilleo",
};

type Of<R extends DryingStatement["rule"]> = ValuesOf<DryingStatement, R>;

export function classed({
  touchDryDays,
  filmThicknessUm,
  temperatureC,
}: Omit<Of<"drying-class">, "dryingClass">): string {
  return `seco al tacto en ${dayCount(touchDryDays)} (película húmeda de ${micrometres(filmThicknessUm)} a ${degrees(temperatureC)})`;
}

export function oilShare({ oil, massFraction }: Of<"linseed-sets-the-days">): string {
  return `${OILS[oil].es}${shareOf(massFraction, "del aceite")}`;
}

function shareOf(massFraction: number | undefined, whole: string): string {
  return massFraction !== undefined && massFraction < 1
    ? bracketed(`${percent(massFraction)} ${whole}`)
    : "";
}

type NamedShare = Pick<Acting, "pigment" | "massFraction">;

export function pigmentShare({ pigment, massFraction }: NamedShare): string {
  return `${within(pigment)}${shareOf(massFraction, "del pigmento")}`;
}

export function partShare({ part, ...share }: Of<"part-as-tried">): string {
  return pigmentShare({ ...share, pigment: part });
}

export function theWhite({ pigment, massFraction }: NamedShare): string {
  return `el blanco${bracketed(
    within(pigment),
    massFraction === undefined ? undefined : `${percent(massFraction)} del pigmento`,
  )}`;
}

export function alone({ daysInLinseed }: Pick<Acting, "daysInLinseed">): string {
  return `solo en aceite de linaza, ${dayCount(daysInLinseed)}`;
}

type Acting = Of<"pigment-speeds-drying" | "white-speeds-drying" | "pigment-slows-drying">;

export function speeds(subject: string, v: Acting): string {
  return sentence(
    `${subject} acelera el secado: su ${wordOf(CHEMISTRIES, v.chemistry, "es")} ${DRYING_CAUSES[v.cause].es} (${alone(v)})`,
  );
}

export function slows(subject: string, v: Acting): string {
  return sentence(`${subject} retarda el secado: ${DRYING_CAUSES[v.cause].es} (${alone(v)})`);
}

export function takesNoPart(subject: string, v: Acting): string {
  return sentence(`${subject} no interviene en el secado (${alone(v)})`);
}

export function drier({ metal, percentOnOil }: Of<"added-drier">): string {
  return `el secante de ${METALS[metal].es} (${withUnit(significant(percentOnOil, 2), "%")} de metal sobre el aceite)`;
}

export function film({ filmThicknessUm, classFilmUm, factor }: Of<"thick-film-slows">): string {
  return `Una película de ${micrometres(filmThicknessUm)} en lugar de ${micrometres(classFilmUm)}: ${timesTheDays(factor)}.`;
}

export function room({ temperatureC, classTemperatureC, factor }: Of<"cold-slows">): string {
  return `A ${degrees(temperatureC)} en lugar de ${degrees(classTemperatureC)}: ${timesTheDays(factor)}.`;
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
    throughDryDays === undefined ? "" : `, seco en profundidad en ${dayCount(throughDryDays)}`;
  const whose = toldBy === undefined ? "ensayo del taller" : "ensayo comunicado por otros";
  return `${whose}: seco al tacto en ${dayCount(touchDryDays)}${through}${bracketed(
    filmThicknessUm === undefined ? undefined : micrometres(filmThicknessUm),
    temperatureC === undefined ? undefined : degrees(temperatureC),
    humidityPercent === undefined
      ? undefined
      : `${withUnit(significant(humidityPercent, 2), "%")} de humedad`,
  )}`;
}

export function beside({ touchDryDays, expectedDays }: Of<"trial-slower-than-expected">): string {
  return `seco al tacto en ${dayCount(touchDryDays)} frente a ${significant(expectedDays, 2)}`;
}

export function oilOfFilm({ oilVolumeFraction }: Of<"lean-film">): string {
  const judged = typeof oilVolumeFraction === "number" ? "" : ", según el centro de la estimación";
  return `${judged}: el aceite es el ${percent(oilVolumeFraction)} de la película seca en volumen`;
}
