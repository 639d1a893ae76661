import { DRIER_METALS, type DrierMetal } from "../drying/added-drier.ts";
import type { VehicleRecord } from "./schema/vehicle.ts";

export interface DrierMetalShare {
  readonly metal: DrierMetal;
  /** Mass of metal in the drier [%]; undefined where the record names the metal alone. */
  readonly percent: number | undefined;
}

/** The metals of a drier that bear on drying, as its record lists them: under `metals`, or one under `metal`. */
export function drierMetals({
  metal,
  metalPercent,
  metals,
}: Pick<VehicleRecord, "metal" | "metalPercent" | "metals">): DrierMetalShare[] {
  if (metals !== undefined)
    return metals.flatMap((one) =>
      isDrierMetal(one.metal) ? [{ metal: one.metal, percent: one.percent }] : [],
    );
  return metal === undefined ? [] : [{ metal, percent: metalPercent }];
}

function isDrierMetal(metal: string): metal is DrierMetal {
  return (DRIER_METALS as readonly string[]).includes(metal);
}
