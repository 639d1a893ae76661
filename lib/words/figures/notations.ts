import type { FigureTexts } from "./figure-words.ts";

/** The masstone in figures. */
export const NOTATION_FIGURES = {
  notationsSection: { en: "Notations", de: "Notationen", fr: "Notations", es: "Notaciones" },
  xyzX: { en: "X", de: "X", fr: "X", es: "X" },
  xyzY: { en: "Y", de: "Y", fr: "Y", es: "Y" },
  xyzZ: { en: "Z", de: "Z", fr: "Z", es: "Z" },
  labL: { en: "L*", de: "L*", fr: "L*", es: "L*" },
  labA: { en: "a*", de: "a*", fr: "a*", es: "a*" },
  labB: { en: "b*", de: "b*", fr: "b*", es: "b*" },
  munsell: { en: "Munsell", de: "Munsell", fr: "Munsell", es: "Munsell" },
  munsellHue: {
    en: "Munsell hue",
    de: "Munsell-Buntton (Hue)",
    fr: "Teinte Munsell",
    es: "Matiz Munsell",
  },
  munsellValue: {
    en: "Munsell value",
    de: "Munsell-Helligkeit (Value)",
    fr: "Valeur Munsell",
    es: "Valor Munsell",
  },
  munsellChroma: {
    en: "Munsell chroma",
    de: "Munsell-Chroma",
    fr: "Chroma Munsell",
    es: "Croma Munsell",
  },
  srgb: { en: "sRGB", de: "sRGB", fr: "sRGB", es: "sRGB" },
  displayP3: { en: "Display P3", de: "Display P3", fr: "Display P3", es: "Display P3" },
  oklch: { en: "OKLCH", de: "OKLCH", fr: "OKLCH", es: "OKLCH" },
  nbsName: {
    en: "ISCC-NBS name",
    de: "ISCC-NBS-Name (englisch)",
    fr: "Nom ISCC-NBS (anglais)",
    es: "Nombre ISCC-NBS (inglés)",
    gloss: {
      en: "of 267 names of colours, by its Munsell notation and in the standard\u2019s own American spelling; two near a border",
      de: "einer von 267 Farbnamen, nach der Munsell-Notation; zwei nahe einer Grenze",
      fr: "parmi 267 noms de couleurs, d’après sa notation Munsell\u202f; deux noms près d’une limite",
      es: "entre 267 nombres de colores, según su notación Munsell; dos nombres cerca de un límite",
    },
    found: {
      "ISCC-NBS block of the Munsell notation": {
        de: "ISCC-NBS-Block der Munsell-Notation",
        fr: "bloc ISCC-NBS de la notation Munsell",
        es: "bloque ISCC-NBS de la notación Munsell",
      },
      "ISCC-NBS block of the Munsell notation, approximate: adapted from {a}": {
        de: "ISCC-NBS-Block der Munsell-Notation, angenähert: aus {a} angepasst",
        fr: "bloc ISCC-NBS de la notation Munsell, approché\u202f: adapté de {a}",
        es: "bloque ISCC-NBS de la notación Munsell, aproximado: adaptado de {a}",
      },
    },
  },
  glossExcludedL: {
    en: "L* without the shine",
    de: "L* ohne Glanz",
    fr: "L* sans le reflet",
    es: "L* sin el brillo",
    found: {
      "surface light of an oil film taken off, D65/10": {
        de: "Oberflächenlicht eines Ölfilms abgezogen, D65/10",
        fr: "lumière de surface d’un film d’huile ôtée, D65/10",
        es: "luz de superficie de una película de aceite restada, D65/10",
      },
    },
  },
  lamplight: {
    en: "Change in lamplight",
    de: "Änderung bei Lampenlicht",
    fr: "Changement à la lumière de lampe",
    es: "Cambio a la luz de lámpara",
    gloss: {
      en: "ΔE00 between daylight and lamplight, to an eye used to each",
      de: "ΔE00 zwischen Tageslicht und Lampenlicht, für ein an das jeweilige Licht gewöhntes Auge",
      fr: "ΔE00 entre la lumière du jour et la lumière de lampe, pour un œil adapté à chacune",
      es: "ΔE00 entre la luz del día y la de lámpara, para un ojo adaptado a cada una",
    },
  },
  lamplightLed: {
    en: "Change under a white LED",
    de: "Änderung unter weißer LED",
    fr: "Changement sous une LED blanche",
    es: "Cambio bajo un LED blanco",
    gloss: {
      en: "the same under CIE LED-B3 (4100 K)",
      de: "dasselbe unter CIE LED-B3 (4100 K)",
      fr: "la même chose sous CIE LED-B3 (4\u202f100\u00a0K)",
      es: "lo mismo bajo CIE LED-B3 (4100\u00a0K)",
    },
  },
  lamplightFluorescent: {
    en: "Change under a fluorescent tube",
    de: "Änderung unter Leuchtstofflampe",
    fr: "Changement sous un tube fluorescent",
    es: "Cambio bajo un tubo fluorescente",
    gloss: {
      en: "the same under CIE FL11 (4,000 K)",
      de: "dasselbe unter CIE FL11 (4000 K)",
      fr: "la même chose sous CIE FL11 (4\u202f000\u00a0K)",
      es: "lo mismo bajo CIE FL11 (4000\u00a0K)",
    },
  },
} satisfies FigureTexts;
