import { criticalPigmentVolumeConcentration } from "../../formulation/cpvc.ts";
import { reducedPvc } from "../../formulation/pvc.ts";
import { at } from "../../quantities/at.ts";
import { derivedFigure } from "../../quantities/derived-figure.ts";
import type { Figure } from "../../quantities/figure.ts";
import type { Quantity } from "../../quantities/interval.ts";
import type { AdditionPart } from "../pigments/pigment-figures.ts";
import type { OilDemand } from "./oil-demand.ts";
import { bindingAdditions, inputs, pvcOfFilm, type PaintInputs } from "./paint-volumes.ts";

/**
 * PVC over CPVC [1] by what both rest on: the density of the pigment and, where one figure of oil
 * is estimated from the other, that other and their ratio. By PVC and CPVC themselves each range
 * would count twice.
 * @param solvents what of each medium leaves the film [1], by slug.
 */
export function reducedPvcFigure(
  { oilAbsorption, mainOil, between }: OilDemand,
  paint: Omit<PaintInputs, "oilIndex">,
  additions: readonly AdditionPart[],
  solvents: ReadonlyMap<string, Figure<Quantity>>,
): Figure<Quantity> {
  const binding = bindingAdditions(additions);
  const { estimated, ratio } = between ?? {};
  const paintInputs = inputs({ ...paint, oilIndex: mainOil }, binding, solvents);
  const all = { ...paintInputs, oilAbsorption, ...(ratio === undefined ? {} : { ratio }) };
  return derivedFigure(
    { name: "PVC / CPVC", unit: "1", source: "bierwagen-hay-1975" },
    Object.fromEntries(Object.entries(all).filter(([name]) => name !== estimated)),
    (v) => {
      const index = v["oilIndex"] ?? at(v, "oilAbsorption") * at(v, "ratio");
      const absorption = v["oilAbsorption"] ?? index / at(v, "ratio");
      return reducedPvc(
        pvcOfFilm({ ...v, oilIndex: index }, binding),
        criticalPigmentVolumeConcentration(absorption, at(v, "pigmentDensity")),
      );
    },
  );
}
