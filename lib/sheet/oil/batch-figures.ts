import {
  list,
  optional,
  plainNumber,
  quantity,
  section,
  statements,
  text,
  texts,
  type SectionOf,
} from "../declaration.ts";

const SHARE = { unit: "1", kind: "share", digits: 0 } as const;
const GRAMS = { unit: "g", kind: "significant", digits: 3 } as const;

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
