import type { AddedDrier } from "../../drying/added-drier.ts";
import type { DryingQuestion } from "../../drying/drying-estimate.ts";
import type { OilPart } from "../../drying/oils.ts";
import { isKnown, type Figure } from "../../quantities/figure.ts";
import { midpoint, type Quantity } from "../../quantities/interval.ts";
import type { AdditionPart, VehiclePart } from "../pigments/pigment-figures.ts";
import type { DryingPart } from "./drying-parts.ts";

/** What of a paint bears on drying. */
export interface DryingPaint {
  readonly parts: readonly DryingPart[];
  readonly vehicle: VehiclePart | undefined;
  readonly additions: readonly AdditionPart[];
  readonly mainOilGPer100g: Figure<Quantity>;
}

export function dryingQuestion({ parts, vehicle, additions }: DryingPaint): DryingQuestion {
  return {
    pigments: parts,
    oils: oilParts(vehicle, additions),
    addedDriers: addedDriers(additions),
  };
}

/** Metals on oil; those whose dose is not known are left out. */
export function addedDriers(additions: readonly AdditionPart[]): AddedDrier[] {
  return additions.flatMap(({ metals }) =>
    metals.flatMap(({ slug, percentOfOil }) =>
      isKnown(percentOfOil) ? [{ metal: slug, percentOnOil: midpoint(percentOfOil.value) }] : [],
    ),
  );
}

/** The oil and the oils added to it, each by its share of all of them; one oil twice counts once. */
function oilParts(vehicle: VehiclePart | undefined, additions: readonly AdditionPart[]): OilPart[] {
  if (vehicle?.oil === undefined) return [];
  const parts = new Map([[vehicle.oil, 100]]);
  for (const { oil, percentOfOil } of additions) {
    if (oil !== undefined && isKnown(percentOfOil))
      parts.set(oil, (parts.get(oil) ?? 0) + percentOfOil.value);
  }
  const whole = [...parts.values()].reduce((sum, part) => sum + part, 0);
  return [...parts].map(([oil, part]) => ({ oil, massFraction: part / whole }));
}
