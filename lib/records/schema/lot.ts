import { z } from "zod";
import { isoDate, longText, privateKey, slug, text } from "./amount.ts";
import { tint } from "./colour.ts";
import { photographs } from "./photograph.ts";
import { plainReading } from "./reading-form.ts";
import { within } from "./reach.ts";
import { DISPERSIONS } from "./terms.ts";

const LOT_RULINGS = ["recalled", "conceded"] as const;
const massG = privateKey(within("massG"));

/** One lot of a colour as it was made: content/lots/NAME.yaml. Only its number and date leave the workshop, that it is recalled or conceded, and its density among that of others. */
export const lotSchema = z.strictObject({
  number: text.max(40).describe("as it stands on the tube"),
  colour: slug,
  date: isoDate,
  planned: z.literal(true).optional().describe("not made yet: what is weighed is what is planned"),
  state: z
    .strictObject({
      is: z.enum(LOT_RULINGS).describe("not to be sold or used; or sold though it does not pass"),
      since: isoDate,
      why: privateKey(longText),
    })
    .optional()
    .describe("what the workshop ruled of it, whatever its readings say"),
  pigments: z
    .array(
      z.strictObject({
        pigment: slug,
        massG,
        supplierLot: privateKey(text).optional(),
      }),
    )
    .min(1)
    .max(12)
    .describe("as weighed"),
  oil: z.strictObject({ vehicle: slug, massG }).optional(),
  additions: z
    .array(z.strictObject({ vehicle: slug, massG }))
    .max(50)
    .optional(),
  dispersion: z.enum(DISPERSIONS).optional(),
  passes: z
    .number()
    .int()
    .min(1)
    .max(100)
    .optional()
    .describe("over the slab, or through the mill"),
  finenessOfGrindUm: privateKey(within("finenessOfGrindUm")).optional().describe("ISO 1524"),
  densityGPerCm3: within("densityGPerCm3")
    .optional()
    .describe("of the paint: the sheet of the colour gives the median of its lots"),
  retainedSample: privateKey(text).optional().describe("number of the sample that is kept"),
  masstone: plainReading.optional(),
  tints: z.array(tint).max(20).optional(),
  standard: z
    .strictObject({ masstone: plainReading.optional(), tints: z.array(tint).max(20).optional() })
    .optional()
    .describe("the retained standard, read again beside this lot: it is held against that"),
  yieldG: privateKey(within("massG")).optional().describe("what came off slab or mill"),
  tubes: z
    .array(
      z.strictObject({
        ml: within("ml"),
        count: privateKey(z.number().int().min(0).max(1e6)),
        massG: privateKey(within("massG")).optional().describe("of what one holds, mean"),
        tareG: privateKey(within("massG"))
          .optional()
          .describe("of an empty one with its cap: what a filled one must weigh is told with it"),
      }),
    )
    .max(20)
    .optional(),
  photographs: photographs.describe("published with its number and date"),
  note: privateKey(longText).optional(),
});
export type LotRecord = z.infer<typeof lotSchema>;
