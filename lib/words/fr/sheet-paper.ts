import { COLON, NUMBERS } from "./phrases.ts";
import type { SHEET_PAPER as ENGLISH_PAPER } from "../en/sheet-paper.ts";
import type { AnyWords } from "../any-words.ts";

/** What stands on the printed sheet and the printed range, and on no page. */
export const SHEET_PAPER: AnyWords<typeof ENGLISH_PAPER> = {
  colon: COLON,
  kind: "Fiche de couleur",
  proof: "Aperçu en encres de quadrichromie, pas une couleur à contretyper",
  pageOf: (page, pages) => `${page} sur ${pages}`,
  absent: (names) => `Non indiqué\u202f: ${names.join("\u202f; ")}.`,
  painted:
    "Les échantillons sont imprimés d’après des valeurs Lab\u202f; une application peinte fait foi.",
  inFull: "Chaque chiffre et son calcul\u202f: ",
  range: {
    title: "La gamme",
    contents: "Sommaire",
    continued: (family) => `${family}, suite`,
    lead: (count) => `${count} fiche${count === 1 ? "" : "s"} de couleur, par famille et par nom.`,
  },
  downloads: {
    sheet: (size) => `cette fiche à imprimer, ${size}`,
    range: (size) => `toutes les fiches en un fichier à imprimer, ${size}`,
    rangePart: (size) => `une partie des fiches en un fichier à imprimer, par famille, ${size}`,
    kilobytes: (bytes) =>
      bytes < 1_000_000
        ? `${Math.max(1, Math.round(bytes / 1000))}\u00a0ko`
        : `${NUMBERS.decimal(bytes / 1_000_000, 1)}\u00a0Mo`,
  },
};
