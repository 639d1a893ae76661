import { z } from "zod";
import { isoDate, slug, text, webAddress } from "./amount.ts";
import { FRAMES, MARKETS, SIGNAL_WORDS } from "./terms.ts";

const statementCode = z.string().regex(/^(EUH|H|P)\d{3}[A-Za-z]{0,2}(\+[HP]\d{3}[A-Za-z]{0,2})*$/, "a statement code, such as `H302`");
const fraction = z.number().positive().max(1);

/** One classification of a substance, as its supplier's safety data sheet gives it. */
export const hazard = z.union([
  statementCode,
  z.strictObject({
    statement: statementCode,
    hazardClass: text.optional().describe('class and category, such as "Repr. 1A"; follows from the statement when left out'),
    route: z.enum(["oral", "dermal", "dust", "vapour"]).optional(),
    ate: z.number().positive().optional().describe("acute toxicity estimate: mg/kg, or mg/l for dust and vapour"),
    mFactor: z.number().int().min(1).optional(),
    limits: z.array(z.strictObject({
      hazardClass: text,
      from: fraction.describe("mass fraction from which the class applies"),
      statement: statementCode.optional(),
    })).optional().describe("specific concentration limits"),
    source: slug.optional(),
  }),
]);

/** Label elements as the maker states them; the worked-out ones then only check. */
export const statedLabel = z.strictObject({
  frame: z.enum(FRAMES),
  signalWord: z.enum(SIGNAL_WORDS).nullable(),
  pictograms: z.array(z.string().regex(/^GHS0[1-9]$/)).max(9),
  hazardStatements: z.array(statementCode),
  precautionaryStatements: z.array(statementCode).optional(),
  supplemental: z.array(statementCode).optional(),
  safetyDataSheet: webAddress.optional(),
  date: isoDate,
  review: z.strictObject({ by: text, date: isoDate, wording: text.optional() }).optional()
    .describe("a toxicologist's review that took place: by whom, when"),
  ufi: z.string().regex(/^[0-9A-Z]{4}(-[0-9A-Z]{4}){3}$/, "a unique formula identifier").optional(),
});

/** Why a colour may be sold where the general rule forbids it, and to whom. */
export const legalBasis = z.strictObject({
  market: z.enum(MARKETS),
  basis: text,
  buyers: text,
  date: isoDate,
});

export type HazardForm = z.infer<typeof hazard>;
export type StatedLabelForm = z.infer<typeof statedLabel>;
