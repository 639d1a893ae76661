import { alike, type Texts } from "../texts.ts";

/** What labels to stick, and the document that they come in, say. */
export const PACKAGE_LABELS = {
  code: (code: string) => ({
    en: `Price group ${code}`,
    de: `Preisgruppe ${code}`,
    fr: `Groupe de prix ${code}`,
    es: `Grupo de precio ${code}`,
  }),
  foldOut: {
    inside: {
      en: "Full safety information inside",
      de: "Alle Sicherheitshinweise innen",
      fr: "Toutes les consignes de sécurité à l\u2019intérieur",
      es: "Toda la información de seguridad en el interior",
    },
    front: { en: "front page", de: "Vorderseite", fr: "première page", es: "primera página" },
    page: (page: number) => ({
      en: `page ${page}`,
      de: `Seite ${page}`,
      fr: `page ${page}`,
      es: `página ${page}`,
    }),
    back: {
      en: "back page: stick down",
      de: "Rückseite: aufkleben",
      fr: "dernière page\u202f: à coller",
      es: "última página: pegar",
    },
    away: { en: "fold back", de: "nach hinten", fr: "plier en arrière", es: "doblar hacia atrás" },
    over: { en: "fold over", de: "nach vorn", fr: "plier en avant", es: "doblar hacia delante" },
  },
  document: {
    title: (workshop: string) => ({
      en: `Labels: ${workshop}`,
      de: `Etiketten: ${workshop}`,
      fr: `Étiquettes\u202f: ${workshop}`,
      es: `Etiquetas: ${workshop}`,
    }),
    subject: (count: number) => ({
      en: `${count} ${count === 1 ? "label" : "labels"}, to print at full size`,
      de: `${count} ${count === 1 ? "Etikett" : "Etiketten"}, im Maßstab 1:1 zu drucken`,
      fr: `${count} ${count === 1 ? "étiquette" : "étiquettes"}, à imprimer en vraie grandeur`,
      es: `${count} ${count === 1 ? "etiqueta" : "etiquetas"}, para imprimir a tamaño real`,
    }),
    label: (name: string, size: string) => alike(`${name}, ${size}`),
  },
} satisfies Texts;
