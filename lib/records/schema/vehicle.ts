import { z } from "zod";
import { isoDate, longText, positiveAmount, text, webAddress } from "./amount.ts";
import { casNumber, hazardRecord } from "./hazard-form.ts";
import { DRIER_METALS, OILS, VEHICLE_KINDS } from "./terms.ts";

/** An oil, medium, drier or thinner: content/vehicles/SLUG.yaml. */
export const vehicleSchema = z.strictObject({
  name: text,
  kind: z.enum(VEHICLE_KINDS),
  oil: z.enum(OILS).optional(),
  densityGPerCm3: positiveAmount.optional(),
  metal: z.enum(DRIER_METALS).optional().describe("of a drier of one metal"),
  metalPercent: z.number().positive().max(40).optional().describe("mass of metal in the drier [%]"),
  casNumber: casNumber.optional(),
  whatItIs: longText.optional(),
  pricePerKg: z.number().nonnegative().optional(),
  ...hazardRecord,
  flashPointC: z.number().min(-60).max(400).optional().describe("closed cup [degrees C]"),
  initialBoilingPointC: z.number().min(-20).max(500).optional(),
  kinematicViscosityMm2PerS: z.number().positive().max(1e6).optional().describe("at 40 degrees C"),
  safetyDataSheet: webAddress.optional(),
  date: isoDate.optional(),
});
export type VehicleRecord = z.infer<typeof vehicleSchema>;
