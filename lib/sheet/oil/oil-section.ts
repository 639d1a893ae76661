import { notStated, type Figure } from "../../quantities/figure.ts";
import type { Quantity } from "../../quantities/interval.ts";
import type { Colour, Records } from "../../records/records.ts";
import { filled } from "../found.ts";
import type { AdditionPart, PigmentPart, VehiclePart } from "../pigments/pigment-figures.ts";
import { unknownMediums } from "../pigments/unknown-mediums.ts";
import { WORKSHOP } from "../record-inputs.ts";
import { oilDemand } from "./oil-demand.ts";
import { OIL, type OilSection } from "./oil-figures.ts";
import { solventShares, untoldSolvents } from "./solvent-share.ts";

/** What the tubes that a mixture was weighed from tell of its oil. */
export interface OfTubes {
  readonly mainOil: Figure<Quantity>;
  /** Where a tube is in an oil that the mixture's record does not name. */
  readonly oilDensity: Figure<Quantity> | undefined;
}

/** Oil demand, packing and finish of the paint as made, with whatever contradicts itself in the record. */
export function oilSection(
  colour: Colour,
  parts: readonly PigmentPart[],
  vehicle: VehiclePart | undefined,
  additions: readonly AdditionPart[],
  records: Records,
  ofTubes?: OfTubes,
): OilSection {
  const demand = oilDemand(colour, parts, additions, records, ofTubes?.mainOil);
  return filled(OIL, {
    colour,
    parts,
    additions,
    records,
    demand,
    mainOil: demand.mainOil,
    oilDensity:
      ofTubes?.oilDensity ??
      vehicle?.densityGPerCm3 ??
      notStated("no oil in the records", ["vehicle"], [WORKSHOP]),
    solvents: solventShares(additions, records),
    unknownMediums: unknownMediums(vehicle, additions, records),
    untoldSolvents: untoldSolvents(additions, records),
  });
}
