import { z } from "zod";
import { METALS } from "../../hazard/studio/metal-content.ts";
import { isoDate, shareAmount, sourceKey, text, webAddress } from "./amount.ts";
import { listOf, optional } from "./keys-and-lists.ts";
import { within } from "./reach.ts";
import { ACUTE_ROUTES, FRAMES, MARKETS, RECORD_METALS, SIGNAL_WORDS } from "./terms.ts";

const statementCode = z
  .string()
  .regex(
    /^(EUH|H|P)\d{3}[A-Za-z]{0,2}(\+[HP]\d{3}[A-Za-z]{0,2})*$/,
    "a statement code, such as `H302`",
  );
const fraction = z.number().positive().max(1);

/** One classification of a substance, as its supplier's safety data sheet gives it. */
const hazard = z.union([
  statementCode,
  z.strictObject({
    statement: statementCode,
    hazardClass: optional(
      text,
      'class and category, such as "Repr. 1A"; follows from the statement when left out',
    ),
    route: z.enum(ACUTE_ROUTES).optional(),
    ate: optional(
      within("acuteToxicityEstimate"),
      "acute toxicity estimate: mg/kg, or mg/l for dust and vapour",
    ),
    mFactor: z.number().int().min(1).max(1_000_000).optional(),
    limits: optional(
      listOf({
        hazardClass: text,
        from: fraction.describe("mass fraction from which the class applies"),
        statement: statementCode.optional(),
      }),
      "specific concentration limits",
    ),
    sumGroup: optional(text, "substances of one name count together against a limit"),
    countedAs: optional(
      z.enum(METALS),
      "the limit is on this metal in the mixture, not on the compound",
    ),
    source: sourceKey.optional(),
  }),
]);

/** How toxic something is by one route where no class says it: an estimate, a limit test passed, or that nobody knows. */
const acuteDatum = z.strictObject({
  route: z.enum(ACUTE_ROUTES),
  ate: z
    .union([within("acuteToxicityEstimate"), z.enum(["above the limit dose", "unknown"])])
    .describe("mg/kg, or mg/l for dust and vapour"),
  source: sourceKey.optional(),
});

/** A metal in a drier, a pigment or a component, by mass. */
const metalShare = z.strictObject({
  metal: z.enum(RECORD_METALS),
  percent: optional(
    within("metalPercent"),
    "mass of metal [%]; without it the metal is there, and nobody knows how much",
  ),
});

export const casNumber = z
  .string()
  .regex(/^\d{2,7}-\d{2}-\d$/, { error: "a CAS number, such as 1309-37-1", abort: true })
  .refine(checkDigitHolds, "a CAS number whose last digit is the check of the others");

/**
 * Whether the last digit of a CAS number is the sum of the others, each times its place from the right, modulo 10.
 * The rule is the registry's own, from memory.
 * @example checkDigitHolds("7732-18-5") // true: 1 x 8 + 2 x 1 + 3 x 2 + 4 x 3 + 5 x 7 + 6 x 7 = 105
 */
function checkDigitHolds(number: string): boolean {
  const digits = Array.from(number.replaceAll("-", ""), Number).reverse();
  const [check = NaN, ...others] = digits;
  return others.reduce((sum, digit, i) => sum + digit * (i + 1), 0) % 10 === check;
}

/** What hazard rules need to know of a substance; a mixture has it of each of its components. */
const hazardKeys = {
  hazards: optional(z.array(hazard).max(100), "an empty list says that the supplier states none"),
  acuteToxicity: z.array(acuteDatum).max(20).optional(),
  metals: z.array(metalShare).min(1).max(20).optional(),
  workplaceLimit: optional(z.boolean(), "whether the EU limits it in workplace air"),
};

/** One substance of what is bought as a mixture, as section 3 of its safety data sheet gives it. */
const component = z.strictObject({
  name: text,
  casNumber: casNumber.optional(),
  massFraction: shareAmount.describe("of the whole, 0-1, or the two ends of a range"),
  ...hazardKeys,
});

/** Of a pigment, an oil, a drier or a thinner. */
export const hazardRecord = {
  ...hazardKeys,
  components: optional(
    z.array(component).min(1).max(20),
    "of what is bought as a mixture: label elements of a paint are worked out from these",
  ),
};

export const formulaIdentifier = z
  .string()
  .regex(/^[0-9A-Z]{4}(-[0-9A-Z]{4}){3}$/, "a unique formula identifier")
  .optional();

/** Label elements as the maker states them; the worked-out ones then only check. */
export const statedLabel = z.strictObject({
  frame: z.enum(FRAMES),
  signalWord: z.enum(SIGNAL_WORDS).nullable(),
  pictograms: z
    .array(z.string().regex(/^GHS0[1-9]$/, "a pictogram from `GHS01` to `GHS09`"))
    .max(9),
  hazardStatements: z.array(statementCode).max(100),
  precautionaryStatements: z.array(statementCode).max(100).optional(),
  supplemental: z.array(statementCode).max(100).optional(),
  classification: optional(z.array(text), 'classes and categories, such as "Aquatic Chronic 1"'),
  sensitisers: optional(z.array(text).max(50), "substances that EUH208 names"),
  safetyDataSheet: z
    .union([webAddress, z.strictObject({ url: webAddress, date: isoDate })])
    .optional(),
  date: isoDate,
  review: optional(
    z.strictObject({ by: text, date: isoDate, wording: text.optional() }),
    "a toxicologist's review that took place: by whom, when",
  ),
  ufi: formulaIdentifier,
});

/** Why a colour may be sold where the general rule forbids it, and to whom. */
export const legalBasis = z.strictObject({
  market: z.enum(MARKETS),
  basis: text,
  buyers: text,
  date: isoDate,
});

export type HazardForm = z.infer<typeof hazard>;
export type ComponentForm = z.infer<typeof component>;
export type HazardRecord = Partial<z.infer<z.ZodObject<typeof hazardRecord>>>;

/** Codes of the hazard statements that a record gives; none of one that says nothing of hazards. */
export function statementsOf({ hazards = [] }: Pick<HazardRecord, "hazards">): string[] {
  return hazards.map((hazard) => (typeof hazard === "string" ? hazard : hazard.statement));
}
export type StatedLabelForm = z.infer<typeof statedLabel>;
