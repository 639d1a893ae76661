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
import { parentName } from "../quantities/colour-index-name.ts";
import type { Quantity } from "../quantities/interval.ts";
import type { StatementOf } from "../quantities/statement.ts";
import { at, certain } from "../quantities/at.ts";
import { positiveEnds } from "./required-domain.ts";

export type OilIndexClass = "very low" | "low" | "medium" | "high" | "very high";

export interface OilIndexLimit {
  readonly oilIndexClass: OilIndexClass;
  /** Largest oil index [g/100 g] still in this class, inclusive. */
  readonly oilIndexMaxGPer100g: number;
  /** Pigments of Church's table that lie in it. */
  readonly suchAs: readonly ChurchPigment[];
}

export interface ChurchPigment {
  readonly name: string;
  /** Where one name is of this pigment alone: PBr 7 is of siennas and umbers. */
  readonly colourIndexName?: string;
}

/** A pigment of a paint, which is not set beside itself. */
export interface OwnPigment {
  readonly name: string;
  readonly colourIndexName?: string | undefined;
}

export const OIL_INDEX_LIMITS: readonly OilIndexLimit[] = [
  {
    oilIndexClass: "very low",
    oilIndexMaxGPer100g: 25,
    suchAs: [
      { name: "white lead", colourIndexName: "PW 1" },
      { name: "zinc white", colourIndexName: "PW 4" },
      { name: "vermilion", colourIndexName: "PR 106" },
    ],
  },
  {
    oilIndexClass: "low",
    oilIndexMaxGPer100g: 50,
    suchAs: [{ name: "ultramarine", colourIndexName: "PB 29" }],
  },
  {
    oilIndexClass: "medium",
    oilIndexMaxGPer100g: 70,
    suchAs: [
      { name: "yellow ochre", colourIndexName: "PY 43" },
      { name: "viridian", colourIndexName: "PG 18" },
    ],
  },
  {
    oilIndexClass: "high",
    oilIndexMaxGPer100g: 110,
    suchAs: [
      { name: "Prussian blue", colourIndexName: "PB 27" },
      { name: "raw umber" },
      { name: "burnt umber" },
      { name: "ivory black", colourIndexName: "PBk 9" },
    ],
  },
  {
    oilIndexClass: "very high",
    oilIndexMaxGPer100g: Infinity,
    suchAs: [{ name: "raw sienna" }, { name: "burnt sienna" }],
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
      "oil-index-class-at-its-limit",
      {
        readonly oilIndexGPer100g: number;
        readonly limitGPer100g: number;
        /** [1] */
        readonly within: number;
        readonly spans: readonly OilIndexClass[];
      }
    >
  | StatementOf<
      "oil-index-class-of-an-estimate",
      {
        readonly oilIndexClass: OilIndexClass;
        readonly oilIndexGPer100g: Quantity;
        readonly spans: readonly OilIndexClass[];
      }
    >
  | StatementOf<
      "oil-index-class-not-told",
      { readonly oilIndexGPer100g: Quantity; readonly spans: readonly OilIndexClass[] }
    >;

export interface OilIndexRuling {
  /** Undefined where an estimate reaches over more than two classes, and so tells none. */
  readonly oilIndexClass: OilIndexClass | undefined;
  /** Every class that the estimate reaches into; of a figure alone two where it lies at their limit. */
  readonly spans: readonly OilIndexClass[];
  readonly reason: OilIndexStatement;
}

/**
 * How far [1] a batch's oil index may lie from the next one's of the same paint: nearer to a limit than that a
 * class would turn by what mulling does from day to day. Our own estimate, as a lot's tolerance for its oil is.
 */
export const OIL_INDEX_REPEATS_WITHIN = 0.05;

/** Classes over which an estimate may reach and still be one of them, by its middle. */
const SPANNED_MOST = 2;

/**
 * @param oilIndexGPer100g [g/100 g], > 0; an estimate's two ends are judged at
 *   their geometric mean, since oil figures differ by ratios.
 * @param own the paint's own pigments: it is not set beside itself, by whichever name.
 * @returns the ruling; an oil index on a limit is counted to the lower class and said with both, as any within
 *   {@link OIL_INDEX_REPEATS_WITHIN} of one; an estimate over more than two belongs to none.
 * @throws RangeError when an end is not a finite number above 0.
 * @example oilIndexRuling(34).oilIndexClass // "low"
 */
export function oilIndexRuling(
  oilIndexGPer100g: Quantity,
  own: readonly OwnPigment[] = [],
): OilIndexRuling {
  const [lower, upper] = positiveEnds("oil index", oilIndexGPer100g, "g/100 g");
  const decidedAt = lower === upper ? lower : Math.sqrt(lower * upper);
  const limit = limitOf(decidedAt);
  const repeats = lower === upper ? 1 + OIL_INDEX_REPEATS_WITHIN : 1;
  const first = OIL_INDEX_LIMITS.indexOf(limitOf(lower / repeats));
  const last = OIL_INDEX_LIMITS.indexOf(limitOf(upper * repeats));
  const spans = OIL_INDEX_LIMITS.slice(first, last + 1).map((row) => row.oilIndexClass);
  const { oilIndexClass } = limit;
  const evidence = { standing: "estimated", source: "practice-formulation" } as const;
  if (spans.length > SPANNED_MOST)
    return {
      oilIndexClass: undefined,
      spans,
      reason: {
        rule: "oil-index-class-not-told",
        values: { oilIndexGPer100g, spans },
        ...evidence,
      },
    };
  if (spans.length > 1 && lower === upper)
    return {
      oilIndexClass,
      spans,
      reason: {
        rule: "oil-index-class-at-its-limit",
        values: {
          oilIndexGPer100g: lower,
          limitGPer100g: at(OIL_INDEX_LIMITS, first).oilIndexMaxGPer100g,
          within: OIL_INDEX_REPEATS_WITHIN,
          spans,
        },
        ...evidence,
      },
    };
  return {
    oilIndexClass,
    spans,
    reason:
      spans.length === 1
        ? {
            rule: "oil-index-class",
            values: {
              oilIndexClass,
              oilIndexGPer100g,
              suchAs: limit.suchAs
                .filter((one) => !own.some((pigment) => isOne(pigment, one)))
                .map(({ name }) => name),
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

function isOne(own: OwnPigment, { name, colourIndexName }: ChurchPigment): boolean {
  return (
    own.name.toLowerCase() === name.toLowerCase() ||
    (colourIndexName !== undefined && parentName(own.colourIndexName ?? "") === colourIndexName)
  );
}

function limitOf(oilIndexGPer100g: number): OilIndexLimit {
  return certain(OIL_INDEX_LIMITS.find((limit) => oilIndexGPer100g <= limit.oilIndexMaxGPer100g));
}
