/**
 * Umber or sienna: both are PBr 7, and an umber's manganese dries oil where a sienna has a trace of it.
 *
 * @source practice-drying : umbers hold about 5 to 20 % of manganese dioxide, siennas about 1 %.
 */
import { ends, type Quantity } from "../quantities/interval.ts";
import { domainError } from "../diagnostics/diagnostic.ts";
import type { Chemistry } from "./chemistry-drying.ts";

/** Share of manganese dioxide in the dry pigment by mass [1] from which a brown earth dries as an umber. */
const UMBER_FROM = 0.03;

export interface BrownEarthRecord {
  /** Of the dry pigment by mass, 0-1. */
  readonly manganeseDioxideFraction?: Quantity | undefined;
  readonly earth?: "umber" | "sienna" | undefined;
}

/**
 * The chemistry of a brown earth: by its manganese where the record tells it, else by the earth that
 * the record says it is, else "brown earth", whose days cover both.
 *
 * @param chemistry of the Colour Index name; anything but a brown earth stays what it is.
 * @throws RangeError when a share lies outside 0-1.
 */
export function earthChemistry(
  chemistry: Chemistry | undefined,
  { manganeseDioxideFraction, earth }: BrownEarthRecord,
): Chemistry | undefined {
  if (chemistry !== "brown earth") return chemistry;
  if (manganeseDioxideFraction !== undefined) {
    const [least, most] = ends(manganeseDioxideFraction);
    for (const share of [least, most])
      if (!(share >= 0 && share <= 1))
        throw domainError("share of manganese dioxide", share, "0 <= share <= 1");
    if (least >= UMBER_FROM) return "manganese";
    if (most < UMBER_FROM) return "manganese trace";
  }
  if (earth === undefined) return chemistry;
  return earth === "umber" ? "manganese" : "manganese trace";
}
