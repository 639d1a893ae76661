import { FAT_ABOVE, oilBeforeFatMl } from "../../drying/oil-richness.ts";
import { mediumStatements } from "../../drying/medium-in-paint.ts";
import { blendDensityGPerCm3 } from "../../formulation/blend.ts";
import { criticalPigmentVolumeConcentration } from "../../formulation/cpvc.ts";
import { effectiveCpvc } from "../../formulation/dispersion.ts";
import { oilGPer100cm3 } from "../../formulation/oil-by-volume.ts";
import { oilIndexRuling } from "../../formulation/oil-index-class.ts";
import { OIL_RULES, PASTE_RULES } from "../../formulation/oil-rules.ts";
import {
  paintDensityGPerCm3,
  paintVolumeMl,
  volumeSolids,
} from "../../formulation/paint-volume.ts";
import { at } from "../../quantities/at.ts";
import { isKnown, knownValue } from "../../quantities/figure.ts";
import { said } from "../../quantities/statement.ts";
import type { Colour, Records } from "../../records/records.ts";
import * as d from "../declaration.ts";
import { following, foundFrom, wordFollowing, type Amounts } from "../found.ts";
import { blendedFigure } from "../pigments/blended-figure.ts";
import type { PigmentPart } from "../pigments/pigment-figures.ts";
import { recorded, seen } from "../recorded.ts";
import { openedPaste } from "./dispersion-factor.ts";
import { finishFigure, finishRulings } from "./finish-figure.ts";
import type { OilDemand } from "./oil-demand.ts";
import {
  bindingAdditions,
  components,
  inputs,
  massInputs,
  pvcOfFilm,
  stays,
  type PaintOfOil,
} from "./paint-volumes.ts";
import { reducedPvcFigure } from "./reduced-pvc.ts";

const DENSITY = { unit: "g/cm3", kind: "significant", digits: 3 } as const;
const DEMAND = { unit: "g/100 g", kind: "significant", digits: 3, workedOutPlaces: 0 } as const;
const OVER_CPVC = { unit: "1", kind: "decimal", digits: 2 } as const;

/** What the figures of a paint's oil are found from, beside one another. */
export interface OilOfColour extends Omit<PaintOfOil, "pigmentDensityGPerCm3"> {
  readonly colour: Colour;
  readonly parts: readonly PigmentPart[];
  readonly demand: OilDemand;
  /** Names of mediums of which it is not known what they do, or how much of them dries away. */
  readonly unknownMediums: readonly string[];
  readonly untoldSolvents: readonly string[];
  readonly records: Records;
}

const oil = foundFrom<
  OilOfColour &
    Amounts<
      | "cpvc"
      | "effectiveReducedPvc"
      | "finenessOfGrindUm"
      | "gloss60"
      | "oilIndexGPer100g"
      | "pigmentDensityGPerCm3"
      | "reducedPvc"
    >
>();

