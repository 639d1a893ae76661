import type { PageView, LinkView } from "../present/views.ts";
import { batchPlan, inSteps, type BatchPlan, type Wanted } from "../lots/batch-plan.ts";
import { learntFillMl } from "../lots/learnt-yield.ts";
import type { BatchRecipe } from "../formulation/batch.ts";
import { noBatch, ofTubes, spannedRecipe } from "../pages/batch-view.ts";
import type { PageContext, PagePlace } from "../pages/page-context.ts";
import { mullingCautions } from "../pages/studio-cautions.ts";
import { pageOfSheet } from "../pages/page-of-sheet.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { statementText } from "../present/statement-text.ts";
import { type Quantity, ends, midpoint } from "../quantities/interval.ts";
import { packedRemarks } from "./packed-remarks.ts";
import type { Lot } from "../records/records.ts";
import { quantityText } from "../words/number-text.ts";
import type { Words } from "../words/words.ts";
import { lotsOf } from "../sheet/lots/lot-book.ts";

import { lotAddress } from "./lot-words.ts";
import { oilOfDeliveries } from "./supplier-lots.ts";
import { workshopHead } from "./workshop-frame.ts";
import { weighedInG } from "../records/made-of.ts";

/** A batch to print on one page: what to weigh, blanks, order of work, cautions. */
export interface BatchSheetView extends PageView {
  readonly kind: "batch-sheet";
  readonly back: LinkView;
  /** Why nothing can be weighed out, in place of the rest. */
  readonly withheld?: string;
  readonly sheet?: {
    /** What another amount is reckoned by; absent where the amounts are a lot's own. */
    readonly reckoner?: {
      /** JSON for assets/scripts/batch-sheet.ts. */
      readonly plan: string;
      readonly amountValue: string;
      readonly units: readonly { readonly value: string; readonly text: string }[];
    };
    readonly words: Words["pages"]["lots"]["batchSheet"];
    readonly rows: readonly {
      readonly name: string;
      /** What the script fills anew for another amount. */
      readonly figure?: string;
      readonly planned: string;
    }[];
    readonly comesOut: string;
    readonly remarks: readonly string[];
    readonly order: readonly string[];
    readonly cautionsHeading: string;
    readonly cautions: readonly string[];
    /** Blanks to write in, filled in where it is known already. */
    readonly fields: readonly { readonly name: string; readonly value?: string }[];
  };
}

/** Without one in workshop.yaml [g]. Our own choice: kitchen scales and laboratory balances have it or finer. */
export const CUSTOMARY_STEP_G = 0.1;
/** Of what a sheet is first filled for, where no lot is on record [g]. */
const FIRST_PIGMENT_G = 500;
/** So far [1] a lot's weights may lie from the plan's, and what should come out is still the plan's. */
const AS_PLANNED = 0.02;

/** Of a pigment whose rub-out takes all the oil there is, a new lot of it perhaps: whoever stands at the slab should know. */
const TOO_LITTLE_OIL: ReadonlySet<string> = new Set([
  "oil-index-below-rub-out",
  "rub-out-takes-all-the-oil",
]);

