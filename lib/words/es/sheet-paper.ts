import { COLON, NUMBERS } from "./phrases.ts";
import type { SHEET_PAPER as ENGLISH_PAPER } from "../en/sheet-paper.ts";
import type { AnyWords } from "../any-words.ts";

/** What stands on the printed sheet and the printed range, and on no page. */
export const SHEET_PAPER: AnyWords<typeof ENGLISH_PAPER> = {
  colon: COLON,
  kind: "Ficha de color",
  proof: "Vista previa en tintas de cuatricromía, no un color que igualar",
  pageOf: (page, pages) => `${page} de ${pages}`,
  absent: (names) => `No indicado: ${names.join("; ")}.`,
  painted: "Las muestras se imprimen a partir de valores Lab; manda una aplicación pintada.",
  inFull: "Cada cifra y su cálculo: ",
  range: {
    title: "La gama",
    contents: "Contenido",
    continued: (family) => `${family}, continuación`,
    lead: (count) => `${count} ficha${count === 1 ? "" : "s"} de color, por familia y por nombre.`,
  },
  downloads: {
    sheet: (size) => `esta ficha para imprimir, ${size}`,
    range: (size) => `todas las fichas en un archivo para imprimir, ${size}`,
    rangePart: (size) =>
      `una parte de las fichas en un archivo para imprimir, por familia, ${size}`,
    kilobytes: (bytes) =>
      bytes < 1_000_000
        ? `${Math.max(1, Math.round(bytes / 1000))}\u00a0kB`
        : `${NUMBERS.decimal(bytes / 1_000_000, 1)}\u00a0MB`,
  },
};
