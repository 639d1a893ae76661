import { z } from "zod";
import { isoDate, longText, privateKey, slug, text } from "./amount.ts";
import { tint } from "./colour.ts";
import { listOf, optional } from "./keys-and-lists.ts";
import { photographs } from "./photograph.ts";
import { within } from "./reach.ts";
import { plainReading } from "./reading-form.ts";
import { DISPERSIONS } from "./terms.ts";

const LOT_RULINGS = ["recalled", "conceded"] as const;
const massG = privateKey(within("massG"));

/** One lot of a colour as it was made: content/lots/NAME.yaml. Only its number and date leave the workshop, that it is recalled or conceded, and its density among that of others. */
export const lotSchema = z.strictObject({
  number: text.max(40).describe("as it stands on the tube"),
  colour: slug,
  date: isoDate,
  planned: optional(z.literal(true), "not made yet: what is weighed is what is planned"),
  state: optional(
    z.strictObject({
      is: z.enum(LOT_RULINGS).describe("not to be sold or used; or sold though it does not pass"),
      since: isoDate,
      why: privateKey(longText),
    }),
    "what the workshop ruled of it, whatever its readings say",
  ),
  pigments: listOf({
    pigment: slug,
    massG,
    supplierLot: privateKey(text).optional(),
  })
    .min(1)
    .max(12)
    .describe("as weighed"),
  oil: z.strictObject({ vehicle: slug, massG }).optional(),
  additions: listOf({ vehicle: slug, massG }).max(50).optional(),
  dispersion: z.enum(DISPERSIONS).optional(),
  passes: optional(z.number().int().min(1).max(100), "over the slab, or through the mill"),
  finenessOfGrindUm: optional(privateKey(within("finenessOfGrindUm")), "ISO 1524"),
  densityGPerCm3: optional(
    within("densityGPerCm3"),
    "of the paint: the sheet of the colour gives the median of its lots",
  ),
  retainedSample: optional(privateKey(text), "number of the sample that is kept"),
  masstone: plainReading.optional(),
  tints: z.array(tint).max(20).optional(),
  standard: optional(
    z.strictObject({ masstone: plainReading.optional(), tints: z.array(tint).max(20).optional() }),
    "the retained standard, read again beside this lot: it is held against that",
  ),
  yieldG: optional(privateKey(within("massG")), "what came off slab or mill"),
  tubes: listOf({
    ml: within("ml"),
    count: privateKey(z.number().int().min(0).max(1e6)),
    massG: optional(privateKey(within("massG")), "of what one holds, mean"),
    tareG: optional(
      privateKey(within("massG")),
      "of an empty one with its cap: what a filled one must weigh is told with it",
    ),
  })
    .max(20)
    .optional(),
  photographs: photographs.describe("published with its number and date"),
  note: privateKey(longText).optional(),
});
export type LotRecord = z.infer<typeof lotSchema>;
