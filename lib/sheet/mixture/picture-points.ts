import { fullMap, plain } from "../declaration.ts";
import { LAB } from "../notations/notation-figures.ts";

/** Points that a picture is drawn from. */
export function drawnFrom<const K extends string>(...keys: readonly K[]) {
  return plain<readonly { readonly [P in K]: number }[]>({
    type: "array",
    items: {
      type: "object",
      required: keys,
      additionalProperties: false,
      properties: Object.fromEntries(keys.map((key) => [key, { type: "number" }])),
    },
  });
}

export const DAY_LAB = fullMap(["D65/10"], LAB);
