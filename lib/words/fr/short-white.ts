import { upperFirst } from "../letter-case.ts";

/** A white's name where its neighbours are whites as well: "Zinc White" as "Zinc", "Blanc de zinc" as "Zinc". */
export function shortWhite(name: string): string {
  const short = name
    .replace(/\s+(?:white|blanc)$/i, "")
    .replace(/^blanc (?:de |du |d['\u2019])/i, "");
  return upperFirst(short);
}
