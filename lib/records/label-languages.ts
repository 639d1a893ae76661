import type { Language } from "./schema/terms.ts";
import type { WorkshopRecord } from "./schema/workshop.ts";

/** Languages that a label's texts are wanted in: those of the labels, and those of the pages that show them. */
export function labelLanguages({
  languages = ["en"],
  pageLanguages = [],
}: Pick<WorkshopRecord, "languages" | "pageLanguages">): Language[] {
  return [...new Set<Language>([...languages, ...pageLanguages])];
}
