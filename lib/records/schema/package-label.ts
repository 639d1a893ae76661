import { z } from "zod";
import { slug } from "./amount.ts";
import { optional } from "./keys-and-lists.ts";
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
  diameterMm: optional(z.number().min(8).max(200), "of the tube, that the label goes round"),
  widthMm: optional(side, "of the label; of a tube without it once round and the overlap"),
  heightMm: side.optional(),
  overlapMm: optional(length, "at the right of a tube's label, under its left edge; 3 without it"),
  languages: optional(z.array(z.enum(LANGUAGES)).min(1), "of its statements; else the workshop's"),
  xHeightMm: optional(z.number().min(0.9).max(3), "least height of a lower-case x; 1.2 without it"),
  reduced: optional(
    z.boolean(),
    "true: what finds no room is left out as far as CLP, Annex I, 1.5.2 goes, since no fold-out label, tag or box bears the whole",
  ),
  foldOut: optional(
    z.boolean(),
    "true: what finds no room goes onto a fold-out label, pages of a strip that is folded in turn (CLP, Annex I, 1.2.1.6)",
  ),
  price: optional(z.enum(LABEL_PRICES), "none without it"),
  symbol: optional(z.enum(LABEL_SYMBOLS), "none without it"),
  paper: optional(z.enum(PAPERS), "of its sheets; else the workshop's"),
  sheet: optional(
    z.strictObject({
      columns: z.int().min(1).max(40),
      rows: z.int().min(1).max(60),
      leftMm: length,
      topMm: length,
      gutterXMm: length.optional(),
      gutterYMm: length.optional(),
    }),
    "of labels cut beforehand; without it they are cut along marks",
  ),
});
export type PackageLabelRecord = z.infer<typeof packageLabel>;
