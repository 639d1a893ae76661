import { densityContradiction, measuredDensity } from "../../formulation/measured-density.ts";
import { derivedFigure } from "../../quantities/derived-figure.ts";
import { isKnown, sourceFigure } from "../../quantities/figure.ts";
import type { Colour, Records } from "../../records/records.ts";
import { tolerancesOf } from "../lots/colour-tolerances.ts";
import type { OilSection } from "./oil-figures.ts";
import { given } from "../../quantities/given.ts";

/**
 * Density of the paint as its lots were weighed, in place of the one that its parts add up to, and
 * what a tube holds by it. The paint as it lies in a film, without air, stays as it was reckoned.
 */
export function asWeighed(oil: OilSection, colour: Colour, records: Records): OilSection {
  const lots = colour.lotDensities;
  if (lots.length === 0) return oil;
  const { densityGPerCm3: value, spreadGPerCm3: uncertainty } = measuredDensity(
    lots.map(({ densityGPerCm3 }) => densityGPerCm3),
  );
  const paintDensity = sourceFigure("measured", value, {
    unit: "g/cm3",
    method: lots.length === 1 ? "measured on one lot" : `median measured on ${lots.length} lots`,
    uncertainty,
    inputs: lots.map(({ lot }) => ({ kind: "lot", slug: lot })),
  });
  const { paintDensityGPerCm3: reckoned, pigmentMassFraction } = oil;
  const contradiction = isKnown(reckoned)
    ? densityContradiction(
        value,
        reckoned.value,
        lots.length,
        tolerancesOf(colour, records).densityPercent,
      )
    : undefined;
  return {
    ...oil,
    paintDensityGPerCm3: paintDensity,
    pigmentGPerMl: derivedFigure(
      { name: "density of the paint x share of dry pigment", unit: "g/ml" },
      { paintDensity, pigmentMassFraction },
      (v) => v.paintDensity * v.pigmentMassFraction,
    ),
    contradictions: given([...oil.contradictions, contradiction]),
  };
}
