import type { AddedDrier } from "../drying/added-drier.ts";
import type { Colour, Records } from "../records/records.ts";

/** The driers added to a colour, as metal on oil by mass [%]; a drier whose metal content is not recorded is left out. */
export function addedDriers(colour: Colour, records: Records): AddedDrier[] {
  return (colour.record.additions ?? []).flatMap(({ vehicle, percentOfOil }): AddedDrier[] => {
    const drier = records.vehicles.get(vehicle)?.record;
    if (drier?.kind !== "drier" || drier.metal === undefined || drier.metalPercent === undefined) return [];
    return [{ metal: drier.metal, percentOnOil: (percentOfOil * drier.metalPercent) / 100 }];
  });
}
