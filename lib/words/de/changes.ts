import type { AnyWords } from "../any-words.ts";
import type { PageWords } from "../en/pages.ts";

/** Was sich auf der Website geändert hat. */
export const CHANGES: AnyWords<PageWords["changes"]> = {
  feedTitle: (workshop) => `${workshop}: was sich geändert hat`,
  new: { colour: "Eine neue Farbe.", answer: "Eine neue Frage mit Antwort." },
  gone: { colour: "Nicht mehr unter den Farben.", answer: "Nicht mehr unter den Fragen." },
  otherwise: {
    colour: "Etwas anderes auf dem Farbblatt hat sich geändert.",
    answer: "Die Antwort hat sich geändert.",
  },
  discontinued: (date) => `Wird ab dem ${date} nicht mehr hergestellt.`,
  renamed: (before, now) => `\u201e${before}\u201c heißt jetzt \u201e${now}\u201c.`,
  figure: (what, before, now) => `${what}: ${now}; vorher ${before}.`,
  figureCame: (what, now) => `${what}: jetzt ${now}.`,
  figureWent: (what, before) => `${what}: nicht mehr angegeben; vorher ${before}.`,
  sizes: "Größen und Preise",
  price: (ml) => `Preis von ${ml}\u00a0ml`,
  photographs: "Fotografien",
  said: {
    madeOf: "Besteht aus",
    sentence: "In Weiß",
    lightfastness: "Lichtechtheit",
    summary: "Die kurze Antwort",
  },
  signalWord: "Signalwort",
  noSignalWord: "keines",
  cautions: {
    pictograms: "Piktogramm",
    hazardStatements: "Gefahrenhinweis",
    precautionaryStatements: "Sicherheitshinweis",
    supplemental: "Ergänzende Angabe",
    studio: "Vorsicht im Atelier",
  },
  came: (what, text) => `${what}: jetzt ${text}.`,
  went: (what, text) => `${what}: nicht mehr ${text}.`,
};
