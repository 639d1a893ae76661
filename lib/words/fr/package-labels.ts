import type { PACKAGE_LABELS as ENGLISH_LABELS } from "../en/package-labels.ts";
import type { AnyWords } from "../any-words.ts";

/** What labels to stick, and the document that they come in, say. */
export const PACKAGE_LABELS: AnyWords<typeof ENGLISH_LABELS> = {
  code: (code) => `Groupe de prix ${code}`,
  document: {
    title: (workshop) => `Étiquettes\u202f: ${workshop}`,
    subject: (count) =>
      `${count} ${count === 1 ? "étiquette" : "étiquettes"}, à imprimer en vraie grandeur`,
    label: (name, size) => `${name}, ${size}`,
  },
};
