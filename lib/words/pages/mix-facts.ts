import { METALS, OPACITIES, SIGNAL_WORDS, wordOf } from "../closed-sets.ts";
import { de, en, es, fr } from "../phrases-in-each.ts";
import type { ByLamp, Lamp } from "../../colorimetry/lamps.ts";
import type { OpacityClass } from "../../optics/films/opacity.ts";
import type { Interval } from "../../quantities/interval.ts";
import type { Texts } from "../texts.ts";

/** Under what light, within a sentence. */
export const LAMPS = {
  incandescent: {
    en: "lamplight",
    de: "Lampenlicht",
    fr: "lumière de lampe",
    es: "luz de lámpara",
  },
  led: {
    en: "white LED light",
    de: "weißem LED-Licht",
    fr: "lumière LED blanche",
    es: "luz LED blanca",
  },
  fluorescent: {
    en: "fluorescent tube",
    de: "Leuchtstofflicht",
    fr: "lumière de tube fluorescent",
    es: "luz de tubo fluorescente",
  },
} satisfies Readonly<Record<Lamp, Texts[string]>>;

/** What is known of a mixture beside its colour. */
export const MIX_FACTS = {
  semicolon: { en: en.SEMICOLON, de: de.SEMICOLON, fr: fr.SEMICOLON, es: es.SEMICOLON },
  weakest: (word: string, of: string) => ({
    en: `${word} (by ${en.within(of)})`,
    de: `${word} (durch ${de.within(of)})`,
    fr: `${word} (d’après ${fr.within(of)})`,
    es: `${word} (según ${es.within(of)})`,
  }),
  unknown: (names: readonly string[]) => ({
    en: `not known of ${en.listed(names.map(en.within))}`,
    de: `nicht bekannt für ${de.listed(names.map(de.within))}`,
    fr: `inconnu pour ${fr.listed(names.map(fr.within))}`,
    es: `no se sabe de ${es.listed(names.map(es.within))}`,
  }),
  notKnown: { en: "not known", de: "nicht bekannt", fr: "inconnu", es: "no se sabe" },
  days: (days: Interval) => ({
    en: en.dayCount(days),
    de: de.dayCount(days),
    fr: fr.dayCount(days),
    es: es.dayCount(days),
  }),
  daysEstimate: {
    en: "an estimate from its tubes",
    de: "eine Schätzung aus den Tuben",
    fr: "estimé d’après ses tubes",
    es: "estimado según sus tubos",
  },
  /** @param ratio of the film, from the least to the most that it may be. */
  hiding: {
    hides: (ratio: string, um: string) => ({
      en: `hides a chart at ${um} (contrast ratio ${ratio})`,
      de: `deckt eine Prüfkarte bei ${um} (Kontrastverhältnis ${ratio})`,
      fr: `couvre une carte à ${um} (rapport de contraste ${ratio})`,
      es: `cubre una carta a ${um} (relación de contraste ${ratio})`,
    }),
    "may hide": (ratio: string, um: string) => ({
      en: `may hide a chart at ${um} (contrast ratio ${ratio})`,
      de: `deckt bei ${um} vielleicht eine Prüfkarte (Kontrastverhältnis ${ratio})`,
      fr: `couvre peut-être une carte à ${um} (rapport de contraste ${ratio})`,
      es: `quizá cubra una carta a ${um} (relación de contraste ${ratio})`,
    }),
    "does not hide": (ratio: string, um: string) => ({
      en: `does not hide a chart at ${um} (contrast ratio ${ratio})`,
      de: `deckt bei ${um} keine Prüfkarte (Kontrastverhältnis ${ratio})`,
      fr: `ne couvre pas une carte à ${um} (rapport de contraste ${ratio})`,
      es: `no cubre una carta a ${um} (relación de contraste ${ratio})`,
    }),
  },
  /** Of a film so dark that its contrast ratio tells only of its darkness. */
  dark: (word: OpacityClass, um: string, hides: boolean) => ({
    en: `${word} at ${um}${hides ? ", though it swallows enough light to hide a chart" : ""}`,
    de: `${OPACITIES[word].de} bei ${um}${hides ? ", auch wenn sie genug Licht schluckt, um eine Prüfkarte zu decken" : ""}`,
    fr: `${OPACITIES[word].fr} à ${um}${hides ? ", mais elle absorbe assez de lumière pour couvrir une carte de contraste" : ""}`,
    es: `${OPACITIES[word].es} a ${um}${hides ? ", pero absorbe luz bastante para cubrir una carta de contraste" : ""}`,
  }),
  signals: SIGNAL_WORDS,
  contains: (metals: readonly string[]) => ({
    en: `contains ${en.listed(metals)}`,
    de: `enthält ${de.listed(metals.map((metal) => wordOf(METALS, metal, "de")))}`,
    fr: `contient\u202f: ${fr.listed(metals.map((metal) => wordOf(METALS, metal, "fr")))}`,
    es: `contiene ${es.listed(metals.map((metal) => wordOf(METALS, metal, "es")))}`,
  }),
  noWarning: { en: "none needed", de: "keiner nötig", fr: "aucun nécessaire", es: "no hace falta" },
  restricted: (names: readonly string[]) => ({
    en: `${en.listed(names)}: not sold to everybody`,
    de: `${de.listed(names)}: nicht frei verkäuflich`,
    fr: `${fr.listed(names)}\u202f: pas en vente pour tous`,
    es: `${es.listed(names)}: no se vende a todos`,
  }),
  price: (text: string) => ({
    en: `about ${text}`,
    de: `etwa ${text}`,
    fr: `environ ${text}`,
    es: `alrededor de ${text}`,
  }),
  /** @param p68 of the mixture; under a lamp as in daylight, at most. */
  lampsPart: (worst: Lamp, of: ByLamp, p68: number) =>
    of[worst] < 2
      ? {
          en: "matches under lamps too",
          de: "passt auch unter Lampen",
          fr: "s’accorde aussi à la lampe",
          es: "coincide también a la luz de lámparas",
        }
      : {
          en: `parts from it by \u0394E00\u00a0${en.decimals(of[worst], 1)} \u00b1${en.decimals(p68, 1)} in ${LAMPS[worst].en}`,
          de: `weicht bei ${LAMPS[worst].de} um \u0394E00\u00a0${de.decimals(of[worst], 1)} ±${de.decimals(p68, 1)} davon ab`,
          fr: `s’en écarte de \u0394E00\u00a0${fr.decimals(of[worst], 1)} \u00b1${fr.decimals(p68, 1)} en ${LAMPS[worst].fr}`,
          es: `se aparta en \u0394E00\u00a0${es.decimals(of[worst], 1)} \u00b1${es.decimals(p68, 1)} con ${LAMPS[worst].es}`,
        },
  lampsShift: (worst: Lamp, of: ByLamp, p68: number) =>
    of[worst] < 2
      ? {
          en: "holds its colour under lamps",
          de: "behält ihre Farbe unter Lampen",
          fr: "garde sa couleur à la lampe",
          es: "mantiene su color a la luz de lámparas",
        }
      : {
          en: `changes by \u0394E00\u00a0${en.decimals(of[worst], 1)} \u00b1${en.decimals(p68, 1)} in ${LAMPS[worst].en}`,
          de: `ändert sich bei ${LAMPS[worst].de} um \u0394E00\u00a0${de.decimals(of[worst], 1)} ±${de.decimals(p68, 1)}`,
          fr: `change de \u0394E00\u00a0${fr.decimals(of[worst], 1)} \u00b1${fr.decimals(p68, 1)} en ${LAMPS[worst].fr}`,
          es: `cambia en \u0394E00\u00a0${es.decimals(of[worst], 1)} \u00b1${es.decimals(p68, 1)} con ${LAMPS[worst].es}`,
        },
} satisfies Texts;
