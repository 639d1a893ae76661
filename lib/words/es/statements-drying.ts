import type { DrierRow } from "../../drying/added-drier.ts";
import type { MediumChange } from "../../drying/medium-in-paint.ts";
import type { DryingStatement } from "../../drying/statements.ts";
import { ends } from "../../quantities/interval.ts";
import type { ValuesOf, WordingsOf } from "../../quantities/statement.ts";
import {
  CHEMISTRIES,
  DRIER_METALS,
  DRYING_CAUSES,
  DRYING_CLASSES,
  OILS,
  wordOf,
} from "./closed-words.ts";
import {
  bracketed,
  dayCount,
  degrees,
  listed,
  micrometres,
  namesWithin,
  percent,
  sentence,
  significant,
  timesTheDays,
  withUnit,
  within,
} from "./phrases.ts";

const ACTS: Readonly<Record<DrierRow["acts"], string>> = {
  surface: "seca por la superficie",
  through: "seca en toda la masa",
  auxiliary: "ayuda a los demás secantes",
};

const CONDITIONS = {
  filmThicknessUm: "el espesor de la película",
  temperatureC: "la temperatura",
} as const;

const CHANGES: Readonly<Record<MediumChange, string>> = {
  drying: "al secado",
  finish: "al acabado",
  "fat over lean": "a la regla de graso sobre magro",
  yellowing: "al amarilleo",
};

type Of<R extends DryingStatement["rule"]> = ValuesOf<DryingStatement, R>;

