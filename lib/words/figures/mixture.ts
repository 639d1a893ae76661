import type { FigureTexts } from "./figure-words.ts";

/** Of colours of several pigments. */
export const MIXTURE_FIGURES = {
  mixtureSection: {
    en: "As a mixture",
    de: "Als Mischung",
    fr: "Comme mélange",
    es: "Como mezcla",
  },
  pigmentVolumeShare: {
    en: "Share of the dry pigment, by volume",
    de: "Anteil am trockenen Pigment, nach Volumen",
    fr: "Part dans le pigment sec, en volume",
    es: "Proporción en el pigmento seco, en volumen",
    found: {
      "share by mass over density": {
        de: "Masseanteil geteilt durch Dichte",
        fr: "part en masse divisée par la masse volumique",
        es: "proporción en masa dividida entre la densidad",
      },
    },
  },
  paintMassShare: {
    en: "Share of the paints, by mass",
    de: "Anteil an den Farben, nach Masse",
    fr: "Part dans les peintures, en masse",
    es: "Proporción en las pinturas, en masa",
    found: {
      "share by mass, each pigment with its own paint's oil": {
        de: "Masseanteil, jedes Pigment mit dem Öl seiner eigenen Farbe",
        fr: "part en masse, chaque pigment avec l’huile de sa propre peinture",
        es: "proporción en masa, cada pigmento con el aceite de su propia pintura",
      },
    },
  },
  paintVolumeShare: {
    en: "Share of the paints, tube to tube",
    de: "Anteil an den Farben, Tube zu Tube",
    fr: "Part dans les peintures, tube pour tube",
    es: "Proporción en las pinturas, tubo a tubo",
    found: {
      "the same over the density of each paint": {
        de: "dasselbe geteilt durch die Dichte jeder Farbe",
        fr: "la même chose, divisée par la masse volumique de chaque peinture",
        es: "lo mismo, dividido entre la densidad de cada pintura",
      },
    },
  },
  mixtureMiss: {
    en: "Missed by its components",
    de: "Abweichung von der Vorhersage aus den Komponenten",
    fr: "Écart de la prévision par les composants",
    es: "Error de la previsión por los componentes",
    found: {
      "ΔE00 between what its components predict and its own drawdown": {
        de: "ΔE00 zwischen dem, was ihre Komponenten vorhersagen, und ihrem eigenen Aufstrich",
        fr: "ΔE00 entre ce que prévoient ses composants et sa propre application",
        es: "ΔE00 entre lo que prevén sus componentes y su propia aplicación",
      },
    },
  },
  mixtureMiddleMiss: {
    en: "Missed by its components, middle one",
    de: "Abweichung von der Vorhersage aus den Komponenten, mittlere",
    fr: "Écart de la prévision par les composants, médiane",
    es: "Error de la previsión por los componentes, mediana",
    found: {
      "middle one of the misses of its drawdowns": {
        de: "Median der Abweichungen ihrer Aufstriche",
        fr: "médiane des écarts de ses applications",
        es: "mediana de los errores de sus aplicaciones",
      },
    },
    missing: {
      "the mixture itself was not let down in this white": {
        de: "die Mischung selbst wurde in diesem Weiß nicht aufgehellt",
        fr: "le mélange lui-même n’a pas de dégradé dans ce blanc",
        es: "la propia mezcla no se rebajó en este blanco",
      },
    },
  },
  driftDeltaE00: {
    en: "Drift",
    de: "Verschiebung",
    fr: "Dérive",
    es: "Deriva",
    found: {
      "ΔE00 (D65/10) between the tint at L* 50 and the same after the loss": {
        de: "ΔE00 (D65/10) zwischen der Aufhellung bei L* 50 und derselben nach dem Verlust",
        fr: "ΔE00 (D65/10) entre le dégradé à L* 50 et le même après la perte",
        es: "ΔE00 (D65/10) entre el rebaje a L* 50 y el mismo tras la pérdida",
      },
    },
  },
  neutralShare: {
    en: "Nearest to neutral, by mass",
    de: "Am nächsten an Neutral, nach Masse",
    fr: "Au plus près du neutre, en masse",
    es: "Lo más cerca del neutro, en masa",
    found: {
      "share of paint by mass at which C*ab is least, at L* 50": {
        de: "Masseanteil der Farbe, bei dem C*ab am kleinsten ist, bei L* 50",
        fr: "part de peinture en masse pour laquelle C*ab est le plus petit, à L* 50",
        es: "proporción de pintura en masa con la que C*ab es mínimo, a L* 50",
      },
    },
  },
  neutralVolumeShare: {
    en: "Nearest to neutral, tube to tube",
    de: "Am nächsten an Neutral, Tube zu Tube",
    fr: "Au plus près du neutre, tube pour tube",
    es: "Lo más cerca del neutro, tubo a tubo",
  },
  neutralChroma: {
    en: "C*ab of the nearest neutral",
    de: "C*ab des neutralsten Graus",
    fr: "C*ab du gris le plus neutre",
    es: "C*ab del gris más neutro",
    found: {
      "C*ab (D65/10) of that grey": {
        de: "C*ab (D65/10) dieses Graus",
        fr: "C*ab (D65/10) de ce gris",
        es: "C*ab (D65/10) de ese gris",
      },
    },
  },
} satisfies FigureTexts;