/** What the browser's script reckons a plan from, beside what is wanted. */
interface PlanMatter {
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

function pigmentInG({ record }: Lot): number {
  return record.pigments.reduce((sum, { massG }) => sum + massG, 0);
}

/**
 * A page to print and take to the slab.
 * @param lot a planned one, whose number, day and weights stand on it; without it a batch of the
 *   colour, for whatever amount is asked of the page.
 */
export function batchSheetPage(
  worded: SheetTexts,
  context: PageContext,
  place: PagePlace,
  lot?: Lot,
): BatchSheetView {
  const { words, records } = context;
  const { batchSheet: text } = words.pages.lots;
  const { sheet } = worded;
  const usual = planMatter(worded, context);
  const ownOil = lot && oilOfDeliveries(lot, sheet, records);
  const matter =
    usual === undefined || ownOil === undefined
      ? usual
      : { ...usual, recipe: { ...usual.recipe, holdBack: ownOil.held.fraction } };
  const page = pageOfSheet(worded, context, place);
  const head = {
    kind: "batch-sheet" as const,
    ...workshopHead(context, text.heading(sheet.name), text.description(sheet.name)),
    back:
      lot === undefined
        ? { text: text.back(sheet.name), href: `${place.root}colours/${sheet.slug}/` }
        : { text: text.backToLot(lot.record.number), href: `${place.root}${lotAddress(lot.slug)}` },
  };
  if (matter === undefined) return { ...head, withheld: `${text.none} ${noBatch(page)}` };
  const wanted =
    lot === undefined ? firstWanted(sheet.slug, context) : { pigmentG: pigmentInG(lot) };
  const asked = batchPlan(matter.recipe, wanted, 1, matter.stepG);
  const plan = lot === undefined ? asked : planOfLot(asked, lot, matter);
  const places = Math.max(0, Math.ceil(-Math.log10(matter.stepG)));
  const lots = records.colours.get(sheet.slug)?.lotYields ?? [];
  const grams = (massG: number): string => words.numbers.decimal(massG, places);
  const loss = quantityText(
    matter.recipe.loss,
    (share) => words.numbers.decimal(100 * share, 1),
    words.about,
  );
  const lossText =
    lots.length === 0 ? text.loss.customary(loss) : text.loss.learnt(loss, lots.length);
  const steps = sheet.dispersion === "mulled" ? text.order.mulled : text.order.milled;
  return {
    ...head,
    sheet: {
      ...(lot === undefined && { reckoner: reckonerOf(matter, wanted, places, words) }),
      words: text,
      rows: planRows(plan, matter, text.rows, grams),
      comesOut:
        plan.yieldMl === undefined
          ? ""
          : text.comesOut(
              quantityText(plan.yieldMl, (ml) => words.numbers.decimal(ml, 0), words.about),
            ),
      remarks: [
        ...ofTubes(page),
        ...(ownOil?.rubbedOut ?? []).map(({ pigment, number, oilAbsorptionGPer100g }) =>
          text.rubbedOut(
            sheet.pigments.find(({ slug }) => slug === pigment)?.name ?? pigment,
            number,
            words.numbers.plain(oilAbsorptionGPer100g),
          ),
        ),
        ...(ownOil === undefined
          ? [...sheet.oil.contradictions, ...(sheet.batch?.reasons ?? [])]
          : [
              ...(ownOil.contradiction === undefined ? [] : [ownOil.contradiction]),
              ownOil.held.reason,
            ]
        )
          .filter(({ rule }) => TOO_LITTLE_OIL.has(rule))
          .map((one) => statementText(one, words)),
        lossText,
        ...matter.fills
          .filter(({ ml, reallyMl }) => reallyMl !== ml)
          .map(({ ml, reallyMl }) =>
            text.fill(words.numbers.plain(ml), words.numbers.decimal(reallyMl, 1)),
          ),
        ...packedRemarks(worded, context, places, lot),
        text.step(words.numbers.plain(matter.stepG)),
      ],
      order: steps,
      cautionsHeading: text.cautions,
      cautions: [...mullingCautions(page), words.pages.ragLine, text.defer],
      fields: [
        { name: text.fields.lot, ...(lot !== undefined && { value: lot.record.number }) },
        { name: text.fields.name },
        {
          name: text.fields.date,
          ...(lot !== undefined && { value: words.date(lot.record.date) }),
        },
        ...[
          text.fields.passes,
          text.fields.fineness,
          text.fields.left,
          text.fields.yield,
          text.fields.tubes,
          text.fields.sample,
        ].map((name) => ({ name })),
      ],
    },
  };
}

/** What the page's script reckons another amount by. */
function reckonerOf(
  matter: PlanMatter,
  wanted: Wanted,
  places: number,
  words: Words,
): NonNullable<NonNullable<BatchSheetView["sheet"]>["reckoner"]> {
  const text = words.pages.lots.batchSheet;
  return {
    plan: JSON.stringify({
      matter,
      places,
      mark: words.numbers.mark,
      texts: { comesOut: text.comesOut("{ml}"), about: words.about },
    }),
    amountValue: String("pigmentG" in wanted ? wanted.pigmentG : wanted.tubes),
    units: [
      { value: "pigmentG", text: text.units.pigmentG },
      ...matter.fills.map(({ ml }) => ({
        value: `tubes ${ml}`,
        text: text.units.tubes(words.numbers.plain(ml)),
      })),
    ],
  };
}

/** The plan with the weights that a lot's record has; what should come out only where these are the plan's. */
function planOfLot(plan: BatchPlan, { record }: Lot, { recipe, stepG }: PlanMatter): BatchPlan {
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

/** Lines in the order of the work: pigments, oil to begin with, oil held back, additions, all. */
function planRows(
  plan: BatchPlan,
  { recipe }: PlanMatter,
  names: { readonly first: string; readonly held: string; readonly paint: string },
  grams: (massG: number) => string,
): { name: string; figure: string; planned: string }[] {
  return [
    ...plan.pigments.map(({ name, massG }, i) => ({
      name,
      figure: `pigments.${i}`,
      planned: grams(massG),
    })),
    {
      name: `${names.first}, ${recipe.oil.name}`,
      figure: "oilAtFirstG",
      planned: grams(plan.oilAtFirstG),
    },
    { name: names.held, figure: "oilHeldBackG", planned: grams(plan.oilHeldBackG) },
    ...plan.additions.map(({ name, massG }, i) => ({
      name,
      figure: `additions.${i}`,
      planned: grams(massG),
    })),
    { name: names.paint, figure: "paintG", planned: grams(plan.paintG) },
  ];
}
