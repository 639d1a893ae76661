import { z } from "zod";
import { amountOf, isoDate, longText, name, privateKey, webAddress } from "./amount.ts";
import { casNumber, hazardRecord } from "./hazard-form.ts";
import { optional } from "./keys-and-lists.ts";
import { within } from "./reach.ts";
import { translations } from "./translations.ts";
import { OILS } from "../../drying/oils.ts";
import { VEHICLE_KINDS } from "./terms.ts";

/** An oil, medium, drier or thinner: content/vehicles/SLUG.yaml. */
export const vehicleSchema = z.strictObject({
  name,
  kind: z.enum(VEHICLE_KINDS),
  oil: z.enum(OILS).optional(),
  densityGPerCm3: amountOf("densityGPerCm3").optional(),
  casNumber: casNumber.optional(),
  whatItIs: longText.optional(),
  pricePerKg: privateKey(within("price")).optional(),
  ...hazardRecord,
  flashPointC: optional(z.number().min(-60).max(400), "closed cup [degrees C]"),
  initialBoilingPointC: z.number().min(-20).max(500).optional(),
  kinematicViscosityMm2PerS: optional(within("viscosityMm2PerS"), "at 40 degrees C"),
  safetyDataSheet: webAddress.optional(),
  date: isoDate.optional(),
  translations: translations({ name, whatItIs: longText }),
});
export type VehicleRecord = z.infer<typeof vehicleSchema>;
