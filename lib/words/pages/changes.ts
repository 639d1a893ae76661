import type { Texts } from "../texts.ts";
import { discontinuedFrom, LIGHTFASTNESS, SIZES_AND_PRICES } from "../shared-rows.ts";

/** What changed on a site: its feed, and what a publish tells before anything moves. */
export const CHANGES = {
  feedTitle: (workshop: string) => ({
    en: `${workshop}: what changed`,
    de: `${workshop}: was sich geändert hat`,
    fr: `${workshop}\u202f: ce qui a changé`,
    es: `${workshop}: lo que ha cambiado`,
  }),
  new: {
    colour: {
      en: "A new colour.",
      de: "Eine neue Farbe.",
      fr: "Une nouvelle couleur.",
      es: "Un color nuevo.",
    },
    answer: {
      en: "A new question, answered.",
      de: "Eine neue Frage mit Antwort.",
      fr: "Une nouvelle question, avec sa réponse.",
      es: "Una pregunta nueva, con su respuesta.",
    },
  },
  gone: {
    colour: {
      en: "No longer among the colours.",
      de: "Nicht mehr unter den Farben.",
      fr: "Ne figure plus parmi les couleurs.",
      es: "Ya no está entre los colores.",
    },
    answer: {
      en: "No longer among the questions.",
      de: "Nicht mehr unter den Fragen.",
      fr: "Ne figure plus parmi les questions.",
      es: "Ya no está entre las preguntas.",
    },
  },
  otherwise: {
    colour: {
      en: "Something else on its sheet changed.",
      de: "Auf dem Farbblatt hat sich etwas anderes geändert.",
      fr: "Autre chose a changé sur sa fiche.",
      es: "Ha cambiado otra cosa en su ficha.",
    },
    answer: {
      en: "The answer changed.",
      de: "Die Antwort hat sich geändert.",
      fr: "La réponse a changé.",
      es: "Ha cambiado la respuesta.",
    },
  },
  discontinued: discontinuedFrom,
  renamed: (before: string, now: string) => ({
    en: `\u201c${before}\u201d is now \u201c${now}\u201d.`,
    de: `\u201e${before}\u201c heißt jetzt \u201e${now}\u201c.`,
    fr: `\u00ab\u00a0${before}\u00a0\u00bb devient \u00ab\u00a0${now}\u00a0\u00bb.`,
    es: `\u00ab${before}\u00bb es ahora \u00ab${now}\u00bb.`,
  }),
  figure: (what: string, before: string, now: string) => ({
    en: `${what}: ${now}; it was ${before}.`,
    de: `${what}: ${now}; vorher ${before}.`,
    fr: `${what}\u202f: ${now}\u202f; auparavant ${before}.`,
    es: `${what}: ${now}; antes ${before}.`,
  }),
  figureCame: (what: string, now: string) => ({
    en: `${what}: now ${now}.`,
    de: `${what}: jetzt ${now}.`,
    fr: `${what}\u202f: désormais ${now}.`,
    es: `${what}: ahora ${now}.`,
  }),
  figureWent: (what: string, before: string) => ({
    en: `${what}: no longer stated; it was ${before}.`,
    de: `${what}: nicht mehr angegeben; vorher ${before}.`,
    fr: `${what}\u202f: n\u2019est plus indiqué\u202f; auparavant ${before}.`,
    es: `${what}: ya no se indica; antes ${before}.`,
  }),
  sizes: SIZES_AND_PRICES,
  price: (ml: number) => ({
    en: `Price of ${ml}\u00a0ml`,
    de: `Preis für ${ml}\u00a0ml`,
    fr: `Prix de ${ml}\u00a0ml`,
    es: `Precio de ${ml}\u00a0ml`,
  }),
  photographs: { en: "Photographs", de: "Fotos", fr: "Photographies", es: "Fotografías" },
  said: {
    madeOf: { en: "Made of", de: "Besteht aus", fr: "Composition", es: "Composición" },
    sentence: { en: "In white", de: "In Weiß", fr: "Avec du blanc", es: "Con blanco" },
    lightfastness: LIGHTFASTNESS,
    summary: {
      en: "The short answer",
      de: "Die kurze Antwort",
      fr: "La réponse courte",
      es: "La respuesta corta",
    },
  },
  signalWord: {
    en: "Signal word",
    de: "Signalwort",
    fr: "Mention d\u2019avertissement",
    es: "Palabra de advertencia",
  },
  noSignalWord: { en: "none", de: "keines", fr: "aucune", es: "ninguna" },
  cautions: {
    pictograms: { en: "Pictogram", de: "Piktogramm", fr: "Pictogramme", es: "Pictograma" },
    hazardStatements: {
      en: "Hazard statement",
      de: "Gefahrenhinweis",
      fr: "Mention de danger",
      es: "Indicación de peligro",
    },
    precautionaryStatements: {
      en: "Precautionary statement",
      de: "Sicherheitshinweis",
      fr: "Conseil de prudence",
      es: "Consejo de prudencia",
    },
    supplemental: {
      en: "Supplemental statement",
      de: "Ergänzender Gefahrenhinweis",
      fr: "Information supplémentaire",
      es: "Información suplementaria",
    },
    studio: {
      en: "Caution for the studio",
      de: "Vorsichtsregel im Atelier",
      fr: "Précaution à l\u2019atelier",
      es: "Precaución en el taller",
    },
  },
  came: (what: string, text: string) => ({
    en: `${what}: now ${text}.`,
    de: `${what}: jetzt ${text}.`,
    fr: `${what}\u202f: désormais ${text}.`,
    es: `${what}: ahora ${text}.`,
  }),
  went: (what: string, text: string) => ({
    en: `${what}: no longer ${text}.`,
    de: `${what}: nicht mehr ${text}.`,
    fr: `${what}\u202f: ne porte plus ${text}.`,
    es: `${what}: ya no ${text}.`,
  }),
} satisfies Texts;
