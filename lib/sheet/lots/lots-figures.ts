import { optional, plain, section, text, texts, type SectionOf } from "../declaration.ts";

/** A lot that the workshop ruled of, and since what day, YYYY-MM-DD. */
export interface RuledLot {
  readonly number: string;
  readonly since: string;
}

const RULED = plain<readonly RuledLot[]>({
  type: "array",
  items: {
    type: "object",
    required: ["number", "since"],
    additionalProperties: false,
    properties: { number: { type: "string" }, since: { type: "string" } },
  },
});

/** Which lots the figures of a sheet describe, by their numbers. */
export const LOTS = section({
  /** The lot whose retained sample was read. */
  standard: optional(text),
  /** Lots that were held against it and agree within tolerance, in order of date. */
  describes: texts,
  /** Lots that are not to be used, and since what day; and those that are sold though they do not pass. */
  recalled: optional(RULED),
  conceded: optional(RULED),
});
export type LotsSection = SectionOf<typeof LOTS>;
