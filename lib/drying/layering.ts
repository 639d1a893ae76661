/** One paint over another: fat over lean, and nothing fast over what is still slow. */
import { midpoint, type Quantity } from "../quantities/interval.ts";
import type { StatementOf } from "../quantities/statement.ts";
import { DRYING_LIMITS, type DryingClass } from "./drying-class.ts";
import { requireFractionEnds } from "./oil-richness.ts";

export interface Layer {
  readonly name: string;
  readonly oilVolumeFraction: Quantity;
  readonly dryingClass?: DryingClass | undefined;
}

export type LayersStatement =
  | StatementOf<
      "equally-fat" | "fat-over-lean" | "lean-over-fat",
      {
        readonly upper: string;
        readonly lower: string;
        readonly upperOil: Quantity;
        readonly lowerOil: Quantity;
      }
    >
  | StatementOf<
      "fast-over-slow-cracks",
      {
        readonly upper: string;
        readonly lower: string;
        readonly upperClass: DryingClass;
        readonly lowerClass: DryingClass;
      }
    >;

/** Oil volume fractions [1] this near count as equally fat. */
const EQUALLY_FAT = 0.03;

/** What to say of one paint laid over another. @throws RangeError as {@link fatnessRuling}. */
export function layeringRulings(upper: Layer, lower: Layer): LayersStatement[] {
  requireFractionEnds(upper.oilVolumeFraction);
  requireFractionEnds(lower.oilVolumeFraction);
  const difference = midpoint(upper.oilVolumeFraction) - midpoint(lower.oilVolumeFraction);
  const fat: LayersStatement = {
    rule:
      Math.abs(difference) <= EQUALLY_FAT
        ? "equally-fat"
        : difference > 0
          ? "fat-over-lean"
          : "lean-over-fat",
    values: {
      upper: upper.name,
      lower: lower.name,
      upperOil: upper.oilVolumeFraction,
      lowerOil: lower.oilVolumeFraction,
    },
    standing: "derived",
    source: "practice-drying",
  };
  if (upper.dryingClass === undefined || lower.dryingClass === undefined) return [fat];
  if (slowness(upper.dryingClass) >= slowness(lower.dryingClass)) return [fat];
  return [
    fat,
    {
      rule: "fast-over-slow-cracks",
      values: {
        upper: upper.name,
        lower: lower.name,
        upperClass: upper.dryingClass,
        lowerClass: lower.dryingClass,
      },
      standing: "estimated",
      source: "practice-drying",
    },
  ];
}

function slowness(dryingClass: DryingClass): number {
  return DRYING_LIMITS.findIndex((row) => row.dryingClass === dryingClass);
}
