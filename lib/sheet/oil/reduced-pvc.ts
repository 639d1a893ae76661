import { criticalPigmentVolumeConcentration } from "../../formulation/cpvc.ts";
import { reducedPvc } from "../../formulation/pvc.ts";
import { at } from "../../quantities/at.ts";
import { derivedFigure } from "../../quantities/derived-figure.ts";
import type { Figure } from "../../quantities/figure.ts";
import type { Quantity } from "../../quantities/interval.ts";
import type { OilDemand } from "./oil-demand.ts";
import { bindingAdditions, inputs, pvcOfFilm, type PaintOfOil } from "./paint-volumes.ts";

/**
 * PVC over CPVC [1] by what both rest on: the density of the pigment and, where one figure of oil
 * is estimated from the other, that other and their ratio. By PVC and CPVC themselves each range
 * would count twice.
 */
export function reducedPvcFigure(
  paint: PaintOfOil & { readonly demand: OilDemand },
): Figure<Quantity> {
  const { oilAbsorption, between } = paint.demand;
  const binding = bindingAdditions(paint.additions);
  const { estimated, ratio } = between ?? {};
  const all = {
    oilDensity: paint.oilDensity,
    pigmentDensity: paint.pigmentDensityGPerCm3,
    ...inputs(paint, binding, paint.solvents),
    oilAbsorption,
    ...(ratio !== undefined && { ratio }),
  };
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
