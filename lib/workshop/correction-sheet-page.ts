import type { Correction } from "../lots/correction.ts";
import { inSteps } from "../lots/batch-plan.ts";
import type { PageContext, PagePlace } from "../pages/page-context.ts";
import type { Lot } from "../records/records.ts";
import { CUSTOMARY_STEP_G } from "./batch-plan-matter.ts";
import type { BatchSheetView } from "./batch-sheet-page.ts";
import { foreignIngredients } from "./foreign-ingredients.ts";
import { lotAddress } from "./lot-words.ts";
import { workshopHead } from "./workshop-frame.ts";
import { weighedInG } from "../records/made-of.ts";
import { given } from "../quantities/given.ts";

/** Of the lot, tried before the rest is touched [g]. Our own choice: enough for two drawdowns. */
const TRIAL_G = 20;

/** What to weigh to bring a lot back, a trial of it first: to print and take to the slab. */
export function correctionSheetPage(
  lot: Lot,
  { candidate, gramsPer100g, predicted }: Correction,
  context: PageContext,
  { root }: PagePlace,
): BatchSheetView {
  const { words, records } = context;
  const { batchSheet: text, correctionSheet: own } = words.pages.lots;
  const { number, yieldG } = lot.record;
  const stepG = records.workshop.balanceStepG ?? CUSTOMARY_STEP_G;
  const places = Math.max(0, Math.ceil(-Math.log10(stepG)));
  const grams = (massG: number): string => words.numbers.decimal(inSteps(massG, stepG), places);
  const lotG = yieldG ?? weighedInG(lot.record);
  const trialG = Math.min(TRIAL_G, lotG);
  const restG = lotG - trialG;
  const addedTo = (massG: number): number => (massG * gramsPer100g) / 100;
  const rows: readonly (readonly [string, number])[] = [
    [own.rows.trialLot, trialG],
    [own.rows.trialAdded(candidate.name), addedTo(trialG)],
    ...(restG > 0
      ? ([
          [own.rows.restLot, restG],
          [own.rows.restAdded(candidate.name), addedTo(restG)],
        ] as const)
      : []),
    [text.rows.paint, lotG + addedTo(lotG)],
  ];
  const colour = records.colours.get(lot.record.colour);
  const foreign = colour === undefined ? [] : foreignIngredients(candidate, colour, context);
  const classified = context.sheets.find(({ sheet }) => sheet.slug === candidate.slug)?.sheet
    .cautions.hazardStatements;
  return {
    kind: "batch-sheet",
    ...workshopHead(context, own.heading(number), own.description(number)),
    back: { text: text.backToLot(number), href: `${root}${lotAddress(lot.slug)}` },
    sheet: {
      words: text,
      rows: rows.map(([name, massG]) => ({ name, planned: grams(massG) })),
      comesOut: own.predicted(
        words.numbers.decimal(predicted.masstoneDeltaE00, 2),
        words.numbers.decimal(predicted.letDownDeltaE00, 2),
        words.numbers.decimal(predicted.strengthPercent, 1),
      ),
      remarks: [
        yieldG === undefined ? own.ofWeighed(grams(lotG)) : own.ofYield(grams(lotG)),
        own.dose(words.numbers.decimal(gramsPer100g, 1), candidate.name),
        text.step(words.numbers.plain(stepG)),
      ],
      order: own.order,
      cautionsHeading: own.cautions,
      cautions: given([
        foreign.length > 0 &&
          words.pages.lots.lot.correctionForeign(candidate.name, words.listed(foreign)),
        ...(classified === undefined || classified.length === 0
          ? []
          : [own.classified(candidate.name, words.listed(classified))]),
        words.pages.ragLine,
        text.defer,
      ]),
      fields: [
        { name: text.fields.lot },
        { name: text.fields.name },
        { name: text.fields.date },
        { name: own.fields.masstone },
        { name: own.fields.letDown },
        { name: own.fields.strength },
        { name: text.fields.yield },
        { name: text.fields.tubes },
        { name: text.fields.sample },
      ],
    },
  };
}
