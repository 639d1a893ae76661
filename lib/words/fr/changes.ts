import type { AnyWords } from "../any-words.ts";
import type { PageWords } from "../en/pages.ts";

/** Ce qui a changé sur le site. */
export const CHANGES: AnyWords<PageWords["changes"]> = {
  feedTitle: (workshop) => `${workshop}\u00a0: ce qui a changé`,
  new: { colour: "Une nouvelle couleur.", answer: "Une nouvelle question, avec sa réponse." },
  gone: {
    colour: "Ne figure plus parmi les couleurs.",
    answer: "Ne figure plus parmi les questions.",
  },
  otherwise: {
    colour: "Autre chose a changé sur sa fiche.",
    answer: "La réponse a changé.",
  },
  discontinued: (date) => `Fabrication arrêtée au ${date}.`,
  renamed: (before, now) =>
    `\u00ab\u00a0${before}\u00a0\u00bb devient \u00ab\u00a0${now}\u00a0\u00bb.`,
  figure: (what, before, now) => `${what}\u00a0: ${now}\u00a0; auparavant ${before}.`,
  figureCame: (what, now) => `${what}\u00a0: désormais ${now}.`,
  figureWent: (what, before) =>
    `${what}\u00a0: n\u2019est plus indiqué\u00a0; auparavant ${before}.`,
  sizes: "Contenances et prix",
  price: (ml) => `Prix de ${ml}\u00a0ml`,
  photographs: "Photographies",
  said: {
    madeOf: "Composition",
    sentence: "Avec du blanc",
    lightfastness: "Solidité à la lumière",
    summary: "La réponse courte",
  },
  signalWord: "Mention d\u2019avertissement",
  noSignalWord: "aucune",
  cautions: {
    pictograms: "Pictogramme",
    hazardStatements: "Mention de danger",
    precautionaryStatements: "Conseil de prudence",
    supplemental: "Information supplémentaire",
    studio: "Précaution à l\u2019atelier",
  },
  came: (what, text) => `${what}\u00a0: désormais ${text}.`,
  went: (what, text) => `${what}\u00a0: ne porte plus ${text}.`,
};
