import { blueWool, customaryCategory } from "../permanence/blue-wool.ts";
import { categoryOf } from "../permanence/expected-lightfastness.ts";
import { categoriesBelow, type LightfastnessCategory } from "../permanence/lightfastness.ts";
import { warningAt } from "./fault.ts";
import type { OwnRule } from "./own-faults.ts";
import type { PigmentRecord } from "./schema/pigment.ts";

/** Categories [1] from which a supplier's word and what its kind leads one to expect contradict each other. Our own limit. */
const APART = 2;

/** A supplier's word on a pigment in light that is far from all that its kind leads one to expect: another pigment's, or another scale. */
export const statedLightfastness: OwnRule<PigmentRecord> = function* (
  { record, yaml },
  { knowledge },
) {
  const { lightfastness, colourIndexName } = record;
  const { lightfastness: expected } = knowledge.pigment(colourIndexName);
  const stated = statedCategory(lightfastness);
  if (lightfastness === undefined || expected === undefined || stated === undefined) return;
  const { form } = lightfastness;
  const expectations = form === undefined ? [expected.masstone, expected.tint] : [expected[form]];
  const apart = expectations.map((one) => categoriesBelow(stated, categoryOf(one)));
  if (!apart.every((steps) => Math.abs(steps) >= APART)) return;
  const words = [...new Set(expectations)].join(" to ");
  const key = lightfastness.category === undefined ? "blueWool" : "category";
  const told = key === "category" ? `category ${stated}` : `blue wool ${lightfastness.blueWool}`;
  yield warningAt(yaml.place(["lightfastness", key]), "records/lightfastness", {
    message: `${record.name} is stated as ${told}, and ${words} is expected of ${colourIndexName ?? ""} (${expected.kinds}): the sheet goes by what is stated`,
    actual: told,
    expected: words,
    hint:
      (apart[0] ?? 0) < 0
        ? "of another pigment, of its masstone alone, or a dyer's word?"
        : "a category and a blue wool reference exchanged?",
    source: expected.source,
  });
};

function statedCategory(stated: PigmentRecord["lightfastness"]): LightfastnessCategory | undefined {
  if (stated?.category !== undefined) return stated.category;
  return stated?.blueWool === undefined
    ? undefined
    : customaryCategory(blueWool(stated.blueWool)).row.category;
}
