import type { AnyWords } from "../any-words.ts";
import type { PHOTOGRAPHS as ENGLISH } from "../en/photographs.ts";

export const PHOTOGRAPHS: AnyWords<typeof ENGLISH> = {
  heading: "En image",
  of: {
    drawdown: "Application sur noir et blanc",
    "brush stroke": "Coup de pinceau",
    tube: "Tube",
    "dry pigment": "Pigment sec",
    impasto: "Empâtement",
  },
  alt: (of, name) => `${of}\u00a0: ${name}, photographie`,
  lot: (number) => `Lot ${number}`,
  estimated: "estimé d’après une photographie",
  notation:
    "Estimé d’après une photographie de la peinture, corrigée par des plages mesurées : aucun instrument ne l’a mesurée.",
};
