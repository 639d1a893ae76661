import type { AnyWords } from "../any-words.ts";
import type { PageWords } from "../en/pages.ts";

/** Lo que ha cambiado en el sitio. */
export const CHANGES: AnyWords<PageWords["changes"]> = {
  feedTitle: (workshop) => `${workshop}: lo que ha cambiado`,
  new: { colour: "Un color nuevo.", answer: "Una pregunta nueva, con su respuesta." },
  gone: {
    colour: "Ya no está entre los colores.",
    answer: "Ya no está entre las preguntas.",
  },
  otherwise: {
    colour: "Ha cambiado otra cosa en su ficha.",
    answer: "Ha cambiado la respuesta.",
  },
  discontinued: (date) => `Se deja de fabricar el ${date}.`,
  renamed: (before, now) => `\u00ab${before}\u00bb es ahora \u00ab${now}\u00bb.`,
  figure: (what, before, now) => `${what}: ${now}; antes ${before}.`,
  figureCame: (what, now) => `${what}: ahora ${now}.`,
  figureWent: (what, before) => `${what}: ya no se indica; antes ${before}.`,
  sizes: "Tamaños y precios",
  price: (ml) => `Precio de ${ml}\u00a0ml`,
  photographs: "Fotografías",
  said: {
    madeOf: "Composición",
    sentence: "Con blanco",
    lightfastness: "Solidez a la luz",
    summary: "La respuesta corta",
  },
  signalWord: "Palabra de advertencia",
  noSignalWord: "ninguna",
  cautions: {
    pictograms: "Pictograma",
    hazardStatements: "Indicación de peligro",
    precautionaryStatements: "Consejo de prudencia",
    supplemental: "Información suplementaria",
    studio: "Precaución en el taller",
  },
  came: (what, text) => `${what}: ahora ${text}.`,
  went: (what, text) => `${what}: ya no ${text}.`,
};
