import { z } from "zod";
import {
  amountOf,
  ean,
  isoDate,
  longText,
  name,
  slug,
  sourceKey,
  temperatureAmount,
  text,
} from "./amount.ts";
import { formulaIdentifier, legalBasis, statedLabel } from "./hazard-form.ts";
import { listOf, optional } from "./keys-and-lists.ts";
import { photographs } from "./photograph.ts";
import { within } from "./reach.ts";
import { drawdownForms, plainReading, readingForms } from "./reading-form.ts";
import {
  BODIES,
  CATEGORIES,
  DISPERSIONS,
  FAMILIES,
  FORMS,
  GROUNDS,
  OIL_SEPARATIONS,
  RATIO_KINDS,
} from "./terms.ts";
import { tolerances } from "./tolerances.ts";
import { translations } from "./translations.ts";

const massRatio = z
  .string()
  .regex(/^\d{1,6}(\.\d{1,6})?:\d{1,6}(\.\d{1,6})?$/, 'colour to white by mass, such as "1:20"');

export const tint = drawdownForms({
  white: slug.describe("a white of colours/ or pigments/"),
  massRatio,
  ratioKind: z.enum(RATIO_KINDS).describe("whether pigment or paint was weighed"),
});

const film = readingForms(
  {
    ground: z.enum(GROUNDS),
    filmThicknessUm: within("filmThicknessUm").describe("of the dry film [um]"),
  },
  {},
);

const dryingTrial = z.strictObject({
  touchDryDays: amountOf("touchDryDays"),
  throughDryDays: amountOf("touchDryDays").optional(),
  filmThicknessUm: optional(
    amountOf("filmThicknessUm"),
    "wet film [um]; without it and the temperature nobody knows what the days hold for",
  ),
  temperatureC: temperatureAmount.optional(),
  humidityPercent: amountOf("humidityPercent").optional(),
  tintedWith: slug.optional(),
  method: text.optional(),
  date: isoDate.optional(),
});

const exposure = z.strictObject({
  deltaEab: amountOf("deltaEab"),
  form: z.enum(FORMS),
  standard: text,
  exposure: text,
  date: isoDate.optional(),
});

/** The front matter of one paint on sale: content/colours/SLUG.md. The least is a name and its pigments. */
export const colourSchema = z.strictObject({
  name,
  pigments: listOf({
    pigment: slug,
    parts: optional(within("parts"), "by mass of dry pigment: of all pigments or of none"),
    paintParts: optional(
      within("parts"),
      "in the place of parts: by mass of paint as weighed from tubes, of all or of none",
    ),
    paint: optional(
      slug,
      "the colour whose paint was weighed, where several are made of that pigment alone",
    ),
  })
    .min(1)
    .max(12),
  family: z.enum(FAMILIES).optional(),
  vehicle: slug.optional(),
  additions: optional(
    listOf({
      vehicle: slug,
      percentOfOil: within("percentOfOil"),
    }).max(50),
    "driers and mediums, by mass on the oil",
  ),
  oilIndexGPer100g: optional(
    amountOf("oilIndexGPer100g"),
    "grams of oil to 100 g of pigment in the paint as made",
  ),
  dispersion: z.enum(DISPERSIONS).optional(),
  finenessOfGrindUm: optional(amountOf("finenessOfGrindUm"), "ISO 1524"),
  gloss60: optional(amountOf("gloss60"), "ISO 2813, at 60 degrees, gloss units"),
  body: z.enum(BODIES).optional(),
  oilSeparation: z.enum(OIL_SEPARATIONS).optional(),
  masstone: plainReading.optional(),
  tints: z.array(tint).max(200).optional(),
  films: optional(z.array(film).max(200), "drawdowns of known thickness over black and white"),
  dryingTrials: z.array(dryingTrial).max(200).optional(),
  exposures: z.array(exposure).max(200).optional(),
  lightfastness: z
    .strictObject({
      category: z.enum(CATEGORIES),
      form: z.enum(FORMS).optional(),
      source: sourceKey.optional(),
    })
    .optional(),
  label: statedLabel.optional(),
  ufi: formulaIdentifier.describe("unique formula identifier, of a label that is worked out"),
  legalBasis: z.array(legalBasis).max(50).optional(),
  sizes: listOf({
    ml: within("ml"),
    price: within("price").optional(),
    code: optional(text, "the price group that a label prints in place of a price"),
    ean: ean.optional(),
  })
    .max(50)
    .optional(),
  lot: text.optional(),
  standard: optional(slug, "the lot of lots/ whose retained sample later lots are held against"),
  tolerances: optional(tolerances, "of its lots, in place of the workshop's"),
  discontinued: optional(
    isoDate,
    "made no more from this day on: the sheet stays, and says what replaces it",
  ),
  replacedBy: optional(slug, "the colour that takes its place, of one that is discontinued"),
  photographs,
  date: isoDate.optional(),
  translations: translations({ name, notes: longText }),
});
export type ColourRecord = z.infer<typeof colourSchema>;
