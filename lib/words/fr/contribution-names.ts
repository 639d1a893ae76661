import type { DrierMetal } from "../../drying/added-drier.ts";
import type { ContributionStatement } from "../../drying/contribution.ts";
import type { Statement, WordingsOf } from "../../quantities/statement.ts";
import { byRule } from "../by-rule.ts";
import { upperFirst } from "../letter-case.ts";
import { DRIER_METALS, OILS } from "./closed-words.ts";
import { degrees, listed, micrometres, significant, withUnit } from "./phrases.ts";

/** What a contribution to drying is of, in a word or two; its sentence says the rest. */
const CONTRIBUTION_NAMES: WordingsOf<ContributionStatement> = {
  "linseed-sets-the-days": ({ oil }) => upperFirst(OILS[oil]),
  "oil-slower-than-linseed": ({ oil }) => upperFirst(OILS[oil]),
  "vehicle-not-stated": () => "Huile, non consignée",
  "pigment-speeds-drying": named,
  "white-speeds-drying": named,
  "pigment-slows-drying": named,
  "white-slows-drying": named,
  "pigment-takes-no-part-in-drying": named,
  "white-takes-no-part-in-drying": named,
  "brown-earth-not-told": named,
  "pigment-parts-not-recorded": ({ pigments }) => upperFirst(listed(pigments)),
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
  return upperFirst(pigment);
}

function drier({
  metal,
  percentOnOil,
}: {
  readonly metal: DrierMetal;
  readonly percentOnOil: number;
}): string {
  return `Siccatif au ${DRIER_METALS[metal]}, ${withUnit(significant(percentOnOil, 2), "%")} sur l’huile`;
}

function film({ filmThicknessUm }: { readonly filmThicknessUm: number }): string {
  return `Film humide, ${micrometres(filmThicknessUm)}`;
}

function room({ temperatureC }: { readonly temperatureC: number }): string {
  return `Pièce, ${degrees(temperatureC)}`;
}
