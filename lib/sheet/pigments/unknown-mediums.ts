import type { Records } from "../../records/records.ts";
import type { AdditionPart, VehiclePart } from "./pigment-figures.ts";
import { given } from "../../quantities/given.ts";

/** Names of mediums in the recipe that are recorded as no drying oil, and bring no drier: wax paste, resin, egg. */
export function unknownMediums(
  vehicle: VehiclePart | undefined,
  additions: readonly AdditionPart[],
  records: Records,
): string[] {
  return given([vehicle, ...additions]).flatMap(({ slug, name }) => {
    const record = records.vehicles.get(slug)?.record;
    return record?.kind === "medium" && record.oil === undefined ? [name] : [];
  });
}
