import type { Statement } from "../../quantities/statement.ts";
import { degrees, micrometres, significant, withUnit } from "./statements-phrases.ts";
import { hasValue, numberOf, textOf } from "./statement-params.ts";

const OILS: Readonly<Record<string, string>> = {
  linseed: "Linseed oil",
  walnut: "Walnut oil",
  safflower: "Safflower oil",
  poppy: "Poppy oil",
  "stand linseed": "Linseed stand oil",
};
const METALS: Readonly<Record<string, string>> = {
  cobalt: "Cobalt",
  manganese: "Manganese",
  lead: "Lead",
  zirconium: "Zirconium",
  calcium: "Calcium",
  zinc: "Zinc",
};

/** What a contribution to drying is of, in a word or two; its sentence says the rest. */
export function contributionName({ rule, values }: Statement): string {
  if (hasValue(values, "pigment")) return upper(textOf(values, "pigment"));
  if (hasValue(values, "metal"))
    return `${METALS[textOf(values, "metal")] ?? textOf(values, "metal")} drier, ${withUnit(significant(numberOf(values, "percentOnOil"), 2), "%")} on oil`;
  if (hasValue(values, "oil")) return OILS[textOf(values, "oil")] ?? textOf(values, "oil");
  if (hasValue(values, "filmThicknessUm"))
    return `Wet film, ${micrometres(numberOf(values, "filmThicknessUm"))}`;
  if (hasValue(values, "temperatureC")) return `Room, ${degrees(numberOf(values, "temperatureC"))}`;
  if (rule === "vehicle-not-stated") return "Oil, not recorded";
  throw new RangeError(
    `The contribution to drying is ${rule}; right would be one of a pigment, oil, drier, film or room`,
  );
}

function upper(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
