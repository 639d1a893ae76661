import { upperFirst } from "../letter-case.ts";
import type { Texts } from "../texts.ts";

/** Oil, packing and finish on a sheet. */
export const OIL = {
  caption: {
    en: "Oil, how the pigment packs, and finish",
    de: "Öl, Pigmentpackung und Glanzgrad",
    fr: "Huile, compacité et aspect",
    es: "Aceite, empaquetamiento y acabado",
  },
  why: { en: "Why", de: "Warum", fr: "Pourquoi", es: "Por qué" },
  contradictions: {
    en: "Where our record and the rule of thumb disagree",
    de: "Wo unsere Aufzeichnung der Faustregel widerspricht",
    fr: "En quoi notre relevé et la règle empirique ne s’accordent pas",
    es: "En qué no concuerdan nuestro registro y la regla práctica",
  },

  /** @param line how much oil, and who says so: a sentence. */
  summary: (oilClass: string, line: string) => ({
    en: `${upperFirst(oilClass)} in oil: ${line}`,
    de: `Ölbedarf ${oilClass}: ${line}`,
    fr: `Besoin en huile ${oilClass}\u202f: ${line}`,
    es: `Consumo de aceite ${oilClass}: ${line}`,
  }),
  notClassed: (grams: string) => ({
    en: `Its oil is not weighed yet, and the estimate is too wide for a word: ${grams}.`,
    de: `Das Öl ist noch nicht gewogen, und die Schätzung ist für eine Einordnung zu weit: ${grams}.`,
    fr: `Son huile n’est pas encore pesée, et l’estimation est trop large pour se résumer en un mot\u202f: ${grams}.`,
    es: `Su aceite aún no se ha pesado, y la estimación es demasiado amplia para resumirla en una palabra: ${grams}.`,
  }),
  none: {
    en: "Not known yet: we have neither a rub-out figure nor the oil of a batch.",
    de: "Noch nicht bekannt: Wir haben weder eine Ölzahl noch das Öl eines Ansatzes.",
    fr: "Pas encore connu\u202f: nous n’avons ni une prise d’huile ni l’huile d’une fabrication.",
    es: "Aún no se sabe: no tenemos ni una absorción de aceite ni el aceite de una fabricación.",
  },
} satisfies Texts;
