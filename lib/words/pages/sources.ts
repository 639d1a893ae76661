import type { Texts } from "../texts.ts";
import type { InEach } from "../in-each.ts";

/** The page Sources. */
export const SOURCES = {
  heading: { en: "Sources", de: "Quellen", fr: "Sources", es: "Fuentes" },
  lead: {
    en: "The texts behind the figures, and how far we used each: read, worked from, or quoted from memory.",
    de: "Die Texte hinter den Werten und wie weit wir jeden benutzt haben: gelesen, daraus errechnet oder aus dem Gedächtnis zitiert.",
    fr: "Les textes sur lesquels reposent les chiffres, et l’usage que nous avons fait de chacun\u202f: lu, calculé d’après lui, ou cité de mémoire.",
    es: "Los textos en que se apoyan las cifras, y el uso que hicimos de cada uno: leído, calculado a partir de él, o citado de memoria.",
  },
  groups: {
    used: {
      en: "Used on these sheets",
      de: "Auf diesen Blättern benutzt",
      fr: "Employées sur ces fiches",
      es: "Usadas en estas fichas",
    },
    other: {
      en: "At hand, not used here",
      de: "Zur Hand, hier nicht benutzt",
      fr: "À disposition, non employées ici",
      es: "Disponibles, no usadas aquí",
    },
  },
  standings: {
    read: { en: "read", de: "gelesen", fr: "lu", es: "leído" },
    derived: {
      en: "worked from",
      de: "daraus errechnet",
      fr: "calculé d’après",
      es: "calculado a partir de",
    },
    memory: {
      en: "quoted from memory",
      de: "aus dem Gedächtnis zitiert",
      fr: "cité de mémoire",
      es: "citado de memoria",
    },
    practice: {
      en: "common practice",
      de: "gängige Praxis",
      fr: "pratique courante",
      es: "práctica corriente",
    },
  } as Record<string, InEach>,
} satisfies Texts;