/** Oil demand, packing and finish of the paint as made. */
export const OIL = d.headed("oilSection", {
  oilAbsorptionGPer100g: oil.found(
    d.listed(d.quantity({ ...DEMAND, word: "oilAbsorption" }), { after: "oil.mainOilGPer100g" }),
    ({ demand }) => demand.oilAbsorption,
    ["lamp-black.oil.oilAbsorptionGPer100g", "that of its only pigment", 72],
  ),
  oilIndexGPer100g: oil.found(
    d.listed(d.quantity({ ...DEMAND, word: "oilIndex" })),
    ({ demand }) => demand.oilIndex,
    ["lamp-black.oil.oilIndexGPer100g", "as recorded", 99],
  ),
  oilIndexClass: wordFollowing(
    d.word("oilIndexClass"),
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
    (v) => oilIndexRuling(v.oilIndexGPer100g).spans,
  ),
  /** Of the dry pigment, mixed where there are several. */
  pigmentDensityGPerCm3: oil.found(
    d.quantity({ ...DENSITY, word: "density" }),
    ({ parts }) =>
      blendedFigure(
        parts,
        "densityGPerCm3",
        ["densityGPerCm3"],
        { name: "blend by volume", unit: "g/cm3" },
        blendDensityGPerCm3,
      ),
    ["lamp-black.oil.pigmentDensityGPerCm3", "that of its only pigment", 1.8],
  ),
  oilGPer100cm3: following(
    d.listed(d.quantity({ unit: "g/100 cm3", kind: "decimal", digits: 0, word: "oilByVolume" })),
    ["oilIndexGPer100g", "pigmentDensityGPerCm3"],
    {
      name: "oil index x density of the pigment",
      example: [{ oilIndexGPer100g: 75, pigmentDensityGPerCm3: 1.8 }, 135],
    },
    (v) => oilGPer100cm3(v.oilIndexGPer100g, v.pigmentDensityGPerCm3),
  ),
  cpvc: following(
    d.listed(d.quantity({ ...d.SHARE, word: "cpvc" })),
    ["oilAbsorptionGPer100g", "pigmentDensityGPerCm3"],
    {
      name: "CPVC = 1/(1 + OA rho/93.5)",
      source: "asbeck-van-loo-1949",
      example: [{ oilAbsorptionGPer100g: 50, pigmentDensityGPerCm3: 1.87 }, 0.5],
    },
    (v) => criticalPigmentVolumeConcentration(v.oilAbsorptionGPer100g, v.pigmentDensityGPerCm3),
  ),
  finenessOfGrindUm: recorded(
    d.listed(d.quantity({ unit: "um", kind: "significant", digits: 2, word: "finenessOfGrind" }), {
      after: "oil.gloss60",
    }),
    "finenessOfGrindUm",
  ),
  /** How much of its CPVC the paste acts by: clumps hold oil. */
  dispersionFactor: oil.found(
    d.quantity({ unit: "1", kind: "decimal", digits: 2, word: "dispersionFactor" }),
    (paste) => openedPaste(paste).factor,
  ),
  effectiveCpvc: following(
    d.listed(d.quantity({ ...d.SHARE, word: "effectiveCpvc" })),
    ["cpvc", "dispersionFactor"],
    {
      name: "CPVC x dispersion factor",
      standing: "estimated",
      source: "practice-formulation",
      example: [{ cpvc: 0.5, dispersionFactor: 0.8 }, 0.4],
    },
    (v) => effectiveCpvc(v.cpvc, v.dispersionFactor),
  ),
  pvc: oil.derived(
    d.listed(d.quantity({ ...d.SHARE, word: "pvc" })),
    (paint) => inputs(paint, bindingAdditions(paint.additions), paint.solvents),
    {
      name: ({ additions }) =>
        `PVC = pigment volume / (pigment + ${bindingAdditions(additions).length === 0 ? "oil" : "oil and medium"} volume)`,
      source: "bierwagen-hay-1975",
      byHand: ["lamp-black.oil.pvc", "(100 / 1.8) / (100 / 1.8 + 99 / 0.931)", 0.34316],
    },
    (v, { additions }) => pvcOfFilm(v, bindingAdditions(additions)),
  ),
  /** Oil of the dry film: what fat and lean are judged by. */
  oilVolumeFraction: following(
    d.quantity({ ...d.SHARE, word: "oilVolumeFraction" }),
    ["pvc"],
    { name: "1 - PVC", example: [{ pvc: 0.35 }, 0.65] },
    (v) => 1 - v.pvc,
  ),
  /** Oil that a volume of the wet paint takes before its film counts as fat. */
  oilBeforeFat: oil.derived(
    d.listed(d.quantity({ ...d.SHARE, word: "oilBeforeFat" }), { silentAt: [0] }),
    (paint) => inputs(paint, paint.additions, paint.solvents),
    {
      name: `oil added until ${FAT_ABOVE * 100} % of the dry film is oil / volume of the wet paint`,
      standing: "estimated",
      source: "practice-drying",
    },
    (v, { additions }) => {
      const [pigment, ...binder] = stays(components(v, bindingAdditions(additions)));
      return (
        oilBeforeFatMl(paintVolumeMl([pigment]), paintVolumeMl(binder)) /
        paintVolumeMl(components(v, additions))
      );
    },
  ),
  reducedPvc: oil.found(
    d.listed(d.quantity({ ...OVER_CPVC, word: "reducedPvc" })),
    reducedPvcFigure,
    ["lamp-black.oil.reducedPvc", "0.34316 / 0.41909, its CPVC", 0.8188],
  ),
  /** Over the effective CPVC: what the finish is judged by. */
  effectiveReducedPvc: following(
    d.listed(d.quantity({ ...OVER_CPVC, word: "effectiveReducedPvc" })),
    ["reducedPvc", "dispersionFactor"],
    {
      name: "PVC / CPVC",
      source: "bierwagen-hay-1975",
      example: [{ reducedPvc: 0.6, dispersionFactor: 0.8 }, 0.75],
    },
    (v) => v.reducedPvc / v.dispersionFactor,
  ),
  paintDensityGPerCm3: oil.derived(
    d.listed(d.quantity({ ...DENSITY, word: "paintDensity" })),
    (paint) => inputs(paint, paint.additions),
    {
      name: "mass / volume of all that is in it",
      byHand: ["lamp-black.oil.paintDensityGPerCm3", "its two lots weigh 1.215 and 1.216", 1.2155],
    },
    (v, { additions }) => paintDensityGPerCm3(components(v, additions)),
  ),
  /** Share of the wet paint's mass that is dry pigment: between a ratio of paints and one of pigments. */
  pigmentMassFraction: oil.derived(
    d.quantity({ ...d.SHARE, word: "pigmentMassFraction" }),
    (paint) => massInputs(paint, paint.additions),
    {
      name: "mass of dry pigment / mass of all that is in it",
      byHand: [
        "lamp-black.oil.pigmentMassFraction",
        "100 / (100 + 99 + 0.396), the drier 0.4 % of 99",
        0.501515,
      ],
    },
    (v, { additions }) => {
      const massG =
        additions.reduce((sum, { slug }) => sum + at(v, `percent ${slug}`) / 100, 1) *
        at(v, "oilIndex");
      return 100 / (100 + massG);
    },
  ),
  /** Dry pigment in a millilitre from the tube. */
  pigmentGPerMl: oil.derived(
    d.listed(d.quantity({ unit: "g/ml", kind: "significant", digits: 2, word: "pigmentByVolume" })),
    (paint) => inputs(paint, paint.additions),
    {
      name: "mass of dry pigment / volume of all that is in it",
      byHand: ["lamp-black.oil.pigmentGPerMl", "1.2155 x 0.501515", 0.60959],
    },
    (v, { additions }) => {
      const parts = components(v, additions);
      const massG = parts.reduce((sum, one) => sum + one.massG, 0);
      return (paintDensityGPerCm3(parts) * parts[0].massG) / massG;
    },
  ),
  /** Share of the wet paint's volume that stays in the film. */
  volumeSolids: oil.derived(
    d.listed(d.quantity({ ...d.SHARE, word: "volumeSolids" }), { silentAt: [1, "not stated"] }),
    (paint) => inputs(paint, paint.additions, paint.solvents),
    {
      name: "volume of all but thinner / volume of the wet paint",
      byHand: ["lamp-black.oil.volumeSolids", "no thinner in it", 1],
    },
    (v, { additions }) => volumeSolids(components(v, additions)),
  ),
  /** Of the oil index what the vehicle alone is, where other oils were added to it. */
  mainOilGPer100g: oil.found(
    d.optional(
      d.listed(d.quantity({ ...DEMAND, word: "mainOil" }), { after: "oil.oilIndexGPer100g" }),
    ),
    ({ demand: { oilIndex, mainOil } }) =>
      mainOil === oilIndex || !isKnown(mainOil) ? undefined : mainOil,
  ),
  finish: oil.found(d.listed(d.word("finish"), { after: "oil.effectiveReducedPvc" }), finishFigure),
  gloss60: recorded(
    d.listed(d.quantity({ unit: "GU", kind: "significant", digits: 2, word: "gloss60" }), {
      after: "oil.finish",
    }),
    "gloss60",
  ),
  body: seen(d.word("body"), "body"),
  oilSeparation: seen(d.word("oilSeparation"), "oilSeparation"),
  reasons: oil.found(d.statements, (paint) => [
    ...paint.demand.reasons,
    ...said(OIL_RULES, {
      pigments: paint.parts,
      oilIndexGPer100g: knownValue(paint.oilIndexGPer100g),
      cpvc: knownValue(paint.cpvc),
    }),
    ...openedPaste(paint).reasons,
    ...finishRulings(paint).reasons,
    ...mediumStatements(paint.unknownMediums, "finish"),
    ...said(PASTE_RULES, {
      body: paint.colour.record.body,
      oilSeparation: paint.colour.record.oilSeparation,
      untoldSolvents: paint.untoldSolvents,
    }),
  ]),
  /** A measurement and an estimate, or two of the record's own figures, that disagree beyond tolerance. */
  contradictions: oil.found(d.statements, (paint) =>
    [paint.demand.contradiction, finishRulings(paint).contradiction].filter(
      (one) => one !== undefined,
    ),
  ),
});
export type OilSection = d.SectionOf<typeof OIL>;
