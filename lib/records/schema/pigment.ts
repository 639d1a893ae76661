import { z } from "zod";
import {
  amountOf,
  isoDate,
  longText,
  name,
  privateKey,
  shareAmount,
  sourceKey,
  text,
  webAddress,
} from "./amount.ts";
import { SPECIAL_EFFECTS } from "../../optics/special-effect.ts";
import { BENCH_TEST_USES } from "../../hazard/studio/bench-test.ts";
import { BROWN_EARTHS } from "../../hazard/studio/manganese-dioxide.ts";
import { casNumber, hazardRecord } from "./hazard-form.ts";
import { listOf, optional } from "./keys-and-lists.ts";
import { photographs } from "./photograph.ts";
import { translations } from "./translations.ts";
import { within } from "./reach.ts";
import { CATEGORIES, FAMILIES, FORMS } from "./terms.ts";

const colourIndexName = z
  .string()
  .regex(
    /^[PN](Bk|Br|B|G|M|O|R|V|W|Y) \d{1,3}(:\d)?$/,
    'a Colour Index generic name, such as "PBk 6"',
  );

/** A dry pigment: content/pigments/SLUG.yaml. Only the name is required. */
export const pigmentSchema = z.strictObject({
  name,
  colourIndexName: colourIndexName.optional(),
  colourIndexNumber: z
    .string()
    .regex(/^\d{5,6}(:\d)?$/, "a Colour Index constitution number, five or six digits")
    .optional(),
  casNumber: casNumber.optional(),
  family: z.enum(FAMILIES).optional(),
  whatItIs: longText.optional(),
  origin: text.optional(),
  chemistry: text.optional(),
  mineral: optional(
    text,
    "the mineral that it is or stands for; else it follows from the Colour Index name",
  ),
  particle: z
    .strictObject({
      sizeUm: amountOf("particleSizeUm").optional(),
      shape: text.optional(),
      refractiveIndex: amountOf("refractiveIndex").optional(),
      absorptionIndex: optional(
        amountOf("absorptionIndex"),
        "k of the complex index n + i k, of a pigment that absorbs",
      ),
    })
    .optional(),
  effect: optional(
    z.enum(SPECIAL_EFFECTS),
    "what absorption and scattering do not account for: nothing is predicted of it",
  ),
  benchTest: optional(text, 'a test at the bench, such as "clings to a magnet"'),
  benchTestWith: optional(
    z.array(z.enum(BENCH_TEST_USES)).min(1),
    "what in that test can hurt: a caution then stands beside it",
  ),
  densityGPerCm3: amountOf("densityGPerCm3").optional(),
  oilAbsorptionGPer100g: amountOf("oilAbsorptionGPer100g").optional(),
  bulkDensityLooseGPerMl: amountOf("bulkDensityGPerMl").optional(),
  bulkDensityTappedGPerMl: amountOf("bulkDensityGPerMl").optional(),
  manganeseDioxideFraction: optional(shareAmount, "of an umber, 0-1: its hazard hangs on it"),
  earth: optional(
    z.enum(BROWN_EARTHS),
    "which brown earth a PBr 7 is, where the share of manganese dioxide is not known",
  ),
  respirableQuartzPercent: optional(
    z.number().min(0).max(100),
    "respirable crystalline silica [%]; 0 where a paper states that there is none",
  ),
  soldDry: optional(
    z.literal(true),
    "sold as powder too: what a measure of it weighs is then worth finding out",
  ),
  pricePerKg: privateKey(within("price")).optional(),
  lightfastness: optional(
    z.strictObject({
      category: z.enum(CATEGORIES).optional(),
      blueWool: z.number().int().min(1).max(8).optional(),
      form: z.enum(FORMS).optional(),
      source: sourceKey.optional(),
    }),
    "as a supplier states it",
  ),
  ...hazardRecord,
  safetyDataSheet: webAddress.optional(),
  supplier: optional(privateKey(text), "kept in the records, not published"),
  supplierLots: optional(
    listOf({
      number: privateKey(text).describe("as supplierLot of a lot names it"),
      oilAbsorptionGPer100g: privateKey(within("oilAbsorptionGPer100g")).describe(
        "of this lot alone: batch sheets of lots that it goes into go by it",
      ),
      date: privateKey(isoDate).optional(),
    }).max(100),
    "deliveries that were rubbed out by themselves",
  ),
  photographs,
  date: isoDate.optional(),
  note: longText.optional(),
  translations: translations({ name, whatItIs: longText }),
});
export type PigmentRecord = z.infer<typeof pigmentSchema>;
