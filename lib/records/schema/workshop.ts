import { z } from "zod";
import { isoDate, longText, name, slug, text, webAddress } from "./amount.ts";
import { cardSize } from "./card-size.ts";
import { eachOnce, listOf, optional } from "./keys-and-lists.ts";
import { packageLabel } from "./package-label.ts";
import { LANGUAGES } from "../../quantities/languages.ts";
import {
  FRAMES,
  GEOMETRIES,
  MARKETS,
  OBSERVERS,
  PAPERS,
  ROUNDINGS,
  SCALES,
  UNITS_OF_PRICE_ML,
} from "./terms.ts";
import { spectralReading, surface } from "./reading-form.ts";
import { tolerances } from "./tolerances.ts";
import { translations } from "./translations.ts";
import { RECORDS_VERSION } from "./records-version.ts";
import { LEAST_UNCERTAINTY, within } from "./reach.ts";

/** A size that bears the name of an earlier one is told at its own line. */
function namedOnce(
  sizes: readonly { readonly name: string }[],
  context: z.core.$RefinementCtx,
): void {
  sizes.forEach(({ name: own }, i) => {
    if (sizes.findIndex(({ name: other }) => other === own) < i)
      context.addIssue({
        code: "custom",
        path: [i, "name"],
        message: "a name that no other size has",
      });
  });
}

/** Where a page lies below the site's folder. */
const pageAddress = z
  .string()
  .max(200)
  .regex(/^(?:[a-z0-9]+(?:-[a-z0-9]+)*\/)+$/, "an address such as colours/bone-black/");

/** Codes of ISO 4217, as the runtime has them. */
const CURRENCIES: ReadonlySet<string> = new Set(Intl.supportedValuesOf("currency"));

/** Who, where sold, in which languages: content/workshop.yaml. */
export const workshopSchema = z.strictObject({
  recordsVersion: optional(
    z.number().int().min(1).max(RECORDS_VERSION),
    "of the form of all records; without it the first",
  ),
  name,
  about: longText.optional(),
  demonstration: optional(z.boolean(), "true marks every page: workshop and readings are invented"),
  siteAddress: webAddress.optional(),
  security: optional(
    z.strictObject({
      contact: z
        .url({
          protocol: /^(?:https|mailto|tel)$/,
          error: "an address that begins with mailto:, https: or tel:",
        })
        .describe("an address that begins with mailto:, https: or tel:"),
      expires: isoDate.describe("the day from which on nobody should rely on it"),
      policy: z.url({ protocol: /^https$/ }).optional(),
    }),
    "whom to tell of a weakness of the site: makes security.txt",
  ),
  former: optional(
    listOf({
      address: pageAddress.describe("below the site's folder, such as colours/ivory-black/"),
      name: text,
      replacedBy: optional(pageAddress, "the address of a page of today"),
      date: optional(isoDate, "the day from which on it was gone"),
    }).max(2000),
    "pages that the site had, each of which goes on saying what took its place",
  ),
  contact: text.optional(),
  address: optional(text, "of the supplier, as a label gives it"),
  telephone: optional(text, "of the supplier, as a label gives it"),
  markets: eachOnce(z.array(z.enum(MARKETS)).min(1), "market").optional(),
  languages: eachOnce(z.array(z.enum(LANGUAGES)).min(1), "language").optional(),
  pageLanguages: optional(
    eachOnce(z.array(z.enum(LANGUAGES)).min(1), "language"),
    "of pages and papers, the first at the site's own address; without it English",
  ),
  frame: z.enum(FRAMES).optional(),
  poisonCentre: text.optional(),
  paper: z.enum(PAPERS).optional(),
  cards: optional(
    z.array(cardSize).min(1).superRefine(namedOnce),
    "sizes of shelf cards, the leading one first; without it 90x55, 105x74 and a strip",
  ),
  labels: optional(
    z.array(packageLabel).min(1).superRefine(namedOnce),
    "labels to stick, one a size of tube or jar",
  ),
  currency: z
    .string()
    .regex(/^[A-Z]{3}$/, { error: "a currency code of three capitals", abort: true })
    .refine((code) => CURRENCIES.has(code), "a currency code that is in use, such as EUR or GBP")
    .optional(),
  prices: optional(
    z.strictObject({
      addPercent: optional(z.number().min(-90).max(1000), "put on every price [%]"),
      roundTo: optional(z.number().min(0.001).max(1000), "the step of prices"),
      rounding: optional(z.enum(ROUNDINGS), "to the nearest step without it"),
      unitMl: optional(
        z.literal(UNITS_OF_PRICE_ML),
        "what the price beside each price is of [ml]; a litre without it",
      ),
    }),
    "what is done to every price before it is printed",
  ),
  vehicle: optional(slug, "the oil of every colour that names none"),
  leadingPair: optional(
    z.tuple([slug, slug]),
    "two colours that lead: first among the pairs, and the first of them on the page that reads a label",
  ),
  pairs: optional(
    z.array(
      z.union([
        z.array(slug).min(2).max(4),
        z.strictObject({
          colours: z.array(slug).min(2).max(4),
          heading: text.optional(),
          why: longText.optional(),
        }),
      ]),
    ),
    "two to four colours each that are set side by side on a page of their own",
  ),
  firstQuestions: optional(
    eachOnce(z.array(slug).min(1).max(6), "answer"),
    "answers that the first page leads to, in this order; without it the first four files",
  ),
  observer: optional(
    z.enum(OBSERVERS),
    "whose 10 degree eyes judge lamplight and look-alikes; CIE 1964 without it",
  ),
  strengthReference: optional(slug, "the colour that tinting strength is reckoned against"),
  grounds: optional(
    z.strictObject({ black: spectralReading, white: spectralReading }),
    "the bare halves of the opacity chart that films are drawn down on; without them contrast ratios rest on assumed ones",
  ),
  filmThicknessUm: optional(
    within("filmThicknessUm").max(2000),
    "wet film of the shop's drawdowns",
  ),
  tolerances: optional(tolerances, "of lots, where a colour gives none of its own"),
  balanceStepG: optional(
    z.number().min(0.001).max(100),
    "step of the balance that batches are weighed on [g]; without it 0.1",
  ),
  readings: optional(
    z.strictObject({
      scale: z.enum(SCALES).optional(),
      geometry: z.enum(GEOMETRIES).optional(),
      surface: surface.optional(),
      uncertainty: z.number().min(LEAST_UNCERTAINTY).max(0.1).optional(),
    }),
    "what holds for all readings that do not say otherwise",
  ),
  translations: translations({ about: longText, poisonCentre: text }),
});
export type WorkshopRecord = z.infer<typeof workshopSchema>;
