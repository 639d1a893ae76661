import { blendDensityGPerCm3 } from "../formulation/blend.ts";
import { bodyRuling, oilSeparationRuling } from "../formulation/body.ts";
import { criticalPigmentVolumeConcentration, oilDemandReason } from "../formulation/cpvc.ts";
import { effectiveCpvc } from "../formulation/dispersion.ts";
import { oilGPer100cm3 } from "../formulation/oil-by-volume.ts";
import { oilIndexRuling } from "../formulation/oil-index-class.ts";
import { paintDensityGPerCm3 } from "../formulation/paint-volume.ts";
import { pigmentVolumeConcentration, reducedPvc } from "../formulation/pvc.ts";
import { isKnown, notStated, type Figure, type Placed } from "../quantities/figure.ts";
import { midpoint, type Quantity } from "../quantities/range.ts";
import { ruledOut, workedOut } from "../quantities/worked-out.ts";
import type { Colour, Records } from "../records/records.ts";
import { blendedFigure } from "./blended-figure.ts";
import { finishFigure } from "./finish-figure.ts";
import { oilDemand } from "./oil-demand.ts";
import { openedPaste } from "./opened-paste.ts";
import { recordedFigure } from "./recorded-figure.ts";
import type { OilSection, PigmentPart, VehiclePart } from "./sheet.ts";

/** Oil demand, packing and finish of the paint as made, with whatever contradicts itself in the record. */
export function oilSection(colour: Colour, parts: readonly PigmentPart[], vehicle: VehiclePart | undefined, records: Records): OilSection {
  const demand = oilDemand(colour, parts, records);
  const opened = openedPaste(colour, records);
  const placed = (path: string, figure: Figure<Quantity>): Placed<Quantity> => ({ path, figure });
  const oilIndex = placed("oil.oilIndexGPer100g", demand.oilIndex);
  const oilAbsorption = placed("oil.oilAbsorptionGPer100g", demand.oilAbsorption);
  const oilDensity = placed("vehicle.densityGPerCm3", vehicle?.densityGPerCm3 ?? notStated("no oil in the records", ["vehicle"]));
  const pigmentDensity = blendedFigure(parts, "densityGPerCm3", ["densityGPerCm3"], { name: "blend by volume", unit: "g/cm3" }, blendDensityGPerCm3);

  const cpvc = workedOut({ name: "CPVC = 1/(1 + OA rho/93.5)", unit: "1", source: "asbeck-van-loo-1949" }, { oilAbsorption, pigmentDensity },
    (v) => criticalPigmentVolumeConcentration(v.oilAbsorption, v.pigmentDensity));
  const effective = workedOut({ name: "CPVC x dispersion factor", unit: "1", standing: "estimated", source: "practice-formulation" },
    { cpvc: placed("oil.cpvc", cpvc), factor: placed("oil.dispersionFactor", opened.factor) }, (v) => effectiveCpvc(v.cpvc, v.factor));
  const pvc = workedOut({ name: "PVC = pigment volume / (pigment + oil volume)", unit: "1", source: "bierwagen-hay-1975" }, { oilIndex, oilDensity, pigmentDensity },
    (v) => pigmentVolumeConcentration(100, v.pigmentDensity, v.oilIndex, v.oilDensity));
  const reduced = (path: string, critical: Figure<Quantity>): Figure<Quantity> => workedOut({ name: "PVC / CPVC", unit: "1", source: "bierwagen-hay-1975" },
    { pvc: placed("oil.pvc", pvc), cpvc: placed(path, critical) }, (v) => reducedPvc(v.pvc, v.cpvc));
  const effectiveReducedPvc = reduced("oil.effectiveCpvc", effective);
  const gloss60 = recordedFigure(colour.record.gloss60, "GU", `colours.${colour.slug}.gloss60`);
  const finish = finishFigure(effectiveReducedPvc, gloss60);

  return {
    oilAbsorptionGPer100g: demand.oilAbsorption,
    oilIndexGPer100g: demand.oilIndex,
    oilIndexClass: ruledOut({ name: "class of oil index", unit: "", source: "practice-formulation" }, { oilIndex }, (v) => oilIndexRuling(v.oilIndex).oilIndexClass as string),
    pigmentDensityGPerCm3: pigmentDensity.figure,
    oilGPer100cm3: workedOut({ name: "oil index x density of the pigment", unit: "g/100 cm3" }, { oilIndex, pigmentDensity }, (v) => oilGPer100cm3(v.oilIndex, v.pigmentDensity)),
    cpvc, dispersionFactor: opened.factor, effectiveCpvc: effective, pvc,
    reducedPvc: reduced("oil.cpvc", cpvc),
    effectiveReducedPvc,
    paintDensityGPerCm3: workedOut({ name: "mass / volume of pigment and oil", unit: "g/cm3" }, { oilIndex, oilDensity, pigmentDensity },
      (v) => paintDensityGPerCm3([{ massG: 100, densityGPerCm3: v.pigmentDensity, volatile: false }, { massG: v.oilIndex, densityGPerCm3: v.oilDensity, volatile: false }])),
    finish: finish.figure, gloss60,
    reasons: [
      ...demand.reasons,
      ...(isKnown(demand.oilIndex) ? [oilIndexRuling(demand.oilIndex.value).reason] : []),
      ...(isKnown(cpvc) ? [oilDemandReason(midpoint(cpvc.value))] : []),
      ...opened.reasons,
      ...finish.reasons,
      ...(colour.record.body === undefined ? [] : [bodyRuling(colour.record.body)]),
      ...(colour.record.oilSeparation === undefined ? [] : [oilSeparationRuling(colour.record.oilSeparation)]),
    ],
    contradictions: [demand.contradiction, finish.contradiction].filter((found) => found !== undefined),
  };
}
