import type { Texts } from "../texts.ts";
import { partsInOneLine } from "../shared-rows.ts";

/** A colour beside the rest of the range. */
export const RANGE = {
  ends: {
    low: { en: "least", de: "am wenigsten", fr: "minimum", es: "mínimo" },
    high: { en: "most", de: "am meisten", fr: "maximum", es: "máximo" },
  },
  sameColour: {
    en: "Alike from the tube",
    de: "Aus der Tube ähnlich",
    fr: "Semblables au sortir du tube",
    es: "Parecidos al salir del tubo",
  },
  samePigment: {
    en: "Made from the same pigment",
    de: "Aus demselben Pigment",
    fr: "Faites du même pigment",
    es: "Hechos del mismo pigmento",
  },
  metameric: {
    en: "From the tube, by daylight and by lamplight",
    de: "Aus der Tube, bei Tageslicht und bei Lampenlicht",
    fr: "Au sortir du tube, à la lumière du jour et à la lampe",
    es: "Al salir del tubo, a la luz del día y a la de lámpara",
  },
  metamericPair: (name: string, sentence: string) => ({
    en: `${name}: ${sentence}`,
    de: `${name}: ${sentence}`,
    fr: `${name}\u202f: ${sentence}`,
    es: `${name}: ${sentence}`,
  }),
  hueTitle: {
    en: "The range by hue and chroma",
    de: "Das Sortiment nach Buntton und Chroma",
    fr: "La gamme par teinte et chroma",
    es: "La gama por matiz y croma",
  },
  hueDescription: partsInOneLine,
  neutral: { en: "neutral", de: "neutral", fr: "neutre", es: "neutro" },
  chroma: { en: "Munsell chroma", de: "Munsell-Chroma", fr: "Chroma Munsell", es: "Croma Munsell" },
  value: {
    en: "Munsell value",
    de: "Munsell-Helligkeit",
    fr: "Valeur Munsell",
    es: "Valor Munsell",
  },
  valueTitle: {
    en: "The range by value and chroma",
    de: "Das Sortiment nach Helligkeit und Chroma",
    fr: "La gamme par valeur et chroma",
    es: "La gama por valor y croma",
  },
  difference: (deltaE: string, inWhite?: { white: string; deltaE: string }) => ({
    en:
      inWhite === undefined
        ? `alone \u0394E00 ${deltaE}`
        : `alone \u0394E00 ${deltaE}; in ${inWhite.white} \u0394E00 ${inWhite.deltaE}`,
    de:
      inWhite === undefined
        ? `allein \u0394E00 ${deltaE}`
        : `allein \u0394E00 ${deltaE}; in ${inWhite.white} \u0394E00 ${inWhite.deltaE}`,
    fr:
      inWhite === undefined
        ? `seule \u0394E00 ${deltaE}`
        : `seule \u0394E00 ${deltaE}\u202f; dans ${inWhite.white} \u0394E00 ${inWhite.deltaE}`,
    es:
      inWhite === undefined
        ? `solo \u0394E00 ${deltaE}`
        : `solo \u0394E00 ${deltaE}; en ${inWhite.white} \u0394E00 ${inWhite.deltaE}`,
  }),
  oilTitle: {
    en: "Its oil beside the rest of the range",
    de: "Ihr Öl neben dem übrigen Sortiment",
    fr: "Son huile à côté du reste de la gamme",
    es: "Su aceite junto al resto de la gama",
  },
  dryingTitle: {
    en: "Its drying beside the rest of the range",
    de: "Ihre Trocknung neben dem übrigen Sortiment",
    fr: "Son séchage à côté du reste de la gamme",
    es: "Su secado junto al resto de la gama",
  },
  placeDescription: (
    name: string,
    value: string,
    count: number,
    [lowest, lower, upper, highest]: readonly [string, string, string, string],
  ) => ({
    en: `${name}: ${value}. The ${count} colours with a figure lie between ${lowest} and ${highest}, the middle half of them between ${lower} and ${upper}.`,
    de: `${name}: ${value}. Die ${count} Farben mit einer Angabe liegen zwischen ${lowest} und ${highest}, die mittlere Hälfte zwischen ${lower} und ${upper}.`,
    fr: `${name}\u202f: ${value}. Les ${count} couleurs chiffrées vont de ${lowest} à ${highest}, la moitié centrale de ${lower} à ${upper}.`,
    es: `${name}: ${value}. Los ${count} colores con cifra van de ${lowest} a ${highest}, la mitad central de ${lower} a ${upper}.`,
  }),
  box: (count: number) => ({
    en: `box: the middle half of ${count} colours`,
    de: `Kasten: die mittlere Hälfte von ${count} Farben`,
    fr: `rectangle\u202f: la moitié centrale de ${count} couleurs`,
    es: `recuadro: la mitad central de ${count} colores`,
  }),
} satisfies Texts;
