import type { WORKSHOP_PAGES as ENGLISH_PAGES } from "../en/workshop-pages.ts";
import type { AnyWords } from "../any-words.ts";
import { listed } from "./phrases.ts";

/** What the workshop's own pages say, which nobody outside reads. */
export const WORKSHOP_PAGES: AnyWords<typeof ENGLISH_PAGES> = {
  heading: "El taller",
  lead: "Solo para el taller: costes, proveedores, fabricaciones, respuestas y borradores de etiquetas. Nada de esto está en el sitio público.",
  name: (workshop) => `${workshop}, el taller`,
  notice: "No publicado",
  nav: {
    colours: "Colores",
    lots: "Lotes",
    labels: "Etiquetas",
    trials: "Ensayos",
    answers: "Respuestas",
  },
  home: {
    colours: "Colores",
    coloursCaption: "Lo que cuesta una fabricación, y cuánto de cada ficha queda por completar",
    /** Beside a cost, what it leaves out. */
    costWithout: (names) => `sin ${listed(names)}, sin precio`,
    columns: {
      colour: "Color",
      cost: (pigmentG, currency) => `Fabricación con ${pigmentG}\u00a0g de pigmento, ${currency}`,
      wanting: "No indicado",
      suppliers: "Proveedores",
    },
    answers: "Respuestas",
    answersNone: "Aún no se ha respondido ninguna pregunta.",
    faults: "Lo que no concuerda",
    faultsLead: "Hallado al calcular las fichas.",
    noFaults: "Nada se contradice.",
    faultsCaption: "Qué se halló, y dónde",
    faultColumns: { what: "Qué", where: "Dónde" },
  },
  colour: {
    heading: (name) => `${name} en el taller`,
    description: (name) =>
      `${name}: fabricación, costes, proveedores, lo que falta, etiqueta, respuesta.`,
    back: "El taller",
    sections: {
      batch: "Una fabricación",
      costs: "Costes y proveedores",
      gaps: "No indicado",
      answers: "Lo que preguntan los clientes",
      label: "Texto de la etiqueta",
      reply: "Una respuesta para enviar",
      lots: "Lotes",
    },
    batchSheet: "Hoja de fabricación para imprimir",
    costsCaption: "A quién lo compramos, y por cuánto",
    costColumns: {
      what: "Qué",
      supplier: "Proveedor",
      price: (currency) => `${currency}/kg`,
      date: "Registro del",
    },
    gapsLead: (count) =>
      count === 1
        ? "Una cifra de la ficha no está indicada."
        : `${count} cifras de la ficha no están indicadas.`,
    noGaps: "Todas las cifras de la ficha están indicadas.",
    gapsCaption: "Qué falta, por qué, y qué lo daría",
    gapColumns: { figure: "Cifra", reason: "Por qué", wanting: "Qué lo daría" },
  },
  answer: {
    description: (question) =>
      `Una respuesta para enviar, y en qué descansa la respuesta: ${question}`,
    claims: "En qué descansa la respuesta",
    privateClaims: "Comprobado, y fuera de la respuesta publicada",
    back: "El taller",
  },
};
