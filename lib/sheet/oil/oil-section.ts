import { blendDensityGPerCm3 } from "../../formulation/blend.ts";
import { bodyStatement, oilSeparationStatement } from "../../formulation/paste-body.ts";
import { oilDemandStatements } from "../../formulation/cpvc.ts";
import { oilIndexRuling } from "../../formulation/oil-index-class.ts";
import { solventStatements } from "../../formulation/solvent.ts";
import { mediumStatements } from "../../drying/medium-in-paint.ts";
import { isKnown, notStated, sourceFigure, type Figure } from "../../quantities/figure.ts";
import type { Quantity } from "../../quantities/interval.ts";
import type { Colour, Records } from "../../records/records.ts";
import { unknownMediums } from "../pigments/unknown-mediums.ts";
import { blendedFigure } from "../pigments/blended-figure.ts";
import { finishFigure } from "./finish-figure.ts";
import { oilDemand } from "./oil-demand.ts";
import { openedPaste } from "./dispersion-factor.ts";
import { PACKING, type OilSection } from "./oil-figures.ts";
import { paintVolumes } from "./paint-volumes.ts";
import { reducedPvcFigure } from "./reduced-pvc.ts";
import { solventShares, untoldSolvents } from "./solvent-share.ts";
import { colourRecord, WORKSHOP } from "../record-inputs.ts";
import { withFollowing } from "../following.ts";
import { recordedFigure } from "../recorded-figure.ts";
import type { AdditionPart, PigmentPart, VehiclePart } from "../pigments/pigment-figures.ts";

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
  const recorded = (field: "finenessOfGrindUm" | "gloss60", unit: string): Figure<Quantity> =>
    recordedFigure(colour.record[field], {
      unit,
      wanting: `colours.${colour.slug}.${field}`,
      inputs: colourRecord(colour, field),
    });
  const demand = oilDemand(colour, parts, additions, records, ofTubes?.mainOil);
  const finenessOfGrindUm = recorded("finenessOfGrindUm", "um");
  const opened = openedPaste(colour, parts, finenessOfGrindUm, records);
  const { oilIndex, mainOil } = demand;
  const oilDensity =
    ofTubes?.oilDensity ??
    vehicle?.densityGPerCm3 ??
    notStated("no oil in the records", ["vehicle"], [WORKSHOP]);
  const pigmentDensity = blendedFigure(
    parts,
    "densityGPerCm3",
    ["densityGPerCm3"],
    { name: "blend by volume", unit: "g/cm3" },
    blendDensityGPerCm3,
  );

  const solvents = solventShares(additions, records);
  const figures = withFollowing(PACKING, {
    oilAbsorptionGPer100g: demand.oilAbsorption,
    oilIndexGPer100g: oilIndex,
    pigmentDensityGPerCm3: pigmentDensity,
    finenessOfGrindUm,
    dispersionFactor: opened.factor,
    ...paintVolumes({ oilIndex: mainOil, oilDensity, pigmentDensity }, additions, solvents),
    reducedPvc: reducedPvcFigure(demand, { oilDensity, pigmentDensity }, additions, solvents),
  });
  const { cpvc } = figures;
  const gloss60 = recorded("gloss60", "GU");
  const finish = finishFigure(figures, gloss60);

  return {
    ...figures,
    ...(mainOil === oilIndex || !isKnown(mainOil) ? {} : { mainOilGPer100g: mainOil }),
    finish: finish.figure,
    gloss60,
    body: recordedWord(colour, "body"),
    oilSeparation: recordedWord(colour, "oilSeparation"),
    reasons: [
      ...demand.reasons,
      ...(isKnown(oilIndex) ? [oilIndexRuling(oilIndex.value, parts).reason] : []),
      ...(isKnown(cpvc) ? oilDemandStatements(cpvc.value) : []),
      ...opened.reasons,
      ...finish.reasons,
      ...mediumStatements(unknownMediums(vehicle, additions, records), "finish"),
      ...solventStatements(untoldSolvents(additions, records)),
      ...(colour.record.body === undefined ? [] : [bodyStatement(colour.record.body)]),
      ...(colour.record.oilSeparation === undefined
        ? []
        : [oilSeparationStatement(colour.record.oilSeparation)]),
    ],
    contradictions: [demand.contradiction, finish.contradiction].filter(
      (found) => found !== undefined,
    ),
  };
}

/** A word of the workshop's own, as it saw it. */
function recordedWord(colour: Colour, field: "body" | "oilSeparation"): Figure<string> {
  const word = colour.record[field];
  const inputs = colourRecord(colour, field);
  return word === undefined
    ? notStated("not in the records", [`colours.${colour.slug}.${field}`], inputs)
    : sourceFigure<string>("measured", word, {
        unit: "",
        method: "as seen by the workshop",
        inputs,
      });
}
