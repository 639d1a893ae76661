import { notStated, type Figure, type FigureRef } from "../../quantities/figure.ts";
import type { Quantity } from "../../quantities/interval.ts";
import type { Records } from "../../records/records.ts";
import { oilSection } from "../oil/oil-section.ts";
import type { OilSection } from "../paint-section-types.ts";
import { additionParts, pigmentParts, vehiclePart } from "../pigments/pigment-parts.ts";

/** What a ratio of paints needs of each to become one of volumes or of dry pigments. */
export interface WeighedPaint {
  readonly density: FigureRef<Quantity>;
  readonly pigmentFraction: FigureRef<Quantity>;
}

/** @param prefix "" on the paint's own sheet, `colours.titanium-white.` on another's. */
export function weighedAs(
  {
    paintDensityGPerCm3,
    pigmentMassFraction,
  }: Pick<OilSection, "paintDensityGPerCm3" | "pigmentMassFraction">,
  prefix: string,
): WeighedPaint {
  return {
    density: { path: `${prefix}oil.paintDensityGPerCm3`, figure: paintDensityGPerCm3 },
    pigmentFraction: { path: `${prefix}oil.pigmentMassFraction`, figure: pigmentMassFraction },
  };
}

/** Another colour's paint, worked out of its own record. */
export function weighedPaint(slug: string, records: Records): WeighedPaint {
  const colour = records.colours.get(slug);
  const prefix = `colours.${slug}.`;
  if (colour !== undefined)
    return weighedAs(
      oilSection(
        colour,
        pigmentParts(colour, records),
        vehiclePart(colour, records),
        additionParts(colour, records),
        records,
      ),
      prefix,
    );
  const none: Figure<Quantity> = notStated("the white is recorded as a pigment, not as a paint", [
    `colours.${slug}`,
  ]);
  return weighedAs({ paintDensityGPerCm3: none, pigmentMassFraction: none }, prefix);
}
