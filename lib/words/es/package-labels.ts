import type { PACKAGE_LABELS as ENGLISH_LABELS } from "../en/package-labels.ts";
import type { AnyWords } from "../any-words.ts";

/** What labels to stick, and the document that they come in, say. */
export const PACKAGE_LABELS: AnyWords<typeof ENGLISH_LABELS> = {
  code: (code) => `Grupo de precio ${code}`,
  document: {
    title: (workshop) => `Etiquetas: ${workshop}`,
    subject: (count) =>
      `${count} ${count === 1 ? "etiqueta" : "etiquetas"}, para imprimir a tamaño real`,
    label: (name, size) => `${name}, ${size}`,
  },
};
