import { z } from "zod";
import type { SourceKey } from "../../sources/source.ts";
import { eanFault } from "../ean.ts";
import { optional } from "./keys-and-lists.ts";
import { LEAST_UNCERTAINTY, within, type ReachName } from "./reach.ts";
import { ROOT_STANDINGS } from "./terms.ts";

export const text = z.string().trim().min(1).max(400);
/** What a thing is called; a picture, a card and a label have to hold it. */
export const name = z.string().trim().min(1).max(80);
export const longText = z.string().trim().min(1).max(4000);
export const slug = z
  .string()
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, "lower-case letters, digits and single hyphens")
  .max(80);
/** Of a text in sources/ or in the built-in bibliography, for which `references.ts` looks it up. */
export const sourceKey = slug as unknown as z.ZodType<SourceKey>;
export const isoDate = z.iso.date();
/** An EAN-13 with its check digit, in quotes. */
export const ean = z.string().superRefine((written, context) => {
  const fault = eanFault(written);
  if (fault !== undefined) context.addIssue(fault);
});
export const webAddress = z.url({ protocol: /^https?$/ });

/**
 * A figure as a record gives it: a number alone (then it is somebody's word), or
 * with its uncertainty, method, date, source and standing. Two numbers as the
 * value are the ends of an estimate.
 */
function amount(domain: z.ZodNumber) {
  const largest = domain.maxValue ?? Number.MAX_SAFE_INTEGER;
  return z.union([
    domain,
    z.strictObject({
      value: z.union([domain, z.tuple([domain, domain])]),
      uncertainty: optional(
        z.number().min(LEAST_UNCERTAINTY).max(largest),
        "standard uncertainty, in the unit of the value",
      ),
      method: optional(text, 'how it was found, such as "ISO 787-5"'),
      date: isoDate.optional(),
      source: optional(sourceKey, "key of a text in sources/ or in the built-in bibliography"),
      standing: z.enum(ROOT_STANDINGS).optional(),
    }),
  ]);
}

/** A key whose value stays in the workshop: nothing that is published may state it. */
export function privateKey<S extends z.ZodType>(schema: S): S {
  return schema.meta({ ...schema.meta(), private: true });
}

/** An amount within the reach of what it is of. */
export function amountOf(name: ReachName) {
  return amount(within(name));
}

export const shareAmount = amount(z.number().min(0).max(1));
export const temperatureAmount = amount(z.number().min(-20).max(60));
export type AmountRecord = z.infer<typeof temperatureAmount>;
