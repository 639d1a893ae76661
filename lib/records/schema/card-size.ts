import { z } from "zod";
import { slug } from "./amount.ts";
import { LANGUAGES } from "../../quantities/languages.ts";
import { PAPERS } from "./terms.ts";

/** One size of shelf card, as it is cut. */
export const cardSize = z.strictObject({
  name: slug.describe("what --size calls it"),
  widthMm: z.number().min(70).max(190),
  heightMm: z.number().min(30).max(120),
  paper: z.enum(PAPERS).optional().describe("of its sheets; else the workshop's"),
  twoSided: z
    .boolean()
    .optional()
    .describe("false: front and back lie on one side of the paper, to be folded"),
  chip: z.boolean().optional().describe("true leaves a marked box for a painted chip"),
  languages: z
    .array(z.enum(LANGUAGES))
    .min(1)
    .optional()
    .describe("of the label's statements; else the workshop's"),
});
