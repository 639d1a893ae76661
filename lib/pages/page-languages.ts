import { recordLanguage } from "../records/label-languages.ts";
import type { Language } from "../quantities/languages.ts";
import type { WorkshopRecord } from "../records/schema/workshop.ts";

type Workshop = Pick<WorkshopRecord, "pageLanguages">;

/** Languages of the pages, that of the records first. */
export function pageLanguages({
  pageLanguages: [first = "en", ...others] = ["en"],
}: Workshop): readonly [Language, ...Language[]] {
  return [first, ...others];
}

/** Where the pages of a language lie below the site's root: the first language's at the root itself, others in a folder of their own. */
export function languageFolder(language: Language, workshop: Workshop): string {
  return language === recordLanguage(workshop) ? "" : `${language}/`;
}
