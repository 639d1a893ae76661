import type { MasstoneNotations } from "../sheet/notations/masstone-figures.ts";
import type { Sheet } from "../sheet/sheet.ts";

/** What of a sheet is held against those of others: little, so that a range is gone through without loading its sheets. */
export interface InRange extends Pick<Sheet, "slug" | "name" | "family"> {
  readonly pigments: readonly Pick<Sheet["pigments"][number], "slug">[];
  readonly tints: readonly { readonly white: Pick<Sheet["tints"][number]["white"], "slug"> }[];
  readonly notations: { readonly masstone?: MasstoneInRange | undefined };
  readonly optics: Pick<Sheet["optics"], "reasons">;
  readonly oil: Pick<Sheet["oil"], "oilIndexGPer100g" | "oilGPer100cm3" | "pigmentDensityGPerCm3">;
  readonly drying: Pick<Sheet["drying"], "touchDryDays">;
}

/** A masstone as it is held against others'. */
export interface MasstoneInRange extends Pick<
  MasstoneNotations,
  "geometry" | "curve" | "glossExcludedCurve"
> {
  readonly lab: Pick<MasstoneNotations["lab"], "D65/10">;
}

export function inRange(sheet: Sheet): InRange {
  const { slug, name, family, pigments, tints, notations, optics, oil, drying } = sheet;
  const { oilIndexGPer100g, oilGPer100cm3, pigmentDensityGPerCm3 } = oil;
  const { masstone } = notations;
  return {
    slug,
    name,
    family,
    pigments: pigments.map((pigment) => ({ slug: pigment.slug })),
    tints: tints.map(({ white }) => ({ white: { slug: white.slug } })),
    notations: masstone === undefined ? {} : { masstone: masstoneInRange(masstone) },
    optics: { reasons: optics.reasons },
    oil: { oilIndexGPer100g, oilGPer100cm3, pigmentDensityGPerCm3 },
    drying: { touchDryDays: drying.touchDryDays },
  };
}

function masstoneInRange({
  geometry,
  curve,
  glossExcludedCurve,
  lab,
}: MasstoneNotations): MasstoneInRange {
  const seen = lab["D65/10"];
  return {
    ...(geometry !== undefined && { geometry }),
    ...(curve !== undefined && { curve }),
    ...(glossExcludedCurve !== undefined && { glossExcludedCurve }),
    lab: seen === undefined ? {} : { "D65/10": seen },
  };
}
