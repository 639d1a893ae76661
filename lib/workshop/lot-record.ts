import { batchPlan } from "../lots/batch-plan.ts";
import type { PageContext } from "../pages/page-context.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { lotsOf } from "../sheet/lots/lot-book.ts";
import { firstWanted, planMatter } from "./batch-plan-matter.ts";

/**
 * A new lot's record as text, with as much planned as the last lot was, to be corrected as it is made.
 * @param number as it will stand on the tube. @param date YYYY-MM-DD.
 * @returns undefined where nothing can be weighed out: oil index or parts are not known.
 */
export function plannedLotRecord(
  worded: SheetTexts,
  context: PageContext,
  number: string,
  date: string,
): string | undefined {
  const { sheet } = worded;
  const matter = planMatter(worded, context);
  if (matter === undefined || sheet.vehicle === undefined) return undefined;
  const { fills, recipe, stepG } = matter;
  const wanted = firstWanted(sheet.slug, context);
  const plan = batchPlan(recipe, wanted, fills[0]?.reallyMl ?? 1, stepG);
  // What earlier lots were read as, the new one is: only the same white and ratio can be held against the standard.
  const letDown =
    lotsOf(sheet.slug, context.records).findLast(({ letDowns }) => letDowns.length > 0)
      ?.letDowns[0] ?? context.records.colours.get(sheet.slug)?.tints[0];
  const lost = recipe.loss[0] / 2 + recipe.loss[1] / 2;
  return `number: ${JSON.stringify(number)}
colour: ${sheet.slug}
date: ${date}
# Take this line out once it is made, and put the weights as they were.
planned: true
pigments:
${sheet.pigments.map(({ slug }, i) => `  - { pigment: ${slug}, massG: ${plan.pigments[i]?.massG ?? 0} }`).join("\n")}
# ${plan.oilAtFirstG} g to begin with, ${plan.oilHeldBackG} g held back.
oil: { vehicle: ${sheet.vehicle.slug}, massG: ${plan.oilG} }
${
  plan.additions.length === 0
    ? ""
    : `additions:\n${sheet.additions.map(({ slug }, i) => `  - { vehicle: ${slug}, massG: ${plan.additions[i]?.massG ?? 0} }`).join("\n")}\n`
}${sheet.dispersion === undefined ? "# dispersion: milled   # or mulled\n" : `dispersion: ${sheet.dispersion}\n`}# passes: 3
# finenessOfGrindUm: 20
# densityGPerCm3: 1.5
# retainedSample: R-1
# yieldG: ${Math.round(plan.paintG * (1 - lost))}
# tubes: [{ ml: ${fills[0]?.ml ?? 40}, count: 0, massG: 0 }]
# masstone: { reading: my-file.csv, column: [masstone 1, masstone 2] }
# tints:
#   - { white: ${letDown?.white ?? "titanium-white"}, massRatio: "${letDown?.massRatio ?? "1:20"}", ratioKind: ${letDown?.ratioKind ?? "paint"}, reading: my-file.csv, column: [let-down 1, let-down 2] }
`;
}
