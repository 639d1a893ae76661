import type { DrierRow } from "../../drying/added-drier.ts";
import type { MediumChange } from "../../drying/medium-in-paint.ts";
import type { DryingStatement } from "../../drying/statements.ts";
import type { Quantity } from "../../quantities/interval.ts";
import type { ValuesOf } from "../../quantities/statement.ts";
import { DRYING_CAUSES, OILS, CHEMISTRIES, METALS, wordOf } from "../closed-sets.ts";
import type { InEach } from "../in-each.ts";
import { de, en, es, fr, inEach, sentences } from "../phrases-in-each.ts";
import { bracketed, within } from "../phrases.ts";
import { alike } from "../texts.ts";

type Of<R extends DryingStatement["rule"]> = ValuesOf<DryingStatement, R>;

type NamedShare = Pick<Acting, "pigment" | "massFraction">;

type Acting = Of<"pigment-speeds-drying" | "white-speeds-drying" | "pigment-slows-drying">;

export const ACTS: Readonly<Record<DrierRow["acts"], InEach>> = {
  surface: {
    en: "dries from the surface",
    de: "trocknet von der Oberfläche her",
    fr: "sèche par la surface",
    es: "seca por la superficie",
  },
  through: {
    en: "dries all through",
    de: "trocknet durch",
    fr: "sèche dans la masse",
    es: "seca en toda la masa",
  },
  auxiliary: {
    en: "helps the other driers",
    de: "unterstützt die anderen Sikkative",
    fr: "aide les autres siccatifs",
    es: "ayuda a los demás secantes",
  },
};

export const CONDITIONS = {
  filmThicknessUm: {
    en: "film thickness",
    de: "Filmdicke",
    fr: "l’épaisseur du film",
    es: "el espesor de la película",
  },
  temperatureC: { en: "temperature", de: "Temperatur", fr: "la température", es: "la temperatura" },
} as const satisfies Readonly<Record<string, InEach>>;

export const CHANGES: Readonly<Record<MediumChange, InEach>> = {
  drying: { en: "drying", de: "die Trocknung", fr: "au séchage", es: "al secado" },
  finish: { en: "the finish", de: "den Glanzgrad", fr: "à l’aspect", es: "al acabado" },
  "fat over lean": {
    en: "fat over lean",
    de: "die Regel „fett auf mager“",
    fr: "à la règle du gras sur maigre",
    es: "a la regla de graso sobre magro",
  },
  yellowing: { en: "yellowing", de: "die Vergilbung", fr: "au jaunissement", es: "al amarilleo" },
};

export function classed({
  touchDryDays,
  filmThicknessUm,
  temperatureC,
}: Omit<Of<"drying-class">, "dryingClass">): InEach {
  return {
    en: `touch dry in ${en.dayCount(touchDryDays)} (wet film of ${en.micrometres(filmThicknessUm)} at ${en.degrees(temperatureC)})`,
    de: `grifftrocken in ${de.dayCount(touchDryDays, "dative")} (Nassfilm von ${de.micrometres(filmThicknessUm)} bei ${de.degrees(temperatureC)})`,
    fr: `sec au toucher en ${fr.dayCount(touchDryDays)} (film humide de ${fr.micrometres(filmThicknessUm)} à ${fr.degrees(temperatureC)})`,
    es: `seco al tacto en ${es.dayCount(touchDryDays)} (película húmeda de ${es.micrometres(filmThicknessUm)} a ${es.degrees(temperatureC)})`,
  };
}

export function oilShare({ oil, massFraction }: Of<"linseed-sets-the-days">): InEach {
  return withShare(OILS[oil], massFraction, {
    en: "of the oil",
    de: "des Öls",
    fr: "de l’huile",
    es: "del aceite",
  });
}

/** A name, and in brackets how much of the whole it is where it is not all of it. */
function withShare(name: InEach, massFraction: number | undefined, whole: InEach): InEach {
  return inEach((p, language) =>
    massFraction !== undefined && massFraction < 1
      ? `${name[language]} (${p.percent(massFraction)} ${whole[language]})`
      : name[language],
  );
}

export function pigmentShare({ pigment, massFraction }: NamedShare): InEach {
  return withShare(alike(within(pigment)), massFraction, OF_THE_PIGMENT);
}

const OF_THE_PIGMENT: InEach = {
  en: "of the pigment",
  de: "des Pigments",
  fr: "du pigment",
  es: "del pigmento",
};

export function partShare({ part, ...share }: Of<"part-as-tried">): InEach {
  return pigmentShare({ ...share, pigment: part });
}

