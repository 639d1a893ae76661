import { z } from "zod";
import { isoDate, slug, text } from "./amount.ts";
import { listOf, optional } from "./keys-and-lists.ts";
import { spectralReading } from "./reading-form.ts";
import { LANGUAGES } from "../../quantities/languages.ts";
import { PHOTOGRAPHED } from "./terms.ts";

/** A text in the records' own language, or in several. */
const inLanguages = z.union([
  text,
  z.partialRecord(z.enum(LANGUAGES), text).refine((texts) => Object.keys(texts).length > 0, {
    message: 'a text, or one a language, such as { en: "...", de: "..." }',
  }),
]);
export type TextInLanguages = z.infer<typeof inLanguages>;

const pixel = z.number().min(0).max(100_000);
/** Left, top, right and bottom edge, in pixels of the upright picture. */
const box = z
  .tuple([pixel, pixel, pixel, pixel])
  .refine(
    ([left, top, right, bottom]) => right > left && bottom > top,
    "left, top, right and bottom edge in pixels",
  );
export type Box = z.infer<typeof box>;
const corner = z.tuple([pixel, pixel]);

/** What a photograph's colours are corrected by. */
const knownColours = z.strictObject({
  chart: z
    .strictObject({
      corners: z
        .tuple([corner, corner, corner, corner])
        .describe("of all its patches together: top left, top right, bottom right, bottom left"),
      across: z.number().int().min(1).max(40),
      down: z.number().int().min(1).max(40),
      ...spectralReading.pick({
        reading: true,
        scale: true,
        geometry: true,
        illuminant: true,
        observer: true,
      }).shape,
      columns: z
        .array(text)
        .min(2)
        .max(400)
        .describe("columns or sample names of its patches, row by row from the top left"),
    })
    .optional(),
  swatches: optional(
    listOf({
      at: box,
      colour: slug.describe("whose masstone, or let-down, was read"),
      white: slug.optional(),
      massRatio: text.optional(),
    }).max(60),
    "drawdowns of the workshop's own that were read, lying beside the paint",
  ),
  bare: optional(z.array(box).max(40), "parts of one bare ground, which show how the light falls"),
});

/** A photograph of paint or pigment, in photographs/. */
const photograph = z.strictObject({
  file: z
    .string()
    .regex(
      /^[A-Za-z0-9][A-Za-z0-9._-]*$/,
      "a file name in photographs/ of letters, digits, dots, hyphens and low lines, without blanks or a path",
    )
    .max(120)
    .describe("name of a file in photographs/: JPEG, PNG, WebP, AVIF or TIFF"),
  of: z.enum(PHOTOGRAPHED),
  date: isoDate.optional(),
  light: optional(inLanguages, 'what it was lit by, such as "overcast window, morning"'),
  shows: optional(inLanguages, "what to look at"),
  correctedBy: knownColours.optional(),
  paint: optional(box, "where the paint lies, well inside its edges"),
  alt: optional(
    inLanguages,
    "said in place of the picture to whoever does not see it; without it a sentence of what it is of",
  ),
});
export type PhotographRecord = z.infer<typeof photograph>;

export const photographs = z.array(photograph).min(1).max(24).optional();
