import { upperFirst } from "../letter-case.ts";

/** A white's name where its neighbours are whites as well: "Zinc White" as "Zinc", "Blanco de cinc" as "Cinc". */
export function shortWhite(name: string): string {
  const short = name.replace(/\s+(?:white|blanco)$/i, "").replace(/^blanco de /i, "");
  return upperFirst(short);
}
