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
  within,
  withUnit,
} from "./phrases.ts";

export const ACTS: Readonly<Record<DrierRow["acts"], string>> = {
  surface: "trocknet von der Oberfläche her",
  through: "trocknet durch",
  auxiliary: "unterstützt die anderen Sikkative",
};

/** What a finger finds of a film that is not dry to the touch. */
export const NOT_DRY = { wet: "nass", tacky: "klebrig" } as const;

export const CONDITIONS = { filmThicknessUm: "Filmdicke", temperatureC: "Temperatur" } as const;

export const CHANGES: Readonly<Record<MediumChange, string>> = {
  drying: "die Trocknung",
  finish: "den Glanzgrad",
  "fat over lean": "die Regel „fett auf mager“",
  yellowing: "die Vergilbung",
};

type Of<R extends DryingStatement["rule"]> = ValuesOf<DryingStatement, R>;

export function classed({
  touchDryDays,
  filmThicknessUm,
  temperatureC,
}: Omit<Of<"drying-class">, "dryingClass">): string {
  return `grifftrocken in ${dayCount(touchDryDays, "dative")} (Nassfilm von ${micrometres(filmThicknessUm)} bei ${degrees(temperatureC)})`;
}

export function oilShare({ oil, massFraction }: Of<"linseed-sets-the-days">): string {
  return `${OILS[oil].de}${shareOf(massFraction, "des Öls")}`;
}

function shareOf(massFraction: number | undefined, whole: string): string {
  return massFraction !== undefined && massFraction < 1
    ? bracketed(`${percent(massFraction)} ${whole}`)
    : "";
}

type NamedShare = Pick<Acting, "pigment" | "massFraction">;

export function pigmentShare({ pigment, massFraction }: NamedShare): string {
  return `${within(pigment)}${shareOf(massFraction, "des Pigments")}`;
}

export function partShare({ part, ...share }: Of<"part-as-tried">): string {
  return pigmentShare({ ...share, pigment: part });
}

export function theWhite({ pigment, massFraction }: NamedShare): string {
  return `das Weiß${bracketed(
    within(pigment),
    massFraction === undefined ? undefined : `${percent(massFraction)} des Pigments`,
  )}`;
}

export function alone({ daysInLinseed }: Pick<Acting, "daysInLinseed">): string {
  return `allein in Leinöl ${dayCount(daysInLinseed)}`;
}

type Acting = Of<"pigment-speeds-drying" | "white-speeds-drying" | "pigment-slows-drying">;

export function speeds(subject: string, v: Acting): string {
  return sentence(
    `${subject} beschleunigt die Trocknung (${wordOf(CHEMISTRIES, v.chemistry, "de")}): ${DRYING_CAUSES[v.cause].de} (${alone(v)})`,
  );
}

export function slows(subject: string, v: Acting): string {
  return sentence(
    `${subject} verlangsamt die Trocknung: ${DRYING_CAUSES[v.cause].de} (${alone(v)})`,
  );
}

export function takesNoPart(subject: string, v: Acting): string {
  return sentence(`${subject} ist an der Trocknung unbeteiligt (${alone(v)})`);
}

export function drier({ metal, percentOnOil }: Of<"added-drier">): string {
  return `${METALS[metal].de}-Sikkativ (${withUnit(significant(percentOnOil, 2), "%")} Metall auf Öl)`;
}

export function film({ filmThicknessUm, classFilmUm, factor }: Of<"thick-film-slows">): string {
  return `Ein Film von ${micrometres(filmThicknessUm)} statt ${micrometres(classFilmUm)}: ${timesTheDays(factor)}.`;
}

export function room({ temperatureC, classTemperatureC, factor }: Of<"cold-slows">): string {
  return `Bei ${degrees(temperatureC)} statt ${degrees(classTemperatureC)}: ${timesTheDays(factor)}.`;
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
    throughDryDays === undefined
      ? ""
      : `, durchgetrocknet in ${dayCount(throughDryDays, "dative")}`;
  const whose =
    toldBy === undefined ? "eigener Versuch der Werkstatt" : "Versuch nach Angabe anderer";
  return `${whose}: grifftrocken in ${dayCount(touchDryDays, "dative")}${through}${bracketed(
    filmThicknessUm === undefined ? undefined : micrometres(filmThicknessUm),
    temperatureC === undefined ? undefined : degrees(temperatureC),
    humidityPercent === undefined
      ? undefined
      : `${withUnit(significant(humidityPercent, 2), "%")} Luftfeuchte`,
  )}`;
}

export function beside({ touchDryDays, expectedDays }: Of<"trial-slower-than-expected">): string {
  return `grifftrocken in ${dayCount(touchDryDays, "dative")} statt in ${significant(expectedDays, 2)}`;
}

export function oilOfFilm({ oilVolumeFraction }: Of<"lean-film">): string {
  const judged = typeof oilVolumeFraction === "number" ? "" : ", nach der Mitte der Schätzung";
  return `${judged}: Nach Volumen macht Öl ${percent(oilVolumeFraction)} des trockenen Films aus`;
}
