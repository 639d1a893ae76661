import type { PACKAGE_LABELS as ENGLISH_LABELS } from "../en/package-labels.ts";
import type { AnyWords } from "../any-words.ts";

/** What labels to stick, and the document that they come in, say. */
export const PACKAGE_LABELS: AnyWords<typeof ENGLISH_LABELS> = {
  code: (code) => `Grupo de precio ${code}`,
  foldOut: {
    inside: "Toda la información de seguridad en el interior",
    front: "primera página",
    page: (page) => `página ${page}`,
    back: "última página: pegar",
    away: "doblar hacia atrás",
    over: "doblar hacia delante",
  },
  document: {
    title: (workshop) => `Etiquetas: ${workshop}`,
    subject: (count) =>
      `${count} ${count === 1 ? "etiqueta" : "etiquetas"}, para imprimir a tamaño real`,
    label: (name, size) => `${name}, ${size}`,
  },
};
