import type { Texts } from "../texts.ts";
import type { InEach } from "../in-each.ts";
import {
  LIGHTFASTNESS,
  NOT_KNOWN_YET,
  OIL_AND_FINISH,
  SIZES_AND_PRICES,
  WHAT_IT_WOULD_TAKE,
} from "../shared-rows.ts";

/** How each figure of a sheet was found. */
export const EVIDENCE = {
  summary: {
    en: "Every figure of this sheet, how we came by it and what it was worked out from. Figures go by the names that the sheet’s data and the claims of answers use.",
    de: "Jeder Wert dieses Blatts: woher wir ihn haben und woraus er errechnet ist. Die Werte stehen unter den Namen, die die Daten des Blatts und die Aussagen der Antworten verwenden.",
    fr: "Chaque chiffre de cette fiche, d’où nous le tenons et à partir de quoi il est calculé. Les chiffres portent les noms qu’emploient les données de la fiche et les affirmations des réponses.",
    es: "Cada cifra de esta ficha, de dónde sale y a partir de qué se calculó. Las cifras llevan los nombres que usan los datos de la ficha y las afirmaciones de las respuestas.",
  },
  caption: {
    en: "Figures and how each was found",
    de: "Werte und wie jeder ermittelt wurde",
    fr: "Les chiffres et comment chacun a été trouvé",
    es: "Las cifras y cómo se halló cada una",
  },
  columns: {
    figure: { en: "Figure", de: "Wert", fr: "Chiffre", es: "Cifra" },
    value: { en: "Value", de: "Betrag", fr: "Valeur", es: "Valor" },
    standing: { en: "Standing", de: "Herkunft", fr: "Origine", es: "Origen" },
    method: { en: "Method", de: "Verfahren", fr: "Méthode", es: "Método" },
    inputs: { en: "From", de: "Aus", fr: "À partir de", es: "A partir de" },
  },
  part: (part: string, count: number) => ({
    en: `${part}: ${count} ${count === 1 ? "figure" : "figures"}`,
    de: `${part}: ${count} ${count === 1 ? "Wert" : "Werte"}`,
    fr: `${part}\u202f: ${count} ${count === 1 ? "chiffre" : "chiffres"}`,
    es: `${part}: ${count} ${count === 1 ? "cifra" : "cifras"}`,
  }),
  parts: {
    pigments: { en: "The pigment", de: "Das Pigment", fr: "Le pigment", es: "El pigmento" },
    notations: { en: "Notations", de: "Notationen", fr: "Notations", es: "Notaciones" },
    tints: { en: "In the whites", de: "In Weiß", fr: "Dans les blancs", es: "En los blancos" },
    expectedTints: {
      en: "In whites not tried",
      de: "In einem nicht erprobten Weiß",
      fr: "Dans les blancs non essayés",
      es: "En los blancos no probados",
    },
    mixture: { en: "As a mixture", de: "Als Mischung", fr: "Comme mélange", es: "Como mezcla" },
    optics: {
      en: "Strength, hiding, gloss and the fit",
      de: "Farbstärke, Deckvermögen, Glanz und Anpassung",
      fr: "Force, opacité, brillance et ajustement",
      es: "Fuerza, opacidad, brillo y el ajuste",
    },
    oil: OIL_AND_FINISH,
    batch: { en: "A batch", de: "Ein Ansatz", fr: "Une fabrication", es: "Una fabricación" },
    fill: {
      en: "Jars and tubes",
      de: "Gläser und Tuben",
      fr: "Pots et tubes",
      es: "Tarros y tubos",
    },
    drying: { en: "Drying", de: "Trocknung", fr: "Séchage", es: "Secado" },
    permanence: LIGHTFASTNESS,
    additions: { en: "Additions", de: "Zusätze", fr: "Ajouts", es: "Añadidos" },
    vehicle: { en: "Vehicle", de: "Bindemittel", fr: "Liant", es: "Aglutinante" },
    cautions: { en: "Safety", de: "Sicherheit", fr: "Sécurité", es: "Seguridad" },
    offer: SIZES_AND_PRICES,
  } as Readonly<Record<string, InEach>>,
  notStated: NOT_KNOWN_YET,
  notStatedCaption: WHAT_IT_WOULD_TAKE,
  reason: { en: "Why", de: "Warum", fr: "Pourquoi", es: "Por qué" },
  wanting: { en: "Needs", de: "Es fehlt", fr: "Il faut", es: "Hace falta" },
  sources: { en: "Sources", de: "Quellen", fr: "Sources", es: "Fuentes" },
} satisfies Texts;
