import { inSteps, type BatchPlan, type Wanted } from "../lots/batch-plan.ts";
import { learntFillMl } from "../lots/learnt-yield.ts";
import type { BatchRecipe } from "../formulation/batch.ts";
import { spannedRecipe } from "../pages/batch-view.ts";
import type { PageContext } from "../pages/page-context.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { type Quantity, ends, midpoint } from "../quantities/interval.ts";
import { weighedInG } from "../records/made-of.ts";
import type { Lot } from "../records/records.ts";
import { lotsOf } from "../sheet/lots/lot-book.ts";

/** Without one in workshop.yaml [g]. Our own choice: kitchen scales and laboratory balances have it or finer. */
export const CUSTOMARY_STEP_G = 0.1;
/** Of what a sheet is first filled for, where no lot is on record [g]. */
const FIRST_PIGMENT_G = 500;
/** So far [1] a lot's weights may lie from the plan's, and what should come out is still the plan's. */
const AS_PLANNED = 0.02;

/** What the browser's script reckons a plan from, beside what is wanted. */
export interface PlanMatter {
  readonly recipe: Omit<BatchRecipe, "tubeMl">;
  /** Of each size of tube, what one really takes [ml]. */
  readonly fills: readonly { readonly ml: number; readonly reallyMl: number }[];
  readonly stepG: number;
}

/** What a plan of a colour rests on: its recipe, and what its earlier lots lost and filled; undefined where nothing can be weighed out. */
export function planMatter(worded: SheetTexts, context: PageContext): PlanMatter | undefined {
  const { sheet } = worded;
  const { records } = context;
  if (sheet.batch === undefined) return undefined;
  const spanned = spannedRecipe(sheet.batch, sheet);
  const lots = lotsOf(sheet.slug, records).filter(({ record }) => record.planned !== true);
  const sizes = [...new Set((records.colours.get(sheet.slug)?.sizes ?? []).map(({ ml }) => ml))];
  const filled = lots.flatMap(({ record: { tubes = [], densityGPerCm3 } }) =>
    tubes.flatMap(({ ml, massG }) =>
      massG === undefined || densityGPerCm3 === undefined ? [] : [{ ml, massG, densityGPerCm3 }],
    ),
  );
  const middle = (value: Quantity | undefined): number | undefined =>
    value === undefined ? undefined : midpoint(value);
  return {
    recipe: {
      pigments: spanned.pigments.map(({ massFraction }, i) => ({
        name: sheet.pigments[i]?.name ?? "",
        massFraction,
        densityGPerCm3: middle(spanned.pigmentDensityGPerCm3),
      })),
      oilIndexGPer100g: midpoint(spanned.oilIndexGPer100g),
      oil: { name: sheet.vehicle?.name ?? "", densityGPerCm3: middle(spanned.oil.densityGPerCm3) },
      additions: spanned.additions.map(({ percent, densityGPerCm3 }, i) => ({
        name: sheet.additions[i]?.name ?? "",
        percent,
        of: "oil",
        densityGPerCm3: middle(densityGPerCm3),
      })),
      ...(spanned.paintDensityGPerCm3 !== undefined && {
        paintDensityGPerCm3: spanned.paintDensityGPerCm3,
      }),
      holdBack: ends(spanned.holdBack),
      loss: ends(spanned.loss),
    },
    fills: sizes.map((ml) => ({ ml, reallyMl: learntFillMl(filled, ml) ?? ml })),
    stepG: records.workshop.balanceStepG ?? CUSTOMARY_STEP_G,
  };
}

/** As the last lot was, else a first one. */
export function firstWanted(colour: string, { records }: PageContext): Wanted {
  const last = lotsOf(colour, records).at(-1);
  return {
    pigmentG: last === undefined ? FIRST_PIGMENT_G : Math.round(pigmentInG(last) / 10) * 10,
  };
}

/** All pigment that went into a lot [g]. */
export function pigmentInG({ record }: Lot): number {
  return record.pigments.reduce((sum, { massG }) => sum + massG, 0);
}

/** The plan with the weights that a lot's record has; what should come out only where these are the plan's. */
export function planOfLot(
  plan: BatchPlan,
  { record }: Lot,
  { recipe, stepG }: PlanMatter,
): BatchPlan {
  const oilG = record.oil?.massG ?? 0;
  const heldBackG = inSteps(oilG * midpoint(recipe.holdBack), stepG);
  const masses = (planned: BatchPlan["pigments"], own: readonly { readonly massG: number }[]) =>
    planned.map(({ name }, i) => ({ name, massG: own[i]?.massG ?? 0 }));
  const paintG = weighedInG(record);
  const isAsPlanned = Math.abs(paintG - plan.paintG) < AS_PLANNED * plan.paintG;
  const { yieldMl, ...rest } = plan;
  return {
    ...rest,
    pigments: masses(plan.pigments, record.pigments),
    oilG,
    oilAtFirstG: inSteps(oilG - heldBackG, stepG),
    oilHeldBackG: heldBackG,
    additions: masses(plan.additions, record.additions ?? []),
    paintG: inSteps(paintG, stepG),
    ...(yieldMl === undefined || !isAsPlanned ? {} : { yieldMl }),
  };
}
