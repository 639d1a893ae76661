import * as d from "../declaration.ts";

/** A lot that the workshop ruled of, and since what day, YYYY-MM-DD. */
export interface RuledLot {
  readonly number: string;
  readonly since: string;
}

const RULED = d.plain<readonly RuledLot[]>({
  type: "array",
  items: {
    type: "object",
    required: ["number", "since"],
    additionalProperties: false,
    properties: { number: { type: "string" }, since: { type: "string" } },
  },
});

/** Which lots the figures of a sheet describe, by their numbers. */
export const LOTS = d.section({
  /** The lot whose retained sample was read. */
  standard: d.optional(d.text),
  /** Lots that were held against it and agree within tolerance, in order of date. */
  describes: d.texts,
  /** Lots that are not to be used, and since what day; and those that are sold though they do not pass. */
  recalled: d.optional(RULED),
  conceded: d.optional(RULED),
});
export type LotsSection = d.SectionOf<typeof LOTS>;
