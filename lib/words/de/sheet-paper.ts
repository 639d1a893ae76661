import { COLON, NUMBERS } from "./phrases.ts";
import type { AnyWords } from "../any-words.ts";
import type { PageWords } from "../en/pages.ts";

/** What stands on the printed sheet and the printed range, and on no page. */
export const SHEET_PAPER: AnyWords<PageWords["sheetPaper"]> = {
  colon: COLON,
  kind: "Farbblatt",
  proof: "Vorschau in Prozessfarben, keine Farbe zum Abmustern",
  pageOf: (page: number, pages: number) => `${page} von ${pages}`,
  absent: (names: readonly string[]) => `Keine Angabe: ${names.join("; ")}.`,
  painted: "Farbfelder sind nach Lab-Werten gedruckt; der gemalte Aufstrich gilt.",
  inFull: "Jeder Wert und sein Rechenweg: ",
  range: {
    title: "Das Sortiment",
    contents: "Inhalt",
    continued: (family: string) => `${family}, Fortsetzung`,
    lead: (count: number) =>
      `${count} Farb${count === 1 ? "blatt" : "blätter"}, nach Familie und Name.`,
  },
  downloads: {
    sheet: (size: string) => `dieses Blatt zum Drucken, ${size}`,
    range: (size: string) => `alle Blätter in einer Datei zum Drucken, ${size}`,
    rangePart: (size: string) =>
      `ein Teil der Blätter in einer Datei zum Drucken, nach Familien, ${size}`,
    kilobytes: (bytes: number) =>
      bytes < 1_000_000
        ? `${Math.max(1, Math.round(bytes / 1000))}\u00a0kB`
        : `${NUMBERS.decimal(bytes / 1_000_000, 1)}\u00a0MB`,
  },
};
