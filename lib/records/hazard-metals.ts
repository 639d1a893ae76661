import { isOneOf } from "../quantities/members.ts";
import {
  METALS,
  metalShares,
  type Metal,
  type MetalShares,
  type MetalTables,
} from "../hazard/studio/metal-content.ts";
import type { PigmentIdentity } from "../hazard/classify/substance.ts";
import type { HazardRecord } from "./schema/hazard-form.ts";

/**
 * The metals of a record that a label or a studio must know of, as fractions of
 * mass: those that its CAS number or Colour Index name tells, each in the share
 * that the record gives it. A list that leaves one out, or its share, does not hide it.
 */
export function hazardMetals(
  { casNumber, colourIndexName, metals = [] }: PigmentIdentity & Pick<HazardRecord, "metals">,
  tables: MetalTables,
): MetalShares {
  const told = metalShares({ casNumber, colourIndexName }, tables);
  const recorded = metals.flatMap(({ metal, percent }) =>
    isHazardMetal(metal)
      ? [[metal, percent === undefined ? (told[metal] ?? "present") : percent / 100] as const]
      : [],
  );
  const shares: MetalShares = Object.fromEntries(recorded);
  return { ...told, ...shares };
}

function isHazardMetal(metal: string): metal is Metal {
  return isOneOf(METALS, metal);
}
