import type { ParticleClass } from "../../formulation/particle-class.ts";
import type { FormulationStatement } from "../../formulation/statements.ts";
import type { ValuesOf } from "../../quantities/statement.ts";
import { FINISHES, wordOf } from "../closed-sets.ts";
import type { InOthers } from "../in-each.ts";
import {
  decimals,
  listed,
  micrometres,
  of,
  sentence,
  significant,
  within,
  withUnit,
} from "./phrases.ts";

export const GRAINS: Readonly<Record<ParticleClass, string>> = {
  "fine carbon": "un carbone fin",
  fine: "un pigment fin",
  coarse: "un pigment grossier",
};

type Of<R extends FormulationStatement["rule"]> = ValuesOf<FormulationStatement, R>;

/** From the first to the last class that an estimate reaches into. */
export function fromTo(
  spans: readonly string[],
  words: Readonly<Record<string, InOthers>>,
): string {
  return `de ${wordOf(words, spans[0] ?? "", "fr")} à ${wordOf(words, spans.at(-1) ?? "", "fr")}`;
}

export function expectedText(finishes: readonly string[]): string {
  return listed(
    finishes.map((one) => wordOf(FINISHES, one, "fr")),
    "or",
  );
}

export function fillsTheGaps({
  oilCm3Per100Cm3,
}: Pick<Of<"middling-oil-demand">, "oilCm3Per100Cm3">): string {
  return `${withUnit(significant(oilCm3Per100Cm3, 2), "cm\u00b3")} d’huile comblent les vides de 100\u00a0cm\u00b3 de pigment`;
}

export function times(ratio: number): string {
  return `${decimals(ratio, 1)} fois`;
}

export function finish(
  { finish: expected, reducedPvc, spans }: Of<"oil-in-excess">,
  because: string,
): string {
  const reach = spans.length > 1 ? `\u202f; l’estimation va ${fromTo(spans, FINISHES)}` : "";
  return sentence(
    `${FINISHES[expected].fr} à prévoir\u202f: la CPV vaut ${decimals(reducedPvc, 2)} fois la CPVC effective, donc ${because}${reach}`,
  );
}

export function gauge({ finenessOfGrindUm, limitUm }: Of<"opened-by-fineness">): string {
  return `la jauge marque ${micrometres(finenessOfGrindUm)} (jusqu’à ${micrometres(limitUm)} on le tient pour bien broyé)`;
}

export function filling({ pigment, massG, takenMl }: Of<"fills-the-jar">): string {
  return `${withUnit(significant(massG, 3), "g")} ${of(within(pigment))} sec occupent ${withUnit(significant(takenMl, 2), "ml")}, tassé ou non\u202f: cela`;
}
