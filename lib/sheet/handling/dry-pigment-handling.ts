import { studioCautions } from "../../hazard/studio/studio-cautions.ts";
import { sourceFigure } from "../../quantities/figure.ts";
import type { Checked, Records } from "../../records/records.ts";
import type { PigmentRecord } from "../../records/schema/pigment.ts";
import { dryPigmentPart } from "./handled-part.ts";
import { pigmentIngredients } from "./hazard-ingredients.ts";
import { rulingsNamed } from "./label-part.ts";
import { pigmentPart } from "../pigments/pigment-parts.ts";
import type { CautionsSection, HandledPart } from "./handling-sections.ts";
import { studioPigment } from "./studio-pigment.ts";

export interface DryPigmentHandling {
  readonly part: HandledPart;
  /** Of weighing and mulling: what comes after is the paint's. */
  readonly cautions: CautionsSection["studio"];
}

/** What a dry pigment calls for, whether or not a colour is made from it. */
export function dryPigmentHandling(
  pigment: Checked<PigmentRecord>,
  records: Records,
): DryPigmentHandling {
  const part = dryPigmentPart(pigment.slug, records);
  const whole = pigmentPart(
    pigment,
    sourceFigure("stated", 1, { unit: "1", method: "the dry pigment alone", inputs: [] }),
    records,
  );
  const ingredients = pigmentIngredients(pigment.slug, 1, records);
  const named = rulingsNamed([whole, ...ingredients]);
  const cautions = studioCautions(
    [studioPigment(whole, part.hazardStatements, records)],
    {
      ingredients,
      hazardStatements: part.hazardStatements,
      ofDust: [],
      sensitisers: [],
      dryingOil: false,
    },
    records.hazardKnowledge,
  );
  return {
    part,
    cautions: cautions
      .filter(({ operation }) => operation === "weighing and mulling")
      .map((caution) => ({ ...named(caution), reason: named(caution.reason) })),
  };
}