export function theWhite({ pigment, massFraction }: NamedShare): InEach {
  return inEach((p, language) => {
    const share =
      massFraction === undefined
        ? undefined
        : `${p.percent(massFraction)} ${OF_THE_PIGMENT[language]}`;
    return `${THE_WHITE[language]}${bracketed(within(pigment), share)}`;
  });
}

const THE_WHITE: InEach = { en: "the white", de: "das Weiß", fr: "le blanc", es: "el blanco" };

export function alone({ daysInLinseed }: Pick<Acting, "daysInLinseed">): InEach {
  return {
    en: `alone in linseed oil ${en.dayCount(daysInLinseed)}`,
    de: `allein in Leinöl ${de.dayCount(daysInLinseed)}`,
    fr: `seul dans l’huile de lin, ${fr.dayCount(daysInLinseed)}`,
    es: `solo en aceite de linaza, ${es.dayCount(daysInLinseed)}`,
  };
}

export function speeds(subject: InEach, v: Acting): InEach {
  return sentences({
    en: `${subject.en} speeds drying, since its ${v.chemistry} ${DRYING_CAUSES[v.cause].en} (${alone(v).en})`,
    de: `${subject.de} beschleunigt die Trocknung (${wordOf(CHEMISTRIES, v.chemistry, "de")}): ${DRYING_CAUSES[v.cause].de} (${alone(v).de})`,
    fr: `${subject.fr} accélère le séchage\u202f: ${itsOwn(wordOf(CHEMISTRIES, v.chemistry, "fr"))} ${DRYING_CAUSES[v.cause].fr} (${alone(v).fr})`,
    es: `${subject.es} acelera el secado: su ${wordOf(CHEMISTRIES, v.chemistry, "es")} ${DRYING_CAUSES[v.cause].es} (${alone(v).es})`,
  });
}

export function slows(subject: InEach, v: Acting): InEach {
  return sentences({
    en: `${subject.en} slows drying, since ${DRYING_CAUSES[v.cause].en} (${alone(v).en})`,
    de: `${subject.de} verlangsamt die Trocknung: ${DRYING_CAUSES[v.cause].de} (${alone(v).de})`,
    fr: `${subject.fr} ralentit le séchage\u202f: ${DRYING_CAUSES[v.cause].fr} (${alone(v).fr})`,
    es: `${subject.es} retarda el secado: ${DRYING_CAUSES[v.cause].es} (${alone(v).es})`,
  });
}

export function takesNoPart(subject: InEach, v: Acting): InEach {
  return sentences({
    en: `${subject.en} takes no part in the drying (${alone(v).en})`,
    de: `${subject.de} ist an der Trocknung unbeteiligt (${alone(v).de})`,
    fr: `${subject.fr} n’intervient pas dans le séchage (${alone(v).fr})`,
    es: `${subject.es} no interviene en el secado (${alone(v).es})`,
  });
}

export function drier({ metal, percentOnOil }: Of<"added-drier">): InEach {
  return {
    en: `${metal} drier (${en.withUnit(en.significant(percentOnOil, 2), "%")} metal on oil)`,
    de: `${METALS[metal].de}-Sikkativ (${de.withUnit(de.significant(percentOnOil, 2), "%")} Metall auf Öl)`,
    fr: `le siccatif au ${METALS[metal].fr} (${fr.withUnit(fr.significant(percentOnOil, 2), "%")} de métal sur l’huile)`,
    es: `el secante de ${METALS[metal].es} (${es.withUnit(es.significant(percentOnOil, 2), "%")} de metal sobre el aceite)`,
  };
}

export function film({ filmThicknessUm, classFilmUm, factor }: Of<"thick-film-slows">): InEach {
  return {
    en: `A film of ${en.micrometres(filmThicknessUm)} in place of ${en.micrometres(classFilmUm)}: ${en.timesTheDays(factor)}.`,
    de: `Ein Film von ${de.micrometres(filmThicknessUm)} statt ${de.micrometres(classFilmUm)}: ${de.timesTheDays(factor)}.`,
    fr: `Un film de ${fr.micrometres(filmThicknessUm)} au lieu de ${fr.micrometres(classFilmUm)}\u202f: ${fr.timesTheDays(factor)}.`,
    es: `Una película de ${es.micrometres(filmThicknessUm)} en lugar de ${es.micrometres(classFilmUm)}: ${es.timesTheDays(factor)}.`,
  };
}

