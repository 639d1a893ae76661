import { isOneOf } from "../quantities/members.ts";
import { DRIER_METALS, type DrierMetal } from "../drying/added-drier.ts";
import type { VehicleRecord } from "./schema/vehicle.ts";

interface DrierMetalShare {
  readonly metal: DrierMetal;
  /** Mass of metal in the drier [%]; undefined where the record names the metal alone. */
  readonly percent: number | undefined;
}

/** The metals of a drier that bear on drying, as its record lists them. */
export function drierMetals({ metals = [] }: Pick<VehicleRecord, "metals">): DrierMetalShare[] {
  return metals.flatMap(({ metal, percent }) => (isDrierMetal(metal) ? [{ metal, percent }] : []));
}

function isDrierMetal(metal: string): metal is DrierMetal {
  return isOneOf(DRIER_METALS, metal);
}
