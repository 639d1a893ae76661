import { alike, type Texts } from "../texts.ts";

/** The page of the workshop's own pigments. */
export const PIGMENTS = {
  heading: { en: "Pigments", de: "Pigmente", fr: "Pigments", es: "Pigmentos" },
  columns: {
    pigment: { en: "Pigment", de: "Pigment", fr: "Pigment", es: "Pigmento" },
    index: alike("Colour Index"),
    density: { en: "Density", de: "Dichte", fr: "Masse volumique", es: "Densidad" },
    oil: { en: "Oil absorption", de: "Ölzahl", fr: "Prise d’huile", es: "Absorción de aceite" },
    colours: { en: "Colours", de: "Farben", fr: "Couleurs", es: "Colores" },
  },
  properties: {
    en: "Figures of the dry pigment",
    de: "Werte des trockenen Pigments",
    fr: "Chiffres du pigment sec",
    es: "Cifras del pigmento seco",
  },
  handling: {
    en: "Handling the dry pigment",
    de: "Umgang mit dem trockenen Pigment",
    fr: "Manipuler le pigment sec",
    es: "Manipular el pigmento seco",
  },
  noColours: {
    en: "No colour is made from it.",
    de: "Keine Farbe wird daraus hergestellt.",
    fr: "Aucune couleur n’en est faite.",
    es: "Ningún color está hecho con él.",
  },
  caption: {
    en: "Dry pigments",
    de: "Trockene Pigmente",
    fr: "Pigments secs",
    es: "Pigmentos secos",
  },
} satisfies Texts;