/** Days to touch dry, layers, and the film with age. */
export const DRYING_RULINGS: WordingsOf<DryingStatement> = {
  "drying-class": ({ dryingClass, ...days }) =>
    sentence(`${DRYING_CLASSES[dryingClass]}: ${classed(days)}`),
  "drying-class-by-the-middle": ({ dryingClass, ...days }) =>
    sentence(`${DRYING_CLASSES[dryingClass]}, por el medio del intervalo: ${classed(days)}`),
  "pigment-chemistry-unknown": ({ pigments }) =>
    pigments.length === 0
      ? "No hay ningún pigmento registrado, así que no podemos calcular su secado."
      : `No sabemos qué ${pigments.length > 1 ? "hacen" : "hace"} ${namesWithin(pigments)} al secado del aceite.`,
  "linseed-oil-alone": ({ days }) =>
    `El aceite de linaza solo está seco al tacto en ${dayCount(days)}.`,
  "linseed-sets-the-days": (oil) => sentence(`los días parten de: ${oilShare(oil)}`),
  "oil-slower-than-linseed": ({ days, acting, ...oil }) =>
    `${sentence(`${oilShare(oil)}: seca más despacio que el de linaza (solo ${dayCount(days)})`)}${acting === undefined ? "" : ` Se cuenta al ${percent(acting)}: los pigmentos ya retrasan la pintura, y los dos efectos no se multiplican.`}`,
  "vehicle-not-stated": ({ factor }) =>
    `El aceite no está registrado: el de linaza es el más rápido, y con el más lento son ${timesTheDays(factor)}.`,
  "pigment-speeds-drying": (v) => speeds(pigmentShare(v), v),
  "white-speeds-drying": (v) => speeds(theWhite(v), v),
  "pigment-slows-drying": (v) => slows(pigmentShare(v), v),
  "white-slows-drying": (v) => slows(theWhite(v), v),
  "pigment-takes-no-part-in-drying": (v) => takesNoPart(pigmentShare(v), v),
  "white-takes-no-part-in-drying": (v) => takesNoPart(theWhite(v), v),
  "brown-earth-not-told": (v) =>
    sentence(
      `${pigmentShare(v)} puede ser una sombra o una siena, y su manganeso, que seca el aceite, no está registrado: los días abarcan los dos casos (${alone(v)})`,
    ),
  "pigment-parts-not-recorded": ({ pigments, daysInLinseed }) =>
    `Cuánto hay de ${namesWithin(pigments)} no está registrado: los días van de los del más rápido solo a los del más lento (en aceite de linaza ${dayCount(daysInLinseed)}).`,
  "part-as-tried": (v) =>
    sentence(
      `${partShare(v)}: solo, seco al tacto en ${dayCount(v.daysAlone)}, como se probó aquí`,
    ),
  "part-by-the-rules": (v) =>
    sentence(
      `${partShare(v)}: solo, seco al tacto en ${dayCount(v.daysAlone)}, por regla práctica`,
    ),
  "added-drier": (v) => sentence(`${drier(v)} ${ACTS[v.acts]}`),
  "carbon-takes-up-drier": (v) =>
    sentence(`${drier(v)} ${ACTS[v.acts]}, pero el carbono retiene hasta la mitad`),
  "film-as-classed": ({ filmThicknessUm }) =>
    `Calculado para una película húmeda de ${micrometres(filmThicknessUm)}.`,
  "thick-film-slows": (v) => film(v),
  "thin-film-speeds": (v) => film(v),
  "temperature-as-classed": ({ temperatureC }) => `Calculado para ${degrees(temperatureC)}.`,
  "cold-slows": (v) => room(v),
  "warmth-speeds": (v) => room(v),
  "trial-decides": (v) => sentence(trial(v)),
  "trial-decides-for-its-own-film": (v) =>
    sentence(`${trial(v)}; vale para esa película y esa sala`),
  "trial-without-conditions": (v) =>
    sentence(
      `${trial(v)}; sin ${listed(v.wanting.map((key) => CONDITIONS[key]))} en el registro, no sabemos para qué vale`,
    ),
  "trial-slower-than-expected": (v) =>
    `El ensayo fue más lento que la regla práctica: ${beside(v)}.`,
  "trial-faster-than-expected": (v) =>
    `El ensayo fue más rápido que la regla práctica: ${beside(v)}.`,
  "touch-dry-is-not-through-dry": ({ monthsBeforeVarnish }) =>
    `Por costumbre un cuadro espera ${significant(monthsBeforeVarnish, 2)} meses su barniz. Ni siquiera entonces ha dejado de cambiar.`,
  "skins-and-stays-soft": (v) =>
    sentence(
      `${pigmentShare(v)} hace piel y queda blando debajo, así que una pincelada gruesa puede arrugarse`,
    ),
  "driers-customary": ({ pigment }) =>
    `Los fabricantes suelen añadir un secante a ${within(pigment)}; en esta pintura no hay ninguno registrado.`,
  "drier-is-lost-in-the-tube": ({ metals }) =>
    `En el tubo el carbono sigue reteniendo secante (${listed(metals.map((metal) => DRIER_METALS[metal]))}): una pintura guardada mucho tiempo puede secar más despacio que una fresca.`,
  "holds-medium-not-known": ({ mediums, changes }) =>
    `No sabemos qué ${mediums.length > 1 ? "hacen" : "hace"} ${namesWithin(mediums)} ${CHANGES[changes]}.`,

  "lean-film": (v) => `Magra${oilOfFilm(v)}.`,
  "medium-fat-film": (v) => `Medianamente grasa${oilOfFilm(v)}.`,
  "fat-film": (v) => `Grasa${oilOfFilm(v)}.`,
  "zinc-out-of-underlayers": () => "No para las capas de debajo; en las de encima, en capa fina.",
  "fast-and-fat-thinly-below": () =>
    "Para las capas de debajo, en capa fina: seca deprisa pero es grasa, y lo que vaya encima debe ser igual de graso o más.",
  "fast-for-lower-layers": () => "Para las capas de debajo: seca deprisa.",
  "medium-for-any-layer": () =>
    "Para cualquier capa sobre pintura seca. En las capas de encima, añadir un poco de médium, para que cada una sea tan grasa como la de debajo.",
  "slow-but-lean-dry-it-through": () =>
    "Para las capas de encima: dejarla secar en profundidad antes de pintar sobre ella, y añadir un poco de médium sobre pintura más grasa.",
  "slow-for-last-layers": () =>
    "Para las últimas capas: hasta que esté seca en profundidad, no poner encima nada que seque más deprisa.",
  "oil-over-acrylic-ground": () =>
    "Dejar secar una imprimación acrílica algunos días antes de pintar al óleo sobre ella; seca al tacto no basta.",
  "never-acrylic-over-oil": () => "No pintar nunca con acrílico sobre óleo.",
  "oil-ground-through-dry-first": () =>
    "Dejar que una imprimación al óleo seque en profundidad antes de pintar sobre ella.",
  "absorbent-ground-draws-oil": () =>
    "Una imprimación de cola y creta absorbe el aceite de la pintura, y el color se rechupa.",
  "rigid-support-for-brittle-ground": () =>
    "Una imprimación de cola y creta es quebradiza: usarla sobre un soporte rígido.",

  "zinc-makes-brittle": (v) =>
    sentence(`${pigmentShare(v)} vuelve quebradiza la película con la edad`),
  "zinc-soaps-may-part-layers": (v) =>
    sentence(
      `${pigmentShare(v)} forma jabones con el aceite, y pinturas sobre capas de cinc se han agrietado y desprendido`,
    ),
  "lead-makes-tough": (v) => sentence(`${pigmentShare(v)} hace una película tenaz y flexible`),
  "lead-soaps": (v) =>
    sentence(
      `${pigmentShare(v)} forma jabones con el aceite, que pueden hacer más transparente la película con la edad, empujar granos a través de ella o velarla de blanco`,
    ),
  "oil-rich-wrinkles-when-thick": ({ oilVolumeFraction, from }) =>
    `${ends(oilVolumeFraction)[0] < from ? "Puede ser rica en aceite" : "Rica en aceite"} (${percent(oilVolumeFraction)} de la película seca en volumen): desde el ${percent(from)} una pincelada gruesa puede arrugarse.`,
  "sinks-in-on-absorbent-ground-alone": () => `Solo se rechupa sobre una imprimación absorbente.`,
  "sinks-in-easily": () => `Se rechupa con facilidad, en manchas apagadas: le sobra poco aceite.`,
  "may-sink-in": () =>
    `Puede rechuparse, en manchas apagadas, si tiene tan poco aceite como permite la estimación.`,
  "dull-of-itself": () => `Es mate por naturaleza: nutrirla con aceite no la hará brillante.`,
  "may-be-dull-of-itself": () =>
    `Puede ser mate por naturaleza, y entonces nutrirla con aceite no la hará brillante, si tiene tan poco aceite como permite la estimación.`,
  "oiling-out": () =>
    "Donde se haya rechupado mientras se pinta, un poco de aceite frotado sobre la película seca y limpiado después devuelve la profundidad. No acabar así un cuadro; usar barniz.",
  "yellows-most": ({ oil }) =>
    sentence(
      `${OILS[oil]}: el que más amarillea de los aceites secantes, y el que hace la película más tenaz`,
    ),
  "yellows-less": ({ oil }) =>
    sentence(`${OILS[oil]}: amarillea menos que el aceite de linaza corriente`),
  "yellows-least": ({ oil }) =>
    sentence(
      `${OILS[oil]}: de los aceites que menos amarillean, y da una película más débil, que seca más despacio`,
    ),
  "drier-above-customary": ({ metal, percentOnOil, customaryPercent }) =>
    `Un ${withUnit(significant(percentOnOil, 2), "%")} de ${DRIER_METALS[metal]} sobre el aceite es más que el ${withUnit(significant(customaryPercent, 2), "%")} usual: la película puede hacer piel y arrugarse.`,
  "surface-drier-alone": ({ metals }) =>
    sentence(
      `${listed(metals.map((metal) => DRIER_METALS[metal]))} ${metals.length > 1 ? "secan" : "seca"} por la superficie, sin un secante de masa al lado: una pincelada gruesa puede arrugarse`,
    ),
};

