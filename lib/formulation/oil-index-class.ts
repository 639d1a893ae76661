/**
 * Oil index in a word: grams of oil to 100 g of pigment in the paint as made.
 *
 * The limits are this project's, set between the pigments of Church's table: the
 * dense whites and vermilion (16-23) lie below 25; ultramarine (39), and with it
 * the dense oxides, below 50; viridian and ochre (54, 61) below 70, where cobalt
 * blue and light red fall on the edge; Prussian blue, umbers and ivory black
 * (75-100) below 110; the siennas (144, 194) above.
 *
 * @source practice-formulation : an estimate; church-1915 for where the pigments lie.
 */
import { domainError } from "../diagnostics/diagnostic.ts";
import { ends, type Quantity } from "../quantities/interval.ts";
import type { StatementOf } from "../quantities/statement.ts";
import { certain } from "../quantities/at.ts";

export type OilIndexClass = "very low" | "low" | "medium" | "high" | "very high";

export interface OilIndexLimit {
  readonly oilIndexClass: OilIndexClass;
  /** Largest oil index [g/100 g] still in this class, inclusive. */
  readonly oilIndexMaxGPer100g: number;
  /** Pigments of Church's table that lie in it. */
  readonly suchAs: readonly string[];
}

export const OIL_INDEX_LIMITS: readonly OilIndexLimit[] = [
  {
    oilIndexClass: "very low",
    oilIndexMaxGPer100g: 25,
    suchAs: ["white lead", "zinc white", "vermilion"],
  },
  { oilIndexClass: "low", oilIndexMaxGPer100g: 50, suchAs: ["ultramarine"] },
  { oilIndexClass: "medium", oilIndexMaxGPer100g: 70, suchAs: ["yellow ochre", "viridian"] },
  {
    oilIndexClass: "high",
    oilIndexMaxGPer100g: 110,
    suchAs: ["Prussian blue", "raw umber", "burnt umber", "ivory black"],
  },
  {
    oilIndexClass: "very high",
    oilIndexMaxGPer100g: Infinity,
    suchAs: ["raw sienna", "burnt sienna"],
  },
];

export type OilIndexStatement =
  | StatementOf<
      "oil-index-class",
      {
        readonly oilIndexClass: OilIndexClass;
        readonly oilIndexGPer100g: Quantity;
        readonly suchAs: readonly string[];
      }
    >
  | StatementOf<
      "oil-index-class-of-an-estimate",
      {
        readonly oilIndexClass: OilIndexClass;
        readonly oilIndexGPer100g: Quantity;
        readonly spans: readonly OilIndexClass[];
      }
    >;

export interface OilIndexRuling {
  readonly oilIndexClass: OilIndexClass;
  readonly limit: OilIndexLimit;
  /** Every class that the estimate reaches into; one for a figure alone. */
  readonly spans: readonly OilIndexClass[];
  readonly reason: OilIndexStatement;
}

/**
 * @param oilIndexGPer100g [g/100 g], > 0; an estimate's two ends are judged at
 *   their geometric mean, since oil figures differ by ratios.
 * @param own names of the paint's own pigments, lower case: it is not set beside itself.
 * @returns the ruling; an oil index on a limit belongs to the lower class.
 * @throws RangeError when an end is not a finite number above 0.
 * @example oilIndexRuling(34).oilIndexClass // "low"
 */
export function oilIndexRuling(
  oilIndexGPer100g: Quantity,
  own: readonly string[] = [],
): OilIndexRuling {
  const [lower, upper] = ends(oilIndexGPer100g);
  for (const end of [lower, upper]) {
    if (!(end > 0 && end < Infinity))
      throw domainError("oil index", end, "0 < oil index < Infinity g/100 g");
  }
  const decidedAt = lower === upper ? lower : Math.sqrt(lower * upper);
  const limit = limitOf(decidedAt);
  const first = OIL_INDEX_LIMITS.indexOf(limitOf(lower));
  const last = OIL_INDEX_LIMITS.indexOf(limitOf(upper));
  const spans = OIL_INDEX_LIMITS.slice(first, last + 1).map((row) => row.oilIndexClass);
  const { oilIndexClass } = limit;
  const evidence = { standing: "estimated", source: "practice-formulation" } as const;
  return {
    oilIndexClass,
    limit,
    spans,
    reason:
      spans.length === 1
        ? {
            rule: "oil-index-class",
            values: {
              oilIndexClass,
              oilIndexGPer100g,
              suchAs: limit.suchAs.filter((one) => !own.includes(one.toLowerCase())),
            },
            ...evidence,
          }
        : {
            rule: "oil-index-class-of-an-estimate",
            values: { oilIndexClass, oilIndexGPer100g, spans },
            ...evidence,
          },
  };
}

function limitOf(oilIndexGPer100g: number): OilIndexLimit {
  return certain(OIL_INDEX_LIMITS.find((limit) => oilIndexGPer100g <= limit.oilIndexMaxGPer100g));
}
