import { z } from "zod";
import { isoDate, longText, privateKey, slug, text } from "./amount.ts";
import { listOf, optional } from "./keys-and-lists.ts";
import { within } from "./reach.ts";
import { FORMS, TOUCHES } from "./terms.ts";

const ofAny = {
  colour: slug,
  lot: optional(slug, "a lot of lots/"),
  started: isoDate,
  ended: isoDate.optional(),
  note: privateKey(longText).optional(),
};

/** A trial that takes its time, reading by reading: content/trials/NAME.yaml. */
export const trialSchema = z.union([
  z.strictObject({
    kind: z.literal("exposure"),
    ...ofAny,
    form: z.enum(FORMS),
    standard: text,
    exposure: text,
    readings: listOf({ date: isoDate, deltaEab: within("deltaEab").max(100) })
      .max(400)
      .describe("Delta-E*ab from the half that was kept dark"),
  }),
  z.strictObject({
    kind: z.literal("drying"),
    ...ofAny,
    filmThicknessUm: within("filmThicknessUm").optional(),
    temperatureC: z.number().min(-20).max(60).optional(),
    humidityPercent: within("humidityPercent").optional(),
    tintedWith: slug.optional(),
    touched: z.array(z.strictObject({ date: isoDate, found: z.enum(TOUCHES) })).max(400),
  }),
]);
export type TrialRecord = z.infer<typeof trialSchema>;