function classed({
  touchDryDays,
  filmThicknessUm,
  temperatureC,
}: Omit<Of<"drying-class">, "dryingClass">): string {
  return `seco al tacto en ${dayCount(touchDryDays)} (película húmeda de ${micrometres(filmThicknessUm)} a ${degrees(temperatureC)})`;
}

function oilShare({ oil, massFraction }: Of<"linseed-sets-the-days">): string {
  return `${OILS[oil]}${shareOf(massFraction, "del aceite")}`;
}

function shareOf(massFraction: number | undefined, whole: string): string {
  return massFraction !== undefined && massFraction < 1
    ? bracketed(`${percent(massFraction)} ${whole}`)
    : "";
}

type NamedShare = Pick<Acting, "pigment" | "massFraction">;

function pigmentShare({ pigment, massFraction }: NamedShare): string {
  return `${within(pigment)}${shareOf(massFraction, "del pigmento")}`;
}

function partShare({ part, ...share }: Of<"part-as-tried">): string {
  return pigmentShare({ ...share, pigment: part });
}

function theWhite({ pigment, massFraction }: NamedShare): string {
  return `el blanco${bracketed(
    within(pigment),
    massFraction === undefined ? undefined : `${percent(massFraction)} del pigmento`,
  )}`;
}

function alone({ daysInLinseed }: Pick<Acting, "daysInLinseed">): string {
  return `solo en aceite de linaza ${dayCount(daysInLinseed)}`;
}

