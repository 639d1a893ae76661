import { alike, type Texts } from "../texts.ts";

const DRIED_FILM = {
  en: "Dried film, \u00b5m",
  de: "Trockener Film, \u00b5m",
  fr: "Film sec, \u00b5m",
  es: "Película seca, \u00b5m",
};

/** Strength and hiding on a sheet. */
export const STRENGTH = {
  caption: {
    en: "Strength and hiding",
    de: "Farbstärke und Deckvermögen",
    fr: "Force et opacité",
    es: "Fuerza y opacidad",
  },
  why: { en: "Why", de: "Warum", fr: "Pourquoi", es: "Por qué" },
  tubeCaption: {
    en: "Parts of white to 1 part of the colour, for a middle tone (L* 50)",
    de: "Teile Weiß auf 1 Teil der Farbe, für einen Mittelton (L* 50)",
    fr: "Parts de blanc pour 1 part de la couleur, pour un ton moyen (L* 50)",
    es: "Partes de blanco por 1 parte del color, para un tono medio (L* 50)",
  },
  tubeColumns: {
    white: { en: "White", de: "Weiß", fr: "Blanc", es: "Blanco" },
    byVolume: {
      en: "Tube to tube, by volume",
      de: "Tube zu Tube, nach Volumen",
      fr: "Tube pour tube, en volume",
      es: "Tubo a tubo, en volumen",
    },
    byMass: {
      en: "By mass of paint",
      de: "Nach Masse der Farbe",
      fr: "En masse de peinture",
      es: "En masa de pintura",
    },
  },
  tubeNote: {
    en: "A strong colour takes much white. By volume is how paint is squeezed out; it is worked out from the weights and the densities.",
    de: "Eine starke Farbe nimmt viel Weiß auf. Aus der Tube drückt man Farbe nach Volumen; errechnet ist das Volumen aus Gewichten und Dichten.",
    fr: "Une couleur forte demande beaucoup de blanc. La peinture sort du tube en volume\u202f; ce volume est calculé d’après les poids et les masses volumiques.",
    es: "Un color fuerte pide mucho blanco. Del tubo se saca por volumen; ese volumen se calcula a partir de los pesos y las densidades.",
  },
  glazeTitle: {
    en: "Undertone: thicker and thicker films over white",
    de: "Unterton: immer dickere Filme über Weiß",
    fr: "Sous-ton\u202f: des films de plus en plus épais sur du blanc",
    es: "Subtono: películas cada vez más gruesas sobre blanco",
  },
  glazeAxis: DRIED_FILM,
  glazeLabel: (filmUm: number) => alike(`${filmUm}`),
  glazeDescription: (films: readonly string[]) => ({
    en: `Films over white: ${films.join("; ")}.`,
    de: `Filme über Weiß: ${films.join("; ")}.`,
    fr: `Films sur du blanc\u202f: ${films.join("\u202f; ")}.`,
    es: `Películas sobre blanco: ${films.join("; ")}.`,
  }),
  hidingTitle: {
    en: "How thick a film has to be to hide",
    de: "Wie dick ein Film sein muss, um zu decken",
    fr: "Quelle épaisseur de film il faut pour couvrir",
    es: "Qué espesor necesita una película para cubrir",
  },
  hidingFilm: DRIED_FILM,
  hidingRatio: {
    en: "Contrast ratio",
    de: "Kontrastverhältnis",
    fr: "Rapport de contraste",
    es: "Relación de contraste",
  },
  hides: { en: "hides", de: "deckt", fr: "couvre", es: "cubre" },
  hidingDescription: (points: readonly string[]) => ({
    en: `Contrast ratio by film: ${points.join("; ")}.`,
    de: `Kontrastverhältnis nach Film: ${points.join("; ")}.`,
    fr: `Rapport de contraste par film\u202f: ${points.join("\u202f; ")}.`,
    es: `Relación de contraste por película: ${points.join("; ")}.`,
  }),
} satisfies Texts;
