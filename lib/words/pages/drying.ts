import { upperFirst } from "../letter-case.ts";
import type { Texts } from "../texts.ts";

/** Drying on a sheet. */
export const DRYING = {
  caption: { en: "Drying", de: "Trocknung", fr: "Séchage", es: "Secado" },
  why: { en: "Why", de: "Warum", fr: "Pourquoi", es: "Por qué" },
  layering: { en: "Layering", de: "Schichten", fr: "Couches", es: "Capas" },
  film: {
    en: "The film, with age",
    de: "Wie der Film altert",
    fr: "Le film, avec l’âge",
    es: "La película, con la edad",
  },
  contradictions: {
    en: "Where our trial and the rule of thumb disagree",
    de: "Wo unser Versuch der Faustregel widerspricht",
    fr: "En quoi notre essai et la règle empirique ne s’accordent pas",
    es: "En qué no concuerdan nuestro ensayo y la regla práctica",
  },
  summary: (dryingClass: string, days: string, through: string | undefined) => ({
    en:
      through === undefined
        ? `${upperFirst(dryingClass)}: dry to the touch in ${days}. That is not dry right through.`
        : `${upperFirst(dryingClass)}: dry to the touch in ${days}, through in ${through}. A thicker film takes longer.`,
    de:
      through === undefined
        ? `${upperFirst(dryingClass)}: ${days} bis grifftrocken. Das ist nicht durchgetrocknet.`
        : `${upperFirst(dryingClass)}: ${days} bis grifftrocken, ${through} bis durchgetrocknet. Ein dickerer Film braucht länger.`,
    fr:
      through === undefined
        ? `${upperFirst(dryingClass)}\u202f: sec au toucher en ${days}. Sec au toucher n’est pas sec à cœur.`
        : `${upperFirst(dryingClass)}\u202f: sec au toucher en ${days}, à cœur en ${through}. Un film plus épais met plus longtemps.`,
    es:
      through === undefined
        ? `${upperFirst(dryingClass)}: seco al tacto en ${days}. Seco al tacto no es seco en profundidad.`
        : `${upperFirst(dryingClass)}: seco al tacto en ${days}, en profundidad en ${through}. Una película más gruesa tarda más.`,
  }),
  none: {
    en: "Not known yet: we have no trial of it, and do not know what its pigment does to drying oil.",
    de: "Noch nicht bekannt: Wir haben keinen Versuch damit und wissen nicht, wie das Pigment auf trocknendes Öl wirkt.",
    fr: "Pas encore connu\u202f: nous n’en avons pas d’essai, et nous ignorons l’effet de son pigment sur l’huile siccative.",
    es: "Aún no se sabe: no tenemos ningún ensayo suyo ni sabemos qué efecto tiene su pigmento sobre el aceite secante.",
  },
} satisfies Texts;
