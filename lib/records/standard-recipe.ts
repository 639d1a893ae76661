import { CUSTOMARY_TOLERANCES } from "../lots/judgement.ts";
import { amountEnds } from "./amount-ends.ts";
import { warningAt, type Faults } from "./fault.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { ColourRecord } from "./schema/colour.ts";

type Tolerant = Pick<ColourRecord, "tolerances">;

/** What the oil index of a colour's lots may differ by [%]: its own, the workshop's, or the customary. */
export function oilIndexTolerance(colour: Tolerant, workshop: Tolerant | undefined): number {
  return (
    colour.tolerances?.oilIndexPercent ??
    workshop?.tolerances?.oilIndexPercent ??
    CUSTOMARY_TOLERANCES.oilIndexPercent
  );
}

/**
 * A standard of another recipe than the record's: a lot is held against the look of the one and the oil of the
 * other, and neither a lot of the old recipe nor one of the new can agree with both.
 */
export function* standardRecipeFaults({ colours, lots, workshop }: ParsedFiles): Faults {
  for (const { slug, record, yaml } of colours.values()) {
    const standard = lots.get(record.standard ?? "")?.record;
    // Another colour's lot is told by itself.
    if (standard?.colour !== slug) continue;
    const [recorded, ...ends] = amountEnds(record.oilIndexGPer100g, ["oilIndexGPer100g"]);
    if (standard.oil === undefined || recorded === undefined || ends.length > 0) continue;
    const pigmentG = standard.pigments.reduce((sum, { massG }) => sum + massG, 0);
    const weighed = (100 * standard.oil.massG) / pigmentG;
    const percent = oilIndexTolerance(record, workshop?.record);
    if (Math.abs(weighed - recorded.value) <= (recorded.value * percent) / 100) continue;
    yield warningAt(yaml.place(recorded.path), "records/standard-recipe", {
      message: `The standard ${standard.number} has ${Number(weighed.toPrecision(3))} g of oil to 100 g of pigment, and the record ${recorded.value} g: lots are held against the standard's look and the record's oil`,
      actual: String(recorded.value),
      expected: `what the standard was made with, within ${percent} %`,
      hint: "after a change of recipe a lot of the new one is the standard",
    });
  }
}
