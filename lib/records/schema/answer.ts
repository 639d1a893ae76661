import { z } from "zod";
import { isoDate, longText, slug, text } from "./amount.ts";
import { optional } from "./keys-and-lists.ts";
import { FAMILIES, ROOT_STANDINGS, THEMES } from "./terms.ts";
import { translations } from "./translations.ts";

/** A figure of a sheet: the colour's slug, then the figure's path as in the evidence of its sheet.json. */
const figurePath = z
  .string()
  .max(240)
  .regex(
    /^[a-z0-9]+(-[a-z0-9]+)*(\.[A-Za-z0-9:/.-]+)+$/,
    'a colour and a figure of its sheet, such as "lamp-black.tints.titanium-white.atL.50.b"',
  );

/** A plain part that every sheet has, without a colour. */
const partPath = z
  .string()
  .max(200)
  .regex(
    /^[a-zA-Z]+(\.[A-Za-z0-9:/-]+)*$/,
    'a part of every sheet, such as "additions" or "cautions.hazardStatements"',
  );

/** Farther from nought than any figure of a sheet, in whatever unit. */
const LARGEST = 1e6;
const number = z.number().min(-LARGEST).max(LARGEST);
const value = z.union([number, figurePath]);
const margin = optional(
  z.number().positive().max(LARGEST),
  "at least so much, in the unit of the figure",
);
const standing = optional(
  z.enum(ROOT_STANDINGS),
  "the weakest root that the prose can bear: with measured, neither the figure nor its root may be stated or estimated",
);
const rivals = z.union([z.enum(FAMILIES), z.array(slug).min(1).max(50)]);

/** One statement that an answer rests on; every build holds it against the sheets. */
const claim = z.union([
  z.strictObject({ figure: figurePath, below: value, by: margin, standing }),
  z.strictObject({ figure: figurePath, above: value, by: margin, standing }),
  z.strictObject({ figure: figurePath, between: z.tuple([number, number]), standing }),
  z.strictObject({
    figure: figurePath,
    is: z
      .union([text, number])
      .describe('a word, notation or number as sheet.json has it, or "not stated"'),
    standing,
  }),
  z.strictObject({
    figure: figurePath,
    lowestOf: rivals.describe("a family, or colours"),
    by: margin,
    standing,
  }),
  z.strictObject({
    figure: figurePath,
    highestOf: rivals.describe("a family, or colours"),
    by: margin,
    standing,
  }),
  z.strictObject({ fact: figurePath, is: z.union([text, number, z.boolean(), z.null()]) }),
  z.strictObject({ fact: figurePath, includes: text }),
  z.strictObject({ fact: figurePath, lacks: text }),
  z.strictObject({ fact: figurePath, count: z.number().int().min(0).max(10_000) }),
  z.strictObject({
    every: partPath,
    lacks: text,
    but: optional(z.array(slug).min(1).max(50), "the colours that do have it"),
  }),
]);
export type ClaimRecord = z.infer<typeof claim>;

/** The front matter of one answer: content/answers/SLUG.md. The answer itself is the Markdown below it. */
export const answerSchema = z.strictObject({
  question: text,
  summary: longText.describe(
    "the short answer, in a sentence or two; may hold the shortcode for a figure",
  ),
  date: isoDate.optional(),
  theme: optional(z.enum(THEMES), "where it stands in the list of answers"),
  colours: optional(z.array(slug).max(12), "colours that it is about: their sheets lead here"),
  claims: optional(
    z.array(claim).max(100),
    "what the answer rests on; a build fails where one no longer holds",
  ),
  reply: z
    .strictObject({
      text: optional(longText, "in place of the summary"),
      colours: optional(z.array(slug).max(6), "in place of the answer's colours"),
      figures: optional(
        z.array(z.string().min(1).max(200)).max(12),
        'figures that the reply gives of each colour, by path without the colour, such as "drying.touchDryDays"',
      ),
    })
    .optional(),
  translations: translations({
    question: text,
    summary: longText,
    body: z.string().trim().min(1).max(20_000),
  }),
});
export type AnswerRecord = z.infer<typeof answerSchema>;
