import type { Language } from "../quantities/languages.ts";
import type { WorkshopRecord } from "./schema/workshop.ts";

/** The language that a workshop writes its records in: names in them are words of that. */
export function recordLanguage({
  pageLanguages: [first = "en"] = [],
}: Pick<WorkshopRecord, "pageLanguages">): Language {
  return first;
}

/** Languages that a label's texts are wanted in: those of label elements, of each label and card, and of the pages that show them. */
export function labelLanguages({
  languages = ["en"],
  pageLanguages = [],
  labels = [],
  cards = [],
}: Pick<WorkshopRecord, "languages" | "pageLanguages" | "labels" | "cards">): Language[] {
  const printed = [...labels, ...cards].flatMap((size) => size.languages ?? []);
  return [...new Set<Language>([...languages, ...pageLanguages, ...printed])];
}
