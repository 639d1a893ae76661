import type { DrierMetal } from "../../drying/added-drier.ts";
import type { ContributionStatement } from "../../drying/contribution.ts";
import type { Oil } from "../../drying/oils.ts";
import type { Statement, WordingsOf } from "../../quantities/statement.ts";
import { byRule } from "../by-rule.ts";
import {
  degrees,
  listed,
  micrometres,
  sentence,
  significant,
  withUnit,
} from "./statements-phrases.ts";

const OILS: Readonly<Record<Oil, string>> = {
  linseed: "Linseed oil",
  walnut: "Walnut oil",
  safflower: "Safflower oil",
  poppy: "Poppy oil",
  "stand linseed": "Linseed stand oil",
};
const METALS: Readonly<Record<DrierMetal, string>> = {
  cobalt: "Cobalt",
  manganese: "Manganese",
  lead: "Lead",
  zirconium: "Zirconium",
  calcium: "Calcium",
  zinc: "Zinc",
};

/** What a contribution to drying is of, in a word or two; its sentence says the rest. */
const CONTRIBUTION_NAMES: WordingsOf<ContributionStatement> = {
  "linseed-sets-the-days": ({ oil }) => OILS[oil],
  "oil-slower-than-linseed": ({ oil }) => OILS[oil],
  "vehicle-not-stated": () => "Oil, not recorded",
  "pigment-speeds-drying": named,
  "white-speeds-drying": named,
  "pigment-slows-drying": named,
  "white-slows-drying": named,
  "pigment-takes-no-part-in-drying": named,
  "white-takes-no-part-in-drying": named,
  "brown-earth-not-told": named,
  "pigment-parts-not-recorded": ({ pigments }) => upper(listed(pigments)),
  "added-drier": drier,
  "carbon-takes-up-drier": drier,
  "film-as-classed": film,
  "thick-film-slows": film,
  "thin-film-speeds": film,
  "temperature-as-classed": room,
  "cold-slows": room,
  "warmth-speeds": room,
};

/** @throws RangeError for a sentence that is of no contribution. */
export function contributionName({ rule, values }: Statement): string {
  const name = byRule<ContributionStatement>(CONTRIBUTION_NAMES)[rule];
  if (name === undefined)
    throw new RangeError(
      `The contribution to drying is ${rule}; right would be one of a pigment, oil, drier, film or room`,
    );
  return name(values);
}

function named({ pigment }: { readonly pigment: string }): string {
  return upper(pigment);
}

function drier({
  metal,
  percentOnOil,
}: {
  readonly metal: DrierMetal;
  readonly percentOnOil: number;
}): string {
  return `${METALS[metal]} drier, ${withUnit(significant(percentOnOil, 2), "%")} on oil`;
}

function film({ filmThicknessUm }: { readonly filmThicknessUm: number }): string {
  return `Wet film, ${micrometres(filmThicknessUm)}`;
}

function room({ temperatureC }: { readonly temperatureC: number }): string {
  return `Room, ${degrees(temperatureC)}`;
}

function upper(text: string): string {
  return sentence(text).slice(0, -1);
}
