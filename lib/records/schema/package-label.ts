import { z } from "zod";
import { slug } from "./amount.ts";
import { within } from "./reach.ts";
import { LANGUAGES } from "../../quantities/languages.ts";
import { LABEL_KINDS, LABEL_PRICES, LABEL_SYMBOLS, PAPERS } from "./terms.ts";

const length = z.number().min(0).max(500);
const side = z.number().min(10).max(400);

/** A label to stick on a tube or a jar, as it is printed. */
export const packageLabel = z.strictObject({
  name: slug.describe("what --size calls it"),
  kind: z
    .enum(LABEL_KINDS)
    .describe("tube: one label round it; jar: one for its front, one for its back"),
  ml: within("ml").describe("contents that it is for"),
  diameterMm: z
    .number()
    .min(8)
    .max(200)
    .optional()
    .describe("of the tube, that the label goes round"),
  widthMm: side
    .optional()
    .describe("of the label; of a tube without it once round and the overlap"),
  heightMm: side.optional(),
  overlapMm: length
    .optional()
    .describe("at the right of a tube's label, under its left edge; 3 without it"),
  languages: z
    .array(z.enum(LANGUAGES))
    .min(1)
    .optional()
    .describe("of its statements; else the workshop's"),
  xHeightMm: z
    .number()
    .min(0.9)
    .max(3)
    .optional()
    .describe("least height of a lower-case x; 1.2 without it"),
  reduced: z
    .boolean()
    .optional()
    .describe(
      "true: what finds no room is left out as far as CLP, Annex I, 1.5.2 goes, since no fold-out label, tag or box bears the whole",
    ),
  foldOut: z
    .boolean()
    .optional()
    .describe(
      "true: what finds no room goes onto a fold-out label, pages of a strip that is folded in turn (CLP, Annex I, 1.2.1.6)",
    ),
  price: z.enum(LABEL_PRICES).optional().describe("none without it"),
  symbol: z.enum(LABEL_SYMBOLS).optional().describe("none without it"),
  paper: z.enum(PAPERS).optional().describe("of its sheets; else the workshop's"),
  sheet: z
    .strictObject({
      columns: z.int().min(1).max(40),
      rows: z.int().min(1).max(60),
      leftMm: length,
      topMm: length,
      gutterXMm: length.optional(),
      gutterYMm: length.optional(),
    })
    .optional()
    .describe("of labels cut beforehand; without it they are cut along marks"),
});
export type PackageLabelRecord = z.infer<typeof packageLabel>;
