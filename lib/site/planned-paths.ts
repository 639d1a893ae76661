import { madeStep } from "../kept/kept-steps.ts";
import { rowOf } from "../pages/colour-rows.ts";
import { ORDERS, orderPaths } from "../pages/catalogue-pages.ts";
import { hasMixing } from "../pages/mixing-data.ts";
import { mapPath, reachedWhites } from "../pages/mixing-ways.ts";
import { whitesPaths } from "../pages/whites-page.ts";
import { cardSizes } from "../print/card-size.ts";
import { cardsPaths } from "../print/cards-page.ts";
import type { WorkedSite } from "./site-context.ts";

/** Where pages lie of which the sheets tell whether and how many there are. */
export interface PlannedPaths {
  readonly grid: readonly string[];
  /** Of each of {@link ORDERS}. */
  readonly orders: readonly (readonly string[])[];
  readonly whites: readonly string[];
  readonly mixes: boolean;
  /** Of what the range reaches in each of its whites. */
  readonly maps: readonly string[];
  /** Of each size of cards. */
  readonly cards: readonly (readonly string[])[];
}

export function plannedPaths(worked: WorkedSite): PlannedPaths {
  const { context, steps } = worked;
  const step = { modules: ["lib/site/planned-paths.ts"], name: "paths of pages" };
  return madeStep(steps, step, () => ({
    grid: orderPaths("grid", context),
    orders: ORDERS.map((order) => orderPaths(order, context)),
    whites: context.sheets.some((worded) => rowOf(worded, context).isNearNeutral)
      ? whitesPaths(context)
      : [],
    mixes: hasMixing(context),
    maps: hasMixing(context) ? reachedWhites(context).map((white) => mapPath(white, context)) : [],
    cards: cardSizes(context.records.workshop).map((size) =>
      cardsPaths(worked.cards, size, context),
    ),
  }));
}
