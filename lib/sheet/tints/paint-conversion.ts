import { notStated, type Figure } from "../../quantities/figure.ts";
import type { Quantity } from "../../quantities/interval.ts";
import type { Records } from "../../records/records.ts";
import type { OilSection } from "../oil/oil-figures.ts";
import { paintAsMade } from "../paint-as-made.ts";

/** What a ratio of paints needs of each to become one of volumes or of dry pigments. */
export interface WeighedPaint {
  readonly density: Figure<Quantity>;
  readonly pigmentFraction: Figure<Quantity>;
}

export function weighedAs({
  paintDensityGPerCm3,
  pigmentMassFraction,
}: Pick<OilSection, "paintDensityGPerCm3" | "pigmentMassFraction">): WeighedPaint {
  return { density: paintDensityGPerCm3, pigmentFraction: pigmentMassFraction };
}

/** Another colour's paint, worked out of its own record: from the tube, or as it lies in a film, without air. */
export function weighedPaint(
  slug: string,
  records: Records,
  as: "oil" | "inFilm" = "oil",
): WeighedPaint {
  const colour = records.colours.get(slug);
  if (colour !== undefined) return weighedAs(paintAsMade(colour, records)[as]);
  const none: Figure<Quantity> = notStated(
    "the white is recorded as a pigment, not as a paint",
    [`colours.${slug}`],
    [{ kind: "pigment", slug }],
  );
  return { density: none, pigmentFraction: none };
}
