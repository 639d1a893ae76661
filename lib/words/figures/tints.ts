import type { FigureTexts } from "./figure-words.ts";
import { WHITE_TUBE_TO_TUBE } from "../shared-rows.ts";

/** What a colour does in a white. */
export const TINT_FIGURES = {
  tintsSection: {
    en: "In the whites, in figures",
    de: "In Weiß, in Zahlen",
    fr: "Dans les blancs, en chiffres",
    es: "En los blancos, en cifras",
  },
  residual: {
    en: "Missed by the fit",
    de: "Abweichung der Anpassung",
    fr: "Écart de l’ajustement",
    es: "Error del ajuste",
  },
  leaveOneOut: {
    en: "Missed when left out",
    de: "Abweichung, wenn weggelassen",
    fr: "Écart s’il est laissé de côté",
    es: "Error si se deja fuera",
  },
  massRatio: {
    en: "Colour to white, by mass",
    de: "Farbe zu Weiß, nach Masse",
    fr: "Rapport couleur/blanc, en masse",
    es: "Proporción color/blanco, en masa",
  },
  strengthByMass: {
    en: "White to L* 50, by mass of paint",
    de: "Weiß bis L* 50, nach Masse der Farbe",
    fr: "Blanc jusqu’à L* 50, en masse de peinture",
    es: "Blanco hasta L* 50, en masa de pintura",
    found: {
      "the same of the paints that hold the pigment": {
        de: "dasselbe für die Farben, die das Pigment enthalten",
        fr: "la même chose, pour les peintures qui contiennent le pigment",
        es: "lo mismo, con las pinturas que contienen el pigmento",
      },
    },
  },
  strengthByVolume: WHITE_TUBE_TO_TUBE,
  strengthByPigmentMass: {
    en: "White to L* 50, by mass of dry pigment",
    de: "Weiß bis L* 50, nach Masse des trockenen Pigments",
    fr: "Blanc jusqu’à L* 50, en masse de pigment sec",
    es: "Blanco hasta L* 50, en masa de pigmento seco",
    found: {
      "the same of the dry pigment in the paints": {
        de: "dasselbe für das trockene Pigment in den Farben",
        fr: "la même chose, pour le pigment sec que contiennent les peintures",
        es: "lo mismo, con el pigmento seco que contienen las pinturas",
      },
    },
  },
} satisfies FigureTexts;
