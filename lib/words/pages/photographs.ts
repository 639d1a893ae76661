import type { Texts } from "../texts.ts";
import { lotNumber } from "../shared-rows.ts";

/** What stands beside photographs of paint. */
export const PHOTOGRAPHS = {
  heading: { en: "Pictures", de: "Fotos", fr: "En image", es: "En imagen" },
  of: {
    drawdown: {
      en: "Drawdown over black and white",
      de: "Aufstrich über Schwarz und Weiß",
      fr: "Application sur noir et blanc",
      es: "Aplicación sobre negro y blanco",
    },
    "brush stroke": {
      en: "Brush stroke",
      de: "Pinselstrich",
      fr: "Coup de pinceau",
      es: "Pincelada",
    },
    tube: { en: "Tube", de: "Tube", fr: "Tube", es: "Tubo" },
    "dry pigment": {
      en: "Dry pigment",
      de: "Trockenes Pigment",
      fr: "Pigment sec",
      es: "Pigmento seco",
    },
    impasto: { en: "Impasto", de: "Pastoser Auftrag", fr: "Empâtement", es: "Empaste" },
  },

  /** Said in place of a picture whose record says nothing. */
  alt: (of: string, name: string) => ({
    en: `${of}: ${name}, a photograph`,
    de: `${of}: ${name}, Foto`,
    fr: `${of}\u202f: ${name}, photographie`,
    es: `${of}: ${name}, fotografía`,
  }),
  lot: lotNumber,
  estimated: {
    en: "estimated from a photograph",
    de: "nach einem Foto geschätzt",
    fr: "estimé d’après une photographie",
    es: "estimado según una fotografía",
  },
  notation: {
    en: "Estimated from a photograph of the paint, corrected by patches that were read: no instrument has read it.",
    de: "Nach einem Foto der Farbe geschätzt, das nach gemessenen Feldern korrigiert ist: Kein Gerät hat die Farbe gemessen.",
    fr: "Estimé d’après une photographie de la peinture, corrigée d’après des plages mesurées\u202f: aucun instrument ne l’a mesurée.",
    es: "Estimado según una fotografía de la pintura, corregida según muestras medidas: ningún instrumento la ha medido.",
  },
} satisfies Texts;
