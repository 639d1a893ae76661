import type { PageView, LinkView } from "../present/views.ts";
import { batchPlan, type BatchPlan, type Wanted } from "../lots/batch-plan.ts";
import { noBatch, ofTubes } from "../pages/batch-view.ts";
import type { PageContext, PagePlace } from "../pages/page-context.ts";
import { mullingCautions } from "../pages/studio-cautions.ts";
import { pageOfSheet } from "../pages/page-of-sheet.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { statementText } from "../present/statement-text.ts";
import { given } from "../quantities/given.ts";
import type { Lot } from "../records/records.ts";
import { quantityText } from "../words/number-text.ts";
import type { Words } from "../words/words.ts";
import {
  firstWanted,
  pigmentInG,
  planMatter,
  planOfLot,
  type PlanMatter,
} from "./batch-plan-matter.ts";
import { lotAddress } from "./lot-words.ts";
import { packedRemarks } from "./packed-remarks.ts";
import { oilOfDeliveries } from "./supplier-lots.ts";
import { workshopHead } from "./workshop-frame.ts";

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

/** Of a pigment whose rub-out takes all the oil there is, a new lot of it perhaps: whoever stands at the slab should know. */
const TOO_LITTLE_OIL: ReadonlySet<string> = new Set([
  "oil-index-below-rub-out",
  "rub-out-takes-all-the-oil",
]);

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
  return {
    ...head,
    sheet: {
      ...(lot === undefined && { reckoner: reckonerOf(matter, wanted, places, words) }),
      words: text,
      rows: planRows(plan, matter, text.rows, (massG) => words.numbers.decimal(massG, places)),
      comesOut:
        plan.yieldMl === undefined
          ? ""
          : text.comesOut(
              quantityText(plan.yieldMl, (ml) => words.numbers.decimal(ml, 0), words.about),
            ),
      remarks: [
        ...ofTubes(page),
        ...oilRemarks(worded, ownOil, words),
        lossRemark(worded, matter, context),
        ...matter.fills
          .filter(({ ml, reallyMl }) => reallyMl !== ml)
          .map(({ ml, reallyMl }) =>
            text.fill(words.numbers.plain(ml), words.numbers.decimal(reallyMl, 1)),
          ),
        ...packedRemarks(worded, context, places, lot),
        text.step(words.numbers.plain(matter.stepG)),
      ],
      order: sheet.dispersion === "mulled" ? text.order.mulled : text.order.milled,
      cautionsHeading: text.cautions,
      cautions: [...mullingCautions(page), words.pages.ragLine, text.defer],
      fields: blanks(lot, words),
    },
  };
}

/** What rub-outs of the deliveries say of the oil, and whether it is too little. */
function oilRemarks(
  { sheet }: SheetTexts,
  ownOil: ReturnType<typeof oilOfDeliveries>,
  words: Words,
): string[] {
  const { batchSheet: text } = words.pages.lots;
  const said =
    ownOil === undefined
      ? [...sheet.oil.contradictions, ...(sheet.batch?.reasons ?? [])]
      : given([ownOil.contradiction, ownOil.held.reason]);
  return [
    ...(ownOil?.rubbedOut ?? []).map(({ pigment, number, oilAbsorptionGPer100g }) =>
      text.rubbedOut(
        sheet.pigments.find(({ slug }) => slug === pigment)?.name ?? pigment,
        number,
        words.numbers.plain(oilAbsorptionGPer100g),
      ),
    ),
    ...said.filter(({ rule }) => TOO_LITTLE_OIL.has(rule)).map((one) => statementText(one, words)),
  ];
}

/** What stays on the slab, by earlier lots or by custom. */
function lossRemark(
  { sheet }: SheetTexts,
  { recipe }: PlanMatter,
  { words, records }: PageContext,
): string {
  const { loss: text } = words.pages.lots.batchSheet;
  const lots = records.colours.get(sheet.slug)?.lotYields ?? [];
  const loss = quantityText(
    recipe.loss,
    (share) => words.numbers.decimal(100 * share, 1),
    words.about,
  );
  return lots.length === 0 ? text.customary(loss) : text.learnt(loss, lots.length);
}

/** Blanks to write in; of a planned lot its number and day stand there. */
function blanks(
  lot: Lot | undefined,
  words: Words,
): { readonly name: string; readonly value?: string }[] {
  const { fields: text } = words.pages.lots.batchSheet;
  const known = (name: string, value: string | undefined) => ({
    name,
    ...(value !== undefined && { value }),
  });
  return [
    known(text.lot, lot?.record.number),
    known(text.name, undefined),
    known(text.date, lot && words.date(lot.record.date)),
    ...[text.passes, text.fineness, text.left, text.yield, text.tubes, text.sample].map((name) =>
      known(name, undefined),
    ),
  ];
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
