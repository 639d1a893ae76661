import type { ComparisonStatement, PlacesApart, Times } from "../../collection/statements.ts";
import type { Language } from "../../quantities/languages.ts";
import { comparedWays, type ComparedWay } from "../compared-ways.ts";
import type { InEach } from "../in-each.ts";
import { de, en, es, fr, sentences } from "../phrases-in-each.ts";
import type { RulingsInEach } from "./rulings-in-each.ts";

/** How many times as much, between the names of the two. */
type TimesAsMuch = Readonly<Record<Language, (ratio: string, less: string) => string>>;

const TIMES_THE_OIL: TimesAsMuch = {
  en: (ratio, less) => `takes ${times(ratio)} the oil of ${less}`,
  de: (ratio, less) => `nimmt ${ratio}-mal so viel Öl auf wie ${less}`,
  fr: (ratio, less) => `demande ${ratio} fois l’huile ${fr.of(less)}`,
  es: (ratio, less) => `lleva ${ratio} veces el aceite de ${less}`,
};

const TIMES: Readonly<Record<Times, TimesAsMuch>> = {
  strength: {
    en: (ratio, less) => `is ${times(ratio)} as strong as ${less}`,
    de: (ratio, less) => `ist ${ratio}-mal so farbstark wie ${less}`,
    fr: (ratio, less) => `colore ${ratio} fois plus ${fr.than(less)}`,
    es: (ratio, less) => `colorea ${ratio} veces lo que ${less}`,
  },
  whitens: {
    en: (ratio, less) => `takes ${times(ratio)} as much as ${less} to whiten alike`,
    de: (ratio, less) => `braucht ${ratio}-mal so viel wie ${less}, um gleich aufzuhellen`,
    fr: (ratio, less) =>
      `demande ${ratio} fois plus de peinture ${fr.than(less)} pour blanchir autant`,
    es: (ratio, less) =>
      `necesita ${ratio} veces la pintura que necesita ${less} para blanquear igual`,
  },
  parts: {
    en: (ratio, less) => `takes ${times(ratio)} the white that ${less} takes`,
    de: (ratio, less) => `nimmt ${ratio}-mal so viel Weiß auf wie ${less}`,
    fr: (ratio, less) => `demande ${ratio} fois plus de blanc ${fr.than(less)}`,
    es: (ratio, less) => `admite ${ratio} veces el blanco que ${less}`,
  },
  oilByMass: TIMES_THE_OIL,
  oilByVolume: TIMES_THE_OIL,
};

/** "1.5 times", "at least twice". */
function times(ratio: string): string {
  return /(^|\s)2$/.test(ratio) ? ratio.replace(/2$/, "twice") : `${ratio} times`;
}

const WAYS: Readonly<Record<ComparedWay, InEach>> = {
  lighter: { en: "lighter", de: "heller", fr: "plus clair", es: "más claro" },
  darker: { en: "darker", de: "dunkler", fr: "plus sombre", es: "más oscuro" },
  yellower: { en: "yellower", de: "gelber", fr: "plus jaune", es: "más amarillo" },
  bluer: { en: "bluer", de: "blauer", fr: "plus bleu", es: "más azul" },
  "less yellow": {
    en: "less yellow",
    de: "weniger gelb",
    fr: "moins jaune",
    es: "menos amarillo",
  },
  "less blue": { en: "less blue", de: "weniger blau", fr: "moins bleu", es: "menos azul" },
  redder: { en: "redder", de: "röter", fr: "plus rouge", es: "más rojo" },
  greener: { en: "greener", de: "grüner", fr: "plus vert", es: "más verde" },
  "less red": { en: "less red", de: "weniger rot", fr: "moins rouge", es: "menos rojo" },
  "less green": { en: "less green", de: "weniger grün", fr: "moins vert", es: "menos verde" },
};

/** The ways that make up a distance, each in a word. */
function ways(language: Language, places: PlacesApart): string[] {
  return comparedWays(places).map((way) => WAYS[way][language]);
}

const AT_LEAST: InEach = {
  en: "at least ",
  de: "mindestens ",
  fr: "au moins ",
  es: "al menos ",
};

function atLeast(language: Language, { atLeast: ends }: { readonly atLeast?: string }): string {
  return ends === undefined ? "" : AT_LEAST[language];
}

/** "darker and bluer than" another: of the masstone or of a tint. */
const APART: RulingsInEach<ComparisonStatement>["compared-masstones"] = (v) =>
  sentences({
    en: `${en.within(v.one)} is ${en.listed(ways("en", v))} than ${en.within(v.other)} (colour difference \u0394E*ab ${en.decimals(v.distance, 1)})`,
    de: `${de.within(v.one)} ist ${de.listed(ways("de", v))} als ${de.within(v.other)} (Farbabstand \u0394E*ab ${de.decimals(v.distance, 1)})`,
    fr: `${fr.within(v.one)} est ${fr.listed(ways("fr", v))} ${fr.than(fr.within(v.other))} (écart de couleur \u0394E*ab ${fr.decimals(v.distance, 1)})`,
    es: `${es.within(v.one)} es ${es.listed(ways("es", v))} que ${es.within(v.other)} (diferencia de color \u0394E*ab ${es.decimals(v.distance, 1)})`,
  });

