import { alike, type Texts } from "../texts.ts";

/** Heads of a table of let-downs, whatever else stands beside these. */
export const STEP_COLUMNS = {
  ratio: {
    en: "Colour : white",
    de: "Farbe : Weiß",
    fr: "Couleur\u202f: blanc",
    es: "Color : blanco",
  },
  L: alike("L*"),
  a: alike("a*"),
  b: alike("b*"),
  munsell: alike("Munsell"),
} satisfies Texts;
