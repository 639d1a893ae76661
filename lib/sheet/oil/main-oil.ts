import { derivedFigure } from "../../quantities/derived-figure.ts";
import { at } from "../../quantities/at.ts";
import type { Figure } from "../../quantities/figure.ts";
import type { Quantity } from "../../quantities/interval.ts";
import type { AdditionPart } from "../pigments/pigment-figures.ts";
import type { OilSection } from "./oil-figures.ts";

/** Oil to 100 g of pigment [g/100 g] of the vehicle alone, on which everything that was added to it is reckoned. */
export function mainOil({ oilIndexGPer100g, mainOilGPer100g }: OilSection): Figure<Quantity> {
  return mainOilGPer100g ?? oilIndexGPer100g;
}

/** What was added to the oil and is an oil itself. */
export function addedOils(additions: readonly AdditionPart[]): readonly AdditionPart[] {
  return additions.filter(({ kind }) => kind === "oil");
}

/**
 * The oil index [g/100 g]: the oil of the vehicle with those added to it.
 *
 *     O = m (1 + Sum a),  a by mass on the oil m
 */
export function oilInAll(main: Figure<Quantity>, oils: readonly AdditionPart[]): Figure<Quantity> {
  if (oils.length === 0) return main;
  return derivedFigure(
    { name: "main oil, and the oils added to it", unit: "g/100 g" },
    { main, ...shares(oils) },
    (v) => v.main * onMainOil(v, oils),
  );
}

/** What of a figure that goes by all oils falls to the main one: of the oil index, or of its ratio to the rub-out figure. */
export function ofMainOil(
  all: Figure<Quantity>,
  oils: readonly AdditionPart[],
  unit: "g/100 g" | "1",
): Figure<Quantity> {
  if (oils.length === 0) return all;
  return derivedFigure(
    { name: "oil index / (1 + the oils added to it)", unit },
    { all, ...shares(oils) },
    (v) => v.all / onMainOil(v, oils),
  );
}

function shares(oils: readonly AdditionPart[]): Record<string, Figure<Quantity>> {
  return Object.fromEntries(
    oils.map(({ slug, percentOfOil }) => [`percent ${slug}`, percentOfOil]),
  );
}

/** All oils by mass of the main one [1]. */
function onMainOil(
  values: Readonly<Record<string, number>>,
  oils: readonly AdditionPart[],
): number {
  return oils.reduce((sum, { slug }) => sum + at(values, `percent ${slug}`) / 100, 1);
}
