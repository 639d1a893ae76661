import { z } from "zod";
import { slug } from "./amount.ts";
import { LANGUAGES } from "../../quantities/languages.ts";
import { optional } from "./keys-and-lists.ts";
import { PAPERS } from "./terms.ts";

/** One size of shelf card, as it is cut. */
export const cardSize = z.strictObject({
  name: slug.describe("what --size calls it"),
  widthMm: z.number().min(70).max(190),
  heightMm: z.number().min(30).max(120),
  paper: optional(z.enum(PAPERS), "of its sheets; else the workshop's"),
  twoSided: optional(
    z.boolean(),
    "false: front and back lie on one side of the paper, to be folded",
  ),
  chip: optional(z.boolean(), "true leaves a marked box for a painted chip"),
  languages: optional(
    z.array(z.enum(LANGUAGES)).min(1),
    "of the label's statements; else the workshop's",
  ),
});
