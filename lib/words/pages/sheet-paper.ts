import { de, en, es, fr } from "../phrases-in-each.ts";
import type { Texts } from "../texts.ts";
import { quoted } from "./quoted.ts";

/** What stands on the printed sheet and the printed range, and on no page. */
export const SHEET_PAPER = {
  colon: { en: en.COLON, de: de.COLON, fr: fr.COLON, es: es.COLON },
  quoted,
  kind: { en: "Colour sheet", de: "Farbblatt", fr: "Fiche de couleur", es: "Ficha de color" },
  proof: {
    en: "Preview of process inks, not a colour to match",
    de: "Vorschau in Prozessfarben, keine Farbe zum Abmustern",
    fr: "Aperçu en encres de quadrichromie, pas une couleur à contretyper",
    es: "Vista previa en tintas de cuatricromía, no un color que igualar",
  },
  pageOf: (page: number, pages: number) => ({
    en: `${page} of ${pages}`,
    de: `${page} von ${pages}`,
    fr: `${page} sur ${pages}`,
    es: `${page} de ${pages}`,
  }),
  absent: (names: readonly string[]) => ({
    en: `Not stated: ${names.join("; ")}.`,
    de: `Keine Angabe: ${names.join("; ")}.`,
    fr: `Non indiqué\u202f: ${names.join("\u202f; ")}.`,
    es: `No indicado: ${names.join("; ")}.`,
  }),
  painted: {
    en: "Swatches are printed from Lab values; a painted drawdown rules.",
    de: "Farbfelder sind nach Lab-Werten gedruckt; es gilt der gemalte Aufstrich.",
    fr: "Les échantillons sont imprimés d’après des valeurs Lab\u202f; c’est l’application peinte qui fait foi.",
    es: "Las muestras se imprimen a partir de valores Lab; vale la aplicación pintada.",
  },
  inFull: {
    en: "Every figure and its working: ",
    de: "Jeder Wert und sein Rechenweg: ",
    fr: "Chaque chiffre et son calcul\u202f: ",
    es: "Cada cifra y su cálculo: ",
  },
  range: {
    title: { en: "The range", de: "Das Sortiment", fr: "La gamme", es: "La gama" },
    contents: { en: "Contents", de: "Inhalt", fr: "Sommaire", es: "Contenido" },
    continued: (family: string) => ({
      en: `${family}, continued`,
      de: `${family}, Fortsetzung`,
      fr: `${family}, suite`,
      es: `${family}, continuación`,
    }),
    lead: (count: number) => ({
      en: `${count} colour sheet${count === 1 ? "" : "s"}, by family and by name.`,
      de: `${count} Farb${count === 1 ? "blatt" : "blätter"}, nach Familie und Name.`,
      fr: `${count} fiche${count === 1 ? "" : "s"} de couleur, par famille et par nom.`,
      es: `${count} ficha${count === 1 ? "" : "s"} de color, por familia y por nombre.`,
    }),
  },
  downloads: {
    sheet: (size: string) => ({
      en: `this sheet to print, ${size}`,
      de: `dieses Blatt zum Drucken, ${size}`,
      fr: `cette fiche à imprimer, ${size}`,
      es: `esta ficha para imprimir, ${size}`,
    }),
    range: (size: string) => ({
      en: `every sheet in one file to print, ${size}`,
      de: `alle Blätter in einer Datei zum Drucken, ${size}`,
      fr: `toutes les fiches en un fichier à imprimer, ${size}`,
      es: `todas las fichas en un archivo para imprimir, ${size}`,
    }),
    rangePart: (size: string) => ({
      en: `some of the sheets in one file to print, by family, ${size}`,
      de: `ein Teil der Blätter in einer Datei zum Drucken, nach Familien, ${size}`,
      fr: `une partie des fiches en un fichier à imprimer, par famille, ${size}`,
      es: `una parte de las fichas en un archivo para imprimir, por familia, ${size}`,
    }),
    kilobytes: (bytes: number) => ({
      en:
        bytes < 1_000_000
          ? `${Math.max(1, Math.round(bytes / 1000))} kB`
          : `${en.NUMBERS.decimal(bytes / 1_000_000, 1)} MB`,
      de:
        bytes < 1_000_000
          ? `${Math.max(1, Math.round(bytes / 1000))}\u00a0kB`
          : `${de.NUMBERS.decimal(bytes / 1_000_000, 1)}\u00a0MB`,
      fr:
        bytes < 1_000_000
          ? `${Math.max(1, Math.round(bytes / 1000))}\u00a0ko`
          : `${fr.NUMBERS.decimal(bytes / 1_000_000, 1)}\u00a0Mo`,
      es:
        bytes < 1_000_000
          ? `${Math.max(1, Math.round(bytes / 1000))}\u00a0kB`
          : `${es.NUMBERS.decimal(bytes / 1_000_000, 1)}\u00a0MB`,
    }),
  },
} satisfies Texts;
