import type { AnyWords } from "../any-words.ts";
import type { PageWords } from "../en/pages.ts";

/** What labels to stick, and the document that they come in, say. */
export const PACKAGE_LABELS: AnyWords<PageWords["packageLabels"]> = {
  code: (code: string) => `Preisgruppe ${code}`,
  foldOut: {
    inside: "Alle Sicherheitshinweise innen",
    front: "Vorderseite",
    page: (page) => `Seite ${page}`,
    back: "Rückseite: aufkleben",
    away: "nach hinten",
    over: "nach vorn",
  },
  document: {
    title: (workshop: string) => `Etiketten: ${workshop}`,
    subject: (count: number) =>
      `${count} ${count === 1 ? "Etikett" : "Etiketten"}, in voller Größe zu drucken`,
    label: (name: string, size: string) => `${name}, ${size}`,
  },
};