type Acting = Of<"pigment-speeds-drying" | "white-speeds-drying" | "pigment-slows-drying">;

function speeds(subject: string, v: Acting): string {
  return sentence(
    `${subject} acelera el secado: su ${wordOf(CHEMISTRIES, v.chemistry)} ${DRYING_CAUSES[v.cause]} (${alone(v)})`,
  );
}

function slows(subject: string, v: Acting): string {
  return sentence(`${subject} retarda el secado: ${DRYING_CAUSES[v.cause]} (${alone(v)})`);
}

function takesNoPart(subject: string, v: Acting): string {
  return sentence(`${subject} no interviene en el secado (${alone(v)})`);
}

function drier({ metal, percentOnOil }: Of<"added-drier">): string {
  return `el secante de ${DRIER_METALS[metal]} (${withUnit(significant(percentOnOil, 2), "%")} de metal sobre el aceite)`;
}

function film({ filmThicknessUm, classFilmUm, factor }: Of<"thick-film-slows">): string {
  return `Una película de ${micrometres(filmThicknessUm)} en lugar de ${micrometres(classFilmUm)}: ${timesTheDays(factor)}.`;
}

function room({ temperatureC, classTemperatureC, factor }: Of<"cold-slows">): string {
  return `A ${degrees(temperatureC)} en lugar de ${degrees(classTemperatureC)}: ${timesTheDays(factor)}.`;
}

function trial({
  touchDryDays,
  throughDryDays,
  filmThicknessUm,
  temperatureC,
  humidityPercent,
  toldBy,
}: Of<"trial-decides">): string {
  const through =
    throughDryDays === undefined ? "" : `, seco en profundidad en ${dayCount(throughDryDays)}`;
  const whose = toldBy === undefined ? "ensayo del taller" : "ensayo según otros";
  return `${whose}: seco al tacto en ${dayCount(touchDryDays)}${through}${bracketed(
    filmThicknessUm === undefined ? undefined : micrometres(filmThicknessUm),
    temperatureC === undefined ? undefined : degrees(temperatureC),
    humidityPercent === undefined
      ? undefined
      : `${withUnit(significant(humidityPercent, 2), "%")} de humedad`,
  )}`;
}

function beside({ touchDryDays, expectedDays }: Of<"trial-slower-than-expected">): string {
  return `seco al tacto en ${dayCount(touchDryDays)} frente a ${significant(expectedDays, 2)}`;
}

function oilOfFilm({ oilVolumeFraction }: Of<"lean-film">): string {
  const judged = typeof oilVolumeFraction === "number" ? "" : ", por el medio de la estimación";
  return `${judged}: aceite ${percent(oilVolumeFraction)} de la película seca en volumen`;
}
