import { z } from "zod";
import { isoDate, longText, positiveAmount, text } from "./amount.ts";
import { hazard } from "./hazard-form.ts";
import { DRIER_METALS, OILS, VEHICLE_KINDS } from "./terms.ts";

/** An oil, medium, drier or thinner: content/vehicles/SLUG.yaml. */
export const vehicleSchema = z.strictObject({
  name: text,
  kind: z.enum(VEHICLE_KINDS),
  oil: z.enum(OILS).optional(),
  densityGPerCm3: positiveAmount.optional(),
  metal: z.enum(DRIER_METALS).optional().describe("of a drier"),
  metalPercent: z.number().positive().max(40).optional().describe("mass of metal in the drier [%]"),
  casNumber: z.string().regex(/^\d{2,7}-\d{2}-\d$/, "a CAS number").optional(),
  whatItIs: longText.optional(),
  pricePerKg: z.number().nonnegative().optional(),
  hazards: z.array(hazard).optional(),
  date: isoDate.optional(),
});
export type VehicleRecord = z.infer<typeof vehicleSchema>;