export function room({ temperatureC, classTemperatureC, factor }: Of<"cold-slows">): InEach {
  return {
    en: `At ${en.degrees(temperatureC)} in place of ${en.degrees(classTemperatureC)}: ${en.timesTheDays(factor)}.`,
    de: `Bei ${de.degrees(temperatureC)} statt ${de.degrees(classTemperatureC)}: ${de.timesTheDays(factor)}.`,
    fr: `À ${fr.degrees(temperatureC)} au lieu de ${fr.degrees(classTemperatureC)}\u202f: ${fr.timesTheDays(factor)}.`,
    es: `A ${es.degrees(temperatureC)} en lugar de ${es.degrees(classTemperatureC)}: ${es.timesTheDays(factor)}.`,
  };
}

/** What a trial found, how its film was, and who told it. */
export function trial({
  touchDryDays,
  throughDryDays,
  filmThicknessUm,
  temperatureC,
  humidityPercent,
  toldBy,
}: Of<"trial-decides">): InEach {
  const whose = toldBy === undefined ? OWN_TRIAL : TOLD_TRIAL;
  const through = throughDryDays === undefined ? alike("") : throughDryIn(throughDryDays);
  const film = inEach(({ bracketed, micrometres, degrees, withUnit, significant }, language) =>
    bracketed(
      filmThicknessUm === undefined ? undefined : micrometres(filmThicknessUm),
      temperatureC === undefined ? undefined : degrees(temperatureC),
      humidityPercent === undefined
        ? undefined
        : `${withUnit(significant(humidityPercent, 2), "%")} ${HUMIDITY[language]}`,
    ),
  );
  return {
    en: `${whose.en}: touch dry in ${en.dayCount(touchDryDays)}${through.en}${film.en}`,
    de: `${whose.de}: grifftrocken in ${de.dayCount(touchDryDays, "dative")}${through.de}${film.de}`,
    fr: `${whose.fr}\u202f: sec au toucher en ${fr.dayCount(touchDryDays)}${through.fr}${film.fr}`,
    es: `${whose.es}: seco al tacto en ${es.dayCount(touchDryDays)}${through.es}${film.es}`,
  };
}

const OWN_TRIAL: InEach = {
  en: "the workshop's own trial",
  de: "eigener Versuch der Werkstatt",
  fr: "essai de l’atelier",
  es: "ensayo del taller",
};
const TOLD_TRIAL: InEach = {
  en: "a trial as stated by others",
  de: "Versuch nach Angabe anderer",
  fr: "essai rapporté par d’autres",
  es: "ensayo comunicado por otros",
};
const HUMIDITY: InEach = {
  en: "humidity",
  de: "Luftfeuchte",
  fr: "d’humidité",
  es: "de humedad",
};

function throughDryIn(days: Quantity): InEach {
  return {
    en: `, through dry in ${en.dayCount(days)}`,
    de: `, durchgetrocknet in ${de.dayCount(days, "dative")}`,
    fr: `, sec à cœur en ${fr.dayCount(days)}`,
    es: `, seco en profundidad en ${es.dayCount(days)}`,
  };
}

export function beside({ touchDryDays, expectedDays }: Of<"trial-slower-than-expected">): InEach {
  return {
    en: `touch dry in ${en.dayCount(touchDryDays)} against ${en.significant(expectedDays, 2)}`,
    de: `grifftrocken in ${de.dayCount(touchDryDays, "dative")} statt in ${de.significant(expectedDays, 2)}`,
    fr: `sec au toucher en ${fr.dayCount(touchDryDays)} contre ${fr.significant(expectedDays, 2)}`,
    es: `seco al tacto en ${es.dayCount(touchDryDays)} frente a ${es.significant(expectedDays, 2)}`,
  };
}

/** After a subject: how much of the dry film is oil, and by what of an estimate it was judged. */
export function oilOfFilm({ oilVolumeFraction: share }: Of<"lean-film">): InEach {
  const judged = typeof share === "number" ? alike("") : BY_THE_MIDDLE;
  return {
    en: `${judged.en}: oil ${en.percent(share)} of the dry film by volume`,
    de: `${judged.de}: Nach Volumen macht Öl ${de.percent(share)} des trockenen Films aus`,
    fr: `${judged.fr}\u202f: l’huile fait ${fr.percent(share)} du film sec en volume`,
    es: `${judged.es}: el aceite es el ${es.percent(share)} de la película seca en volumen`,
  };
}

const BY_THE_MIDDLE: InEach = {
  en: ", by the middle of the estimate",
  de: ", nach der Mitte der Schätzung",
  fr: ", au milieu de l’estimation",
  es: ", según el centro de la estimación",
};

/** "son manganèse", "sa terre brune" */
function itsOwn(chemistry: string): string {
  return `${/^(?:terre|charge|phtalocyanine)/.test(chemistry) ? "sa" : "son"} ${chemistry}`;
}
