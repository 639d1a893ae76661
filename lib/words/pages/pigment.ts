import { alike, type Texts } from "../texts.ts";
import { dryPigment } from "../shared-rows.ts";

/** What a sheet says of a dry pigment. */
export const PIGMENT = {
  share: (share: string) => ({
    en: `${share} of the dry pigment`,
    de: `${share} des trockenen Pigments`,
    fr: `${share} du pigment sec`,
    es: `${share} del pigmento seco`,
  }),
  whole: {
    en: "single pigment",
    de: "ein einziges Pigment",
    fr: "pigment unique",
    es: "pigmento único",
  },
  noShare: {
    en: "share not recorded",
    de: "Anteil nicht aufgezeichnet",
    fr: "part non consignée",
    es: "proporción no registrada",
  },
  caption: dryPigment,
  facts: {
    origin: { en: "Origin", de: "Herkunft", fr: "Origine", es: "Origen" },
    chemistry: { en: "Chemistry", de: "Chemie", fr: "Chimie", es: "Química" },
    particle: { en: "Particle", de: "Teilchen", fr: "Particule", es: "Partícula" },
    benchTest: {
      en: "A bench test",
      de: "Ein Versuch an der Werkbank",
      fr: "Un essai à l’établi",
      es: "Prueba en la mesa de trabajo",
    },
  },
  particle: (size: string | undefined, shape: string | undefined, index?: string) => ({
    en: [shape, size, index === undefined ? undefined : `refractive index ${index}`]
      .filter((part) => part !== undefined)
      .join(", "),
    de: [shape, size, index === undefined ? undefined : `Brechungsindex ${index}`]
      .filter((part) => part !== undefined)
      .join(", "),
    fr: [shape, size, index === undefined ? undefined : `indice de réfraction ${index}`]
      .filter((part) => part !== undefined)
      .join(", "),
    es: [shape, size, index === undefined ? undefined : `índice de refracción ${index}`]
      .filter((part) => part !== undefined)
      .join(", "),
  }),
  size: (um: string) => alike(`${um}\u00a0\u00b5m`),
  nothing: {
    en: "We have written down nothing more about it.",
    de: "Mehr haben wir darüber nicht aufgezeichnet.",
    fr: "Nous n’en avons rien noté de plus.",
    es: "No hemos anotado nada más sobre él.",
  },
} satisfies Texts;
