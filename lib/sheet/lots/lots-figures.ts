import { optional, section, text, texts, type SectionOf } from "../declaration.ts";

/** Which lots the figures of a sheet describe, by their numbers. */
export const LOTS = section({
  /** The lot whose retained sample was read. */
  standard: optional(text),
  /** Lots that were held against it and agree within tolerance, in order of date. */
  describes: texts,
});
export type LotsSection = SectionOf<typeof LOTS>;
