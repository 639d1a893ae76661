import type { ParticleClass } from "../../formulation/particle-class.ts";
import type { FormulationStatement } from "../../formulation/statements.ts";
import type { ValuesOf } from "../../quantities/statement.ts";
import { FINISHES, wordOf } from "../closed-sets.ts";
import type { InOthers } from "../in-each.ts";
import {
  decimals,
  listed,
  micrometres,
  sentence,
  significant,
  within,
  withUnit,
} from "./phrases.ts";

export const GRAINS: Readonly<Record<ParticleClass, string>> = {
  "fine carbon": "un carbono fino",
  fine: "un pigmento fino",
  coarse: "un pigmento grueso",
};

type Of<R extends FormulationStatement["rule"]> = ValuesOf<FormulationStatement, R>;

/** From the first to the last class that an estimate reaches into. */
export function fromTo(
  spans: readonly string[],
  words: Readonly<Record<string, InOthers>>,
): string {
  return `de ${wordOf(words, spans[0] ?? "", "es")} a ${wordOf(words, spans.at(-1) ?? "", "es")}`;
}

export function expectedText(finishes: readonly string[]): string {
  return listed(
    finishes.map((one) => wordOf(FINISHES, one, "es")),
    "or",
  );
}

export function fillsTheGaps({
  oilCm3Per100Cm3,
}: Pick<Of<"middling-oil-demand">, "oilCm3Per100Cm3">): string {
  return `${withUnit(significant(oilCm3Per100Cm3, 2), "cm\u00b3")} de aceite llenan los huecos de 100\u00a0cm\u00b3 de pigmento`;
}

export function times(ratio: number): string {
  return `${decimals(ratio, 1)} veces`;
}

export function finish(
  { finish: expected, reducedPvc, spans }: Of<"oil-in-excess">,
  because: string,
): string {
  const reach = spans.length > 1 ? `; la estimación va ${fromTo(spans, FINISHES)}` : "";
  return sentence(
    `${FINISHES[expected].es} previsible: la PVC es ${decimals(reducedPvc, 2)} veces la CPVC efectiva, así que ${because}${reach}`,
  );
}

export function gauge({ finenessOfGrindUm, limitUm }: Of<"opened-by-fineness">): string {
  return `la galga marca ${micrometres(finenessOfGrindUm)} (hasta ${micrometres(limitUm)} se considera bien molido)`;
}

export function filling({ pigment, massG, takenMl }: Of<"fills-the-jar">): string {
  return `${withUnit(significant(massG, 3), "g")} de ${within(pigment)} seco ocupan ${withUnit(significant(takenMl, 2), "ml")}, de asentado a vertido: eso`;
}
