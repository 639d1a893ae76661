import { criticalPigmentVolumeConcentration } from "../../formulation/cpvc.ts";
import { effectiveCpvc } from "../../formulation/dispersion.ts";
import { oilGPer100cm3 } from "../../formulation/oil-by-volume.ts";
import { oilIndexRuling } from "../../formulation/oil-index-class.ts";
import {
  listed,
  optional,
  quantity,
  section,
  statements,
  word,
  type PartsOf,
  type SectionOf,
} from "../declaration.ts";
import { following, wordFollowing } from "../following.ts";

const SHARE = { unit: "1", kind: "share", digits: 0 } as const;
const DENSITY = { unit: "g/cm3", kind: "significant", digits: 3 } as const;
const DEMAND = { unit: "g/100 g", kind: "significant", digits: 3 } as const;
const OVER_CPVC = { unit: "1", kind: "decimal", digits: 2 } as const;

/** Oil demand and packing of the paint as made. */
export const PACKING = {
  oilAbsorptionGPer100g: listed(quantity({ ...DEMAND, word: "oilAbsorption" }), {
    after: "oil.mainOilGPer100g",
  }),
  oilIndexGPer100g: listed(quantity({ ...DEMAND, word: "oilIndex" })),
  oilIndexClass: wordFollowing(
    word("oilIndexClass"),
    ["oilIndexGPer100g"],
    {
      name: "class of oil index",
      source: "practice-formulation",
      example: [{ oilIndexGPer100g: 34 }, "low"],
      untold: {
        reason: "its estimate reaches over several classes",
        wanting: ["oil.oilIndexGPer100g"],
      },
    },
    (v) => oilIndexRuling(v.oilIndexGPer100g).oilIndexClass,
  ),
  /** Of the dry pigment, mixed where there are several. */
  pigmentDensityGPerCm3: quantity({ ...DENSITY, word: "density" }),
  oilGPer100cm3: following(
    listed(quantity({ unit: "g/100 cm3", kind: "decimal", digits: 0, word: "oilByVolume" })),
    ["oilIndexGPer100g", "pigmentDensityGPerCm3"],
    {
      name: "oil index x density of the pigment",
      example: [{ oilIndexGPer100g: 75, pigmentDensityGPerCm3: 1.8 }, 135],
    },
    (v) => oilGPer100cm3(v.oilIndexGPer100g, v.pigmentDensityGPerCm3),
  ),
  cpvc: following(
    listed(quantity({ ...SHARE, word: "cpvc" })),
    ["oilAbsorptionGPer100g", "pigmentDensityGPerCm3"],
    {
      name: "CPVC = 1/(1 + OA rho/93.5)",
      source: "asbeck-van-loo-1949",
      example: [{ oilAbsorptionGPer100g: 50, pigmentDensityGPerCm3: 1.87 }, 0.5],
    },
    (v) => criticalPigmentVolumeConcentration(v.oilAbsorptionGPer100g, v.pigmentDensityGPerCm3),
  ),
  finenessOfGrindUm: listed(
    quantity({ unit: "um", kind: "significant", digits: 2, word: "finenessOfGrind" }),
    { after: "oil.gloss60" },
  ),
  /** How much of its CPVC the paste acts by: clumps hold oil. */
  dispersionFactor: quantity({ unit: "1", kind: "decimal", digits: 2, word: "dispersionFactor" }),
  effectiveCpvc: following(
    listed(quantity({ ...SHARE, word: "effectiveCpvc" })),
    ["cpvc", "dispersionFactor"],
    {
      name: "CPVC x dispersion factor",
      standing: "estimated",
      source: "practice-formulation",
      example: [{ cpvc: 0.5, dispersionFactor: 0.8 }, 0.4],
    },
    (v) => effectiveCpvc(v.cpvc, v.dispersionFactor),
  ),
  pvc: listed(quantity({ ...SHARE, word: "pvc" })),
  /** Oil of the dry film: what fat and lean are judged by. */
  oilVolumeFraction: following(
    quantity({ ...SHARE, word: "oilVolumeFraction" }),
    ["pvc"],
    { name: "1 - PVC", example: [{ pvc: 0.35 }, 0.65] },
    (v) => 1 - v.pvc,
  ),
  /** Oil that a volume of the wet paint takes before its film counts as fat. */
  oilBeforeFat: listed(quantity({ ...SHARE, word: "oilBeforeFat" }), { silentAt: [0] }),
  reducedPvc: listed(quantity({ ...OVER_CPVC, word: "reducedPvc" })),
  /** Over the effective CPVC: what the finish is judged by. */
  effectiveReducedPvc: following(
    listed(quantity({ ...OVER_CPVC, word: "effectiveReducedPvc" })),
    ["reducedPvc", "dispersionFactor"],
    {
      name: "PVC / CPVC",
      source: "bierwagen-hay-1975",
      example: [{ reducedPvc: 0.6, dispersionFactor: 0.8 }, 0.75],
    },
    (v) => v.reducedPvc / v.dispersionFactor,
  ),
  paintDensityGPerCm3: listed(quantity({ ...DENSITY, word: "paintDensity" })),
  /** Share of the wet paint's mass that is dry pigment: between a ratio of paints and one of pigments. */
  pigmentMassFraction: quantity({ ...SHARE, word: "pigmentMassFraction" }),
  /** Dry pigment in a millilitre from the tube. */
  pigmentGPerMl: listed(
    quantity({ unit: "g/ml", kind: "significant", digits: 2, word: "pigmentByVolume" }),
  ),
  /** Share of the wet paint's volume that stays in the film. */
  volumeSolids: listed(quantity({ ...SHARE, word: "volumeSolids" }), {
    silentAt: [1, "not stated"],
  }),
};
export type Packing = PartsOf<typeof PACKING>;

/** Oil demand, packing and finish of the paint as made. */
export const OIL = section({
  ...PACKING,
  /** Of the oil index what the vehicle alone is, where other oils were added to it. */
  mainOilGPer100g: optional(
    listed(quantity({ ...DEMAND, word: "mainOil" }), { after: "oil.oilIndexGPer100g" }),
  ),
  finish: listed(word("finish"), { after: "oil.effectiveReducedPvc" }),
  gloss60: listed(quantity({ unit: "GU", kind: "significant", digits: 2, word: "gloss60" }), {
    after: "oil.finish",
  }),
  body: word("body"),
  oilSeparation: word("oilSeparation"),
  reasons: statements,
  /** A measurement and an estimate, or two of the record's own figures, that disagree beyond tolerance. */
  contradictions: statements,
});
export type OilSection = SectionOf<typeof OIL>;
