import { z } from "zod";
import { isoDate, text } from "./amount.ts";
import { LANGUAGES, PHOTOGRAPHED } from "./terms.ts";

/** A text in the records' own language, or in several. */
const inLanguages = z.union([
  text,
  z.partialRecord(z.enum(LANGUAGES), text).refine((texts) => Object.keys(texts).length > 0, {
    message: 'a text, or one a language, such as { en: "...", de: "..." }',
  }),
]);
export type TextInLanguages = z.infer<typeof inLanguages>;

/** A photograph of paint or pigment, in photographs/. */
export const photograph = z.strictObject({
  file: z
    .string()
    .regex(/^[A-Za-z0-9][A-Za-z0-9._-]*$/, "a file name in photographs/, without a path")
    .max(120)
    .describe("name of a file in photographs/: JPEG, PNG, WebP, AVIF or TIFF"),
  of: z.enum(PHOTOGRAPHED),
  date: isoDate.optional(),
  light: inLanguages.optional().describe('what it was lit by, such as "overcast window, morning"'),
  shows: inLanguages.optional().describe("what to look at"),
  alt: inLanguages
    .optional()
    .describe(
      "said in place of the picture to whoever does not see it; without it a sentence of what it is of",
    ),
});
export type PhotographRecord = z.infer<typeof photograph>;

export const photographs = z.array(photograph).min(1).max(24).optional();
