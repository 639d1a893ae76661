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
  surface: "sèche par la surface",
  through: "sèche dans la masse",
  auxiliary: "aide les autres siccatifs",
};

/** What a finger finds of a film that is not dry to the touch. */
export const NOT_DRY = { wet: "humide", tacky: "collant" } as const;

export const CONDITIONS = {
  filmThicknessUm: "l’épaisseur du film",
  temperatureC: "la température",
} as const;

export const CHANGES: Readonly<Record<MediumChange, string>> = {
  drying: "au séchage",
  finish: "à l’aspect",
  "fat over lean": "à la règle du gras sur maigre",
  yellowing: "au jaunissement",
};

type Of<R extends DryingStatement["rule"]> = ValuesOf<DryingStatement, R>;

export function classed({
  touchDryDays,
  filmThicknessUm,
  temperatureC,
}: Omit<Of<"drying-class">, "dryingClass">): string {
  return `sec au toucher en ${dayCount(touchDryDays)} (film humide de ${micrometres(filmThicknessUm)} à ${degrees(temperatureC)})`;
}

export function oilShare({ oil, massFraction }: Of<"linseed-sets-the-days">): string {
  return `${OILS[oil].fr}${shareOf(massFraction, "de l’huile")}`;
}

function shareOf(massFraction: number | undefined, whole: string): string {
  return massFraction !== undefined && massFraction < 1
    ? bracketed(`${percent(massFraction)} ${whole}`)
    : "";
}

type NamedShare = Pick<Acting, "pigment" | "massFraction">;

export function pigmentShare({ pigment, massFraction }: NamedShare): string {
  return `${within(pigment)}${shareOf(massFraction, "du pigment")}`;
}

export function partShare({ part, ...share }: Of<"part-as-tried">): string {
  return pigmentShare({ ...share, pigment: part });
}

export function theWhite({ pigment, massFraction }: NamedShare): string {
  return `le blanc${bracketed(
    within(pigment),
    massFraction === undefined ? undefined : `${percent(massFraction)} du pigment`,
  )}`;
}

export function alone({ daysInLinseed }: Pick<Acting, "daysInLinseed">): string {
  return `seul dans l’huile de lin, ${dayCount(daysInLinseed)}`;
}

type Acting = Of<"pigment-speeds-drying" | "white-speeds-drying" | "pigment-slows-drying">;

export function speeds(subject: string, v: Acting): string {
  return sentence(
    `${subject} accélère le séchage\u202f: ${itsOwn(wordOf(CHEMISTRIES, v.chemistry, "fr"))} ${DRYING_CAUSES[v.cause].fr} (${alone(v)})`,
  );
}

/** "son manganèse", "sa terre brune" */
function itsOwn(chemistry: string): string {
  return `${/^(?:terre|charge|phtalocyanine)/.test(chemistry) ? "sa" : "son"} ${chemistry}`;
}

export function slows(subject: string, v: Acting): string {
  return sentence(
    `${subject} ralentit le séchage\u202f: ${DRYING_CAUSES[v.cause].fr} (${alone(v)})`,
  );
}

export function takesNoPart(subject: string, v: Acting): string {
  return sentence(`${subject} n’intervient pas dans le séchage (${alone(v)})`);
}

export function drier({ metal, percentOnOil }: Of<"added-drier">): string {
  return `le siccatif au ${METALS[metal].fr} (${withUnit(significant(percentOnOil, 2), "%")} de métal sur l’huile)`;
}

export function film({ filmThicknessUm, classFilmUm, factor }: Of<"thick-film-slows">): string {
  return `Un film de ${micrometres(filmThicknessUm)} au lieu de ${micrometres(classFilmUm)}\u202f: ${timesTheDays(factor)}.`;
}

export function room({ temperatureC, classTemperatureC, factor }: Of<"cold-slows">): string {
  return `À ${degrees(temperatureC)} au lieu de ${degrees(classTemperatureC)}\u202f: ${timesTheDays(factor)}.`;
}

export function trial({
  touchDryDays,
  throughDryDays,
  filmThicknessUm,
  temperatureC,
  humidityPercent,
  toldBy,
}: Of<"trial-decides">): string {
  const through = throughDryDays === undefined ? "" : `, sec à cœur en ${dayCount(throughDryDays)}`;
  const whose = toldBy === undefined ? "essai de l’atelier" : "essai rapporté par d’autres";
  return `${whose}\u202f: sec au toucher en ${dayCount(touchDryDays)}${through}${bracketed(
    filmThicknessUm === undefined ? undefined : micrometres(filmThicknessUm),
    temperatureC === undefined ? undefined : degrees(temperatureC),
    humidityPercent === undefined
      ? undefined
      : `${withUnit(significant(humidityPercent, 2), "%")} d’humidité`,
  )}`;
}

export function beside({ touchDryDays, expectedDays }: Of<"trial-slower-than-expected">): string {
  return `sec au toucher en ${dayCount(touchDryDays)} contre ${significant(expectedDays, 2)}`;
}

export function oilOfFilm({ oilVolumeFraction }: Of<"lean-film">): string {
  const judged = typeof oilVolumeFraction === "number" ? "" : ", au milieu de l’estimation";
  return `${judged}\u202f: l’huile fait ${percent(oilVolumeFraction)} du film sec en volume`;
}
