import type { PACKAGE_LABELS as ENGLISH_LABELS } from "../en/package-labels.ts";
import type { AnyWords } from "../any-words.ts";

/** What labels to stick, and the document that they come in, say. */
export const PACKAGE_LABELS: AnyWords<typeof ENGLISH_LABELS> = {
  code: (code) => `Groupe de prix ${code}`,
  foldOut: {
    inside: "Toutes les consignes de sécurité à l\u2019intérieur",
    front: "première page",
    page: (page) => `page ${page}`,
    back: "dernière page\u00a0: à coller",
    away: "plier en arrière",
    over: "plier en avant",
  },
  document: {
    title: (workshop) => `Étiquettes\u202f: ${workshop}`,
    subject: (count) =>
      `${count} ${count === 1 ? "étiquette" : "étiquettes"}, à imprimer en vraie grandeur`,
    label: (name, size) => `${name}, ${size}`,
  },
};
