import {
  list,
  oneOf,
  optional,
  plainNumber,
  quantity,
  section,
  statements,
  text,
  texts,
  word,
  type SectionOf,
} from "../declaration.ts";

const SHARE = { unit: "1", kind: "share", digits: 0 } as const;
const DENSITY = { unit: "g/cm3", kind: "significant", digits: 3 } as const;
const DEMAND = { unit: "g/100 g", kind: "significant", digits: 3 } as const;
const GRAMS = { unit: "g", kind: "significant", digits: 3 } as const;

/** Oil demand, packing and finish of the paint as made. */
export const OIL = section({
  oilAbsorptionGPer100g: quantity({ ...DEMAND, word: "oilAbsorption" }),
  oilIndexGPer100g: quantity({ ...DEMAND, word: "oilIndex" }),
  oilIndexClass: word("oilIndexClass"),
  /** Of the dry pigment, mixed where there are several. */
  pigmentDensityGPerCm3: quantity({ ...DENSITY, word: "density" }),
  oilGPer100cm3: quantity({ unit: "g/100 cm3", kind: "decimal", digits: 0, word: "oilByVolume" }),
  cpvc: quantity({ ...SHARE, word: "cpvc" }),
  finenessOfGrindUm: quantity({
    unit: "um",
    kind: "significant",
    digits: 2,
    word: "finenessOfGrind",
  }),
  /** How much of its CPVC the paste acts by: clumps hold oil. */
  dispersionFactor: quantity({ unit: "1", kind: "decimal", digits: 2, word: "dispersionFactor" }),
  effectiveCpvc: quantity({ ...SHARE, word: "effectiveCpvc" }),
  pvc: quantity({ ...SHARE, word: "pvc" }),
  /** Oil of the dry film, 1 - PVC: what fat and lean are judged by. */
  oilVolumeFraction: quantity({ ...SHARE, word: "oilVolumeFraction" }),
  /** Oil that a volume of the wet paint takes before its film counts as fat. */
  oilBeforeFat: quantity({ ...SHARE, word: "oilBeforeFat" }),
  /** PVC over CPVC. */
  reducedPvc: quantity({ unit: "1", kind: "decimal", digits: 2, word: "reducedPvc" }),
  /** PVC over effective CPVC: what the finish is judged by. */
  effectiveReducedPvc: quantity({
    unit: "1",
    kind: "decimal",
    digits: 2,
    word: "effectiveReducedPvc",
  }),
  paintDensityGPerCm3: quantity({ ...DENSITY, word: "paintDensity" }),
  /** Share of the wet paint's mass that is dry pigment: between a ratio of paints and one of pigments. */
  pigmentMassFraction: quantity({ ...SHARE, word: "pigmentMassFraction" }),
  /** Dry pigment in a millilitre from the tube. */
  pigmentGPerMl: quantity({
    unit: "g/ml",
    kind: "significant",
    digits: 2,
    word: "pigmentByVolume",
  }),
  /** Share of the wet paint's volume that stays in the film. */
  volumeSolids: quantity({ ...SHARE, word: "volumeSolids" }),
  finish: word("finish"),
  gloss60: quantity({ unit: "GU", kind: "significant", digits: 2, word: "gloss60" }),
  body: word("body"),
  oilSeparation: word("oilSeparation"),
  reasons: statements,
  /** A measurement and an estimate, or two of the record's own figures, that disagree beyond tolerance. */
  contradictions: statements,
});
export type OilSection = SectionOf<typeof OIL>;

/** The lines of a batch, which a browser reckons anew for another size. */
export const BATCH_LINES = {
  pigments: quantity({ ...GRAMS, word: "batchPigment" }),
  oilG: quantity({ ...GRAMS, word: "batchOil" }),
  oilAtFirstG: quantity({ ...GRAMS, word: "batchOilAtFirst" }),
  oilHeldBackG: quantity({ ...GRAMS, word: "batchOilHeldBack" }),
  additions: quantity({ ...GRAMS, digits: 2, word: "batchAddition" }),
  paintG: quantity({ ...GRAMS, word: "batchPaint" }),
  paintMl: quantity({ unit: "ml", kind: "decimal", digits: 0, word: "batchVolume" }),
  lossMl: quantity({ unit: "ml", kind: "significant", digits: 2, word: "batchLossMl" }),
  yieldMl: quantity({ unit: "ml", kind: "decimal", digits: 0, word: "batchYield" }),
  tubes: quantity({ unit: "1", kind: "decimal", digits: 0, word: "batchTubes" }),
  cost: quantity({ unit: "currency", kind: "decimal", digits: 2, word: "batchCost" }),
};
const { pigments, additions, tubes, cost, ...PLAIN_LINES } = BATCH_LINES;

const BATCH_SIZE = section({
  /** "100-g": by it a path finds the size. */
  slug: text,
  pigmentG: plainNumber,
  pigments: list(section({ slug: text, massG: pigments })),
  ...PLAIN_LINES,
  additions: list(section({ slug: text, massG: additions })),
  /** Whole tubes of each size that it is sold in. */
  tubes: list(section({ slug: text, ml: plainNumber, count: tubes })),
  /** Of what is priced; absent when nothing is. */
  cost: optional(cost),
  /** What the cost leaves out, by slug. */
  unpriced: texts,
});
export type BatchSize = SectionOf<typeof BATCH_SIZE>;

/** What to weigh for a batch, what to hold back, what comes out. */
export const BATCH = section({
  /** Share of the oil [1]. */
  holdBack: quantity({ ...SHARE, word: "holdBack" }),
  /** Share of the batch [1] that does not reach a tube. */
  loss: quantity({ ...SHARE, word: "batchLoss" }),
  reasons: statements,
  sizes: list(BATCH_SIZE),
});
export type BatchSection = SectionOf<typeof BATCH>;

const FILLING = section({
  /** "paint", "lamp-black-poured", "lamp-black-tapped". */
  slug: text,
  /** The pigment, where it is a dry one. */
  pigment: optional(text),
  packing: oneOf(["paint", "poured", "tapped"]),
  holds: list(
    section({
      slug: text,
      ml: plainNumber,
      massG: quantity({ ...GRAMS, word: "fillHolds" }),
    }),
  ),
  takesMlPer100g: quantity({ unit: "ml", kind: "significant", digits: 3, word: "fillTakes" }),
});
export type Filling = SectionOf<typeof FILLING>;

/** What jars and tubes hold, and the reverse. */
export const FILL = section({
  fillings: list(FILLING),
  /** Whether 100 g of a dry pigment fill a jar. */
  sentences: statements,
});
export type FillSection = SectionOf<typeof FILL>;
