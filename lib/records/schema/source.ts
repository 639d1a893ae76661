import { z } from "zod";
import { isoDate, text } from "./amount.ts";

/** A text of the workshop's own bibliography: content/sources/KEY.yaml. */
export const sourceSchema = z.strictObject({
  citation: text,
  standing: z.enum(["read", "derived", "memory", "practice"]).optional(),
  note: text.optional(),
  date: isoDate.optional(),
});
