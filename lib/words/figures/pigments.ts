import type { FigureTexts } from "./figure-words.ts";

/** Of dry pigments, the oil and what is added to it. */
export const PIGMENT_FIGURES = {
  pigmentSection: { en: "The pigment", de: "Das Pigment", fr: "Le pigment", es: "El pigmento" },
  massFraction: {
    en: "Share of the dry pigment",
    de: "Anteil am trockenen Pigment",
    fr: "Part dans le pigment sec",
    es: "Proporción en el pigmento seco",
    found: {
      "parts by mass, as recorded": {
        de: "Masseteile, wie aufgezeichnet",
        fr: "parties en masse, selon les relevés",
        es: "partes en masa, según los registros",
      },
      "the only pigment": {
        de: "das einzige Pigment",
        fr: "le seul pigment",
        es: "el único pigmento",
      },
    },
  },
  density: {
    en: "Density of the pigment",
    de: "Dichte des Pigments",
    fr: "Masse volumique du pigment",
    es: "Densidad del pigmento",
    found: {
      "blend by volume": {
        de: "Mischung nach Volumen",
        fr: "mélange selon le volume",
        es: "mezcla por volumen",
      },
    },
  },
  oilDensity: {
    en: "Density of the oil",
    de: "Dichte des Öls",
    fr: "Masse volumique de l’huile",
    es: "Densidad del aceite",
  },
  particleSize: {
    en: "Particle size",
    de: "Teilchengröße",
    fr: "Taille des particules",
    es: "Tamaño de partícula",
  },
  formula: { en: "Formula", de: "Formel", fr: "Formule", es: "Fórmula" },
  mineral: { en: "As a mineral", de: "Als Mineral", fr: "Minéral", es: "Mineral" },
  introduced: { en: "Introduced", de: "Eingeführt", fr: "Introduit en", es: "Introducido en" },
  expectedOpacity: {
    en: "Opacity to expect",
    de: "Deckvermögen, zu erwarten",
    fr: "Opacité à prévoir",
    es: "Opacidad previsible",
  },
  price: { en: "Price", de: "Preis", fr: "Prix", es: "Precio" },
  percentOfOil: {
    en: "Share on the oil",
    de: "Anteil am Öl",
    fr: "Part rapportée à l’huile",
    es: "Proporción sobre el aceite",
  },
  additionDensity: { en: "Density", de: "Dichte", fr: "Masse volumique", es: "Densidad" },
  metalPercentOfOil: {
    en: "Metal on the oil",
    de: "Metall auf Öl",
    fr: "Métal rapporté à l’huile",
    es: "Metal sobre el aceite",
    found: {
      "{a} % of metal in it, as recorded": {
        de: "{a}\u00a0% Metall darin, wie aufgezeichnet",
        fr: "{a}\u00a0% de métal, selon les relevés",
        es: "{a}\u00a0% de metal, según los registros",
      },
    },
    missing: {
      "how much metal is in it is not recorded": {
        de: "wie viel Metall darin ist, ist nicht aufgezeichnet",
        fr: "la part de métal n’est pas consignée",
        es: "no está registrado cuánto metal contiene",
      },
    },
  },
  bulkDensityLoose: {
    en: "Bulk density, as poured",
    de: "Schüttdichte, lose",
    fr: "Masse volumique apparente, sans tassement",
    es: "Densidad aparente, sin compactar",
  },
  bulkDensityTapped: {
    en: "Bulk density, tapped",
    de: "Stampfdichte",
    fr: "Masse volumique apparente, après tassement",
    es: "Densidad aparente, compactada",
  },
  oilAbsorption: {
    en: "Oil absorption (rub-out)",
    de: "Ölzahl (angerieben)",
    fr: "Prise d’huile (au couteau)",
    es: "Absorción de aceite (amasado)",
    gloss: {
      en: "grams of oil that just bind 100 g of pigment on the slab",
      de: "Gramm Öl, die 100 g Pigment auf der Reibplatte gerade eben binden",
      fr: "grammes d’huile qui lient tout juste 100\u00a0g de pigment sur le marbre",
      es: "gramos de aceite que bastan justo para ligar 100\u00a0g de pigmento en la losa",
    },
    found: {
      "blend by pigment volume": {
        de: "Mischung nach Pigmentvolumen",
        fr: "mélange selon le volume de pigment",
        es: "mezcla por volumen de pigmento",
      },
      "oil index / 1.1 to 2": {
        de: "Ölindex / 1,1 bis 2",
        fr: "indice d’huile / 1,1 à 2",
        es: "índice de aceite / de 1,1 a 2",
      },
    },
  },
} satisfies FigureTexts;