/** Colours side by side: by how much they differ, or why it cannot be told. */
export const COMPARISON_RULINGS: RulingsInEach<ComparisonStatement> = {
  "compared-masstones": APART,
  "compared-tints": APART,
  "compared-ratio": (v) =>
    sentences({
      en: `${en.within(v.more)} ${TIMES[v.of].en(`${atLeast("en", v)}${en.significant(v.ratio, 2)}`, en.within(v.less))}`,
      de: `${de.within(v.more)} ${TIMES[v.of].de(`${atLeast("de", v)}${de.significant(v.ratio, 2)}`, de.within(v.less))}`,
      fr: `${fr.within(v.more)} ${TIMES[v.of].fr(`${atLeast("fr", v)}${fr.significant(v.ratio, 2)}`, fr.within(v.less))}`,
      es: `${es.within(v.more)} ${TIMES[v.of].es(`${atLeast("es", v)}${es.significant(v.ratio, 2)}`, es.within(v.less))}`,
    }),
  "compared-days": (v) =>
    sentences({
      en: `${en.within(v.earlier)} is dry ${atLeast("en", v)}${en.dayCount(Math.round(v.days))} before ${en.within(v.later)}`,
      de: `${de.within(v.earlier)} trocknet ${atLeast("de", v)}${de.dayCount(Math.round(v.days))} früher als ${de.within(v.later)}`,
      fr: `${fr.within(v.earlier)} est sec ${atLeast("fr", v)}${fr.dayCount(Math.round(v.days))} avant ${fr.within(v.later)}`,
      es: `${es.within(v.earlier)} está seco ${atLeast("es", v)}${es.dayCount(Math.round(v.days))} antes que ${es.within(v.later)}`,
    }),
  "compared-within": (v) => ({
    en: `Too close to call (colour difference \u0394E*ab ${en.decimals(v.apart, 1)}; our readings tell two colours apart from ${en.decimals(v.borne, 1)} on).`,
    de: `Zu ähnlich für ein Urteil (Farbabstand \u0394E*ab ${de.decimals(v.apart, 1)}; unterscheiden lassen sich unsere Messungen ab ${de.decimals(v.borne, 1)}).`,
    fr: `Trop proche pour trancher (écart de couleur \u0394E*ab ${fr.decimals(v.apart, 1)}\u202f; au-dessous de ${fr.decimals(v.borne, 1)}, nos mesures ne distinguent rien).`,
    es: `Demasiado parecido para decidir (diferencia de color \u0394E*ab ${es.decimals(v.apart, 1)}; por debajo de ${es.decimals(v.borne, 1)} nuestras mediciones no distinguen nada).`,
  }),
  "compared-within-share": (v) => ({
    en: `Too close to call (${en.percent(v.share, 1)} apart; such figures tell two colours apart from ${en.percent(v.borne, 1)} on).`,
    de: `Zu ähnlich für ein Urteil (Abstand ${de.percent(v.share, 1)}; unterscheiden lassen sich solche Werte ab ${de.percent(v.borne, 1)}).`,
    fr: `Trop proche pour trancher (écart de ${fr.percent(v.share, 1)}\u202f; au-dessous de ${fr.percent(v.borne, 1)}, de tels chiffres ne distinguent rien).`,
    es: `Demasiado parecido para decidir (diferencia del ${es.percent(v.share, 1)}; por debajo del ${es.percent(v.borne, 1)} tales cifras no distinguen nada).`,
  }),
  "compared-too-close": {
    en: "Too close to call: the ranges overlap or nearly touch.",
    de: "Zu ähnlich für ein Urteil: Die Bereiche überschneiden sich oder berühren sich fast.",
    fr: "Trop proche pour trancher\u202f: les intervalles se recouvrent ou se touchent presque.",
    es: "Demasiado parecido para decidir: los intervalos se solapan o casi se tocan.",
  },
  "compared-no-lightness": {
    en: "Not tried at the same lightness.",
    de: "Nicht bei gleicher Helligkeit erprobt.",
    fr: "Non essayé à la même clarté.",
    es: "No probado a la misma claridad.",
  },
  "compared-one-expected": {
    en: "The same word, but for one it is only an expectation.",
    de: "Dieselbe Angabe, doch bei einer der Farben ist sie nur eine Erwartung.",
    fr: "Le même mot, mais pour l’un ce n’est qu’une prévision.",
    es: "La misma palabra, pero para uno es solo una previsión.",
  },
  "compared-otherwise-known": (v) => ({
    en: `Not compared: found by another method for ${en.listed(v.names.map(en.within))}.`,
    de: `Nicht verglichen: auf anderem Weg ermittelt für ${de.listed(v.names.map(de.within))}.`,
    fr: `Non comparé\u202f: trouvé par une autre méthode pour ${fr.listed(v.names.map(fr.within))}.`,
    es: `No se compara: hallado por otro método para ${es.listed(v.names.map(es.within))}.`,
  }),
  "compared-shows-ground": (v) => ({
    en: `Not compared: ${en.listed(v.names.map(en.within))} ${v.names.length === 1 ? "was read on a film that shows its" : "were read on films that show their"} ground.`,
    de: `Nicht verglichen: ${de.listed(v.names.map(de.within))} ${v.names.length === 1 ? "wurde an einem Film gemessen, der seinen Grund" : "wurden an Filmen gemessen, die ihren Grund"} durchscheinen ${v.names.length === 1 ? "lässt" : "lassen"}.`,
    fr: `Non comparé\u202f: ${fr.listed(v.names.map(fr.within))}, ${v.names.length === 1 ? "mesuré sur un film qui laisse voir son" : "mesurés sur des films qui laissent voir leur"} fond.`,
    es: `No se compara: ${es.listed(v.names.map(es.within))}, ${v.names.length === 1 ? "medido en una película que deja ver su" : "medidos en películas que dejan ver su"} fondo.`,
  }),
  "compared-not-stated": (v) => ({
    en: `Not known of ${en.listed(v.names.map(en.within))}.`,
    de: `Nicht bekannt für ${de.listed(v.names.map(de.within))}.`,
    fr: `Inconnu pour ${fr.listed(v.names.map(fr.within))}.`,
    es: `No se sabe de ${es.listed(v.names.map(es.within))}.`,
  }),
};
