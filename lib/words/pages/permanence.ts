import { upperFirst } from "../letter-case.ts";
import type { Texts } from "../texts.ts";
import { LIGHTFASTNESS } from "../shared-rows.ts";

/** Lightfastness on a sheet. */
export const PERMANENCE = {
  exposed: (word: string, category: string) => ({
    en: `${upperFirst(word)}: in our own exposure it changed no more than category ${category} allows.`,
    de: `${upperFirst(word)}: In unserer eigenen Belichtung änderte sich die Farbe nicht stärker, als Kategorie\u00a0${category} zulässt.`,
    fr: `${upperFirst(word)}\u202f: dans notre propre exposition, elle a changé dans les limites de la catégorie\u00a0${category}.`,
    es: `${upperFirst(word)}: en nuestra propia exposición cambió dentro de los límites de la categoría\u00a0${category}.`,
  }),

  /** @param told by whom, and of what. */
  stated: (word: string, told: string) => ({
    en: `${upperFirst(word)}: ${told}.`,
    de: `${upperFirst(word)}: ${told}.`,
    fr: `${upperFirst(word)}\u202f: ${told}.`,
    es: `${upperFirst(word)}: ${told}.`,
  }),
  expected: (word: string) => ({
    en: `${upperFirst(word)}; not tested here.`,
    de: `${upperFirst(word)}; hier nicht geprüft.`,
    fr: `${upperFirst(word)}\u202f; non testée ici.`,
    es: `${upperFirst(word)}; no ensayada aquí.`,
  }),
  caption: LIGHTFASTNESS,
  why: { en: "Why", de: "Warum", fr: "Pourquoi", es: "Por qué" },
  sensitivities: {
    en: "Other risks",
    de: "Weitere Risiken",
    fr: "Autres risques",
    es: "Otros riesgos",
  },
  note: {
    en: "The limits of the categories are quoted from memory of the standard. A category proper needs the standard\u2019s own exposures.",
    de: "Die Grenzen der Kategorien sind aus dem Gedächtnis nach der Norm zitiert. Eine Kategorie im eigentlichen Sinn setzt die Belichtungen der Norm voraus.",
    fr: "Les limites des catégories sont citées de mémoire d’après la norme. Une vraie catégorie demande les expositions de la norme elle-même.",
    es: "Los límites de las categorías se citan de memoria de la norma. Una categoría propiamente dicha necesita las exposiciones de la propia norma.",
  },
  none: {
    en: "Not known yet: no exposure, no word from the supplier, and nothing to expect from its pigments.",
    de: "Noch nicht bekannt: keine Belichtung, keine Angabe des Lieferanten und nichts, was die Pigmente erwarten ließen.",
    fr: "Pas encore connu\u202f: ni exposition, ni indication du fournisseur, et rien à prévoir d’après ses pigments.",
    es: "Aún no se sabe: ni exposición, ni dato del proveedor, ni nada que prever por sus pigmentos.",
  },
} satisfies Texts;
