import { z } from "zod";
import { LANGUAGES } from "../../quantities/languages.ts";
import { optional } from "./keys-and-lists.ts";

/** What of a record is told in other languages: `translations: { de: { name: ... } }`. What is left out stays in the record's own language. */
export function translations<S extends z.ZodRawShape>(texts: S) {
  const one = z.strictObject(texts).partial();
  return optional(
    z.partialRecord(z.enum(LANGUAGES), one),
    "the same in other languages of the pages; what is left out stays as it is",
  );
}
