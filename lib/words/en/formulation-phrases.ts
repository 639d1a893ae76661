import type { ParticleClass } from "../../formulation/particle-class.ts";
import type { FormulationStatement } from "../../formulation/statements.ts";
import type { ValuesOf } from "../../quantities/statement.ts";
import { decimals, micrometres, sentence, significant, within, withUnit } from "./phrases.ts";

export const GRAINS: Readonly<Record<ParticleClass, string>> = {
  "fine carbon": "fine carbon",
  fine: "a fine pigment",
  coarse: "a coarse pigment",
};

type Of<R extends FormulationStatement["rule"]> = ValuesOf<FormulationStatement, R>;

/** From the first to the last class that an estimate reaches into. */
export function fromTo(spans: readonly string[]): string {
  return `from ${spans[0] ?? ""} to ${spans.at(-1) ?? ""}`;
}

export function fillsTheGaps({
  oilCm3Per100Cm3,
}: Pick<Of<"middling-oil-demand">, "oilCm3Per100Cm3">): string {
  return `${withUnit(significant(oilCm3Per100Cm3, 2), "cm\u00b3")} of oil fill the gaps of 100\u00a0cm\u00b3 of pigment`;
}

export function times(ratio: number): string {
  return `${decimals(ratio, 1)} times`;
}

export function finish(
  { finish: expected, reducedPvc, spans }: Of<"oil-in-excess">,
  because: string,
): string {
  const reach = spans.length > 1 ? `; the estimate reaches ${fromTo(spans)}` : "";
  return sentence(
    `${expected} expected: PVC is ${decimals(reducedPvc, 2)} of the effective CPVC, so ${because}${reach}`,
  );
}

export function gauge({ finenessOfGrindUm, limitUm }: Of<"opened-by-fineness">): string {
  return `the gauge reads ${micrometres(finenessOfGrindUm)} (up to ${micrometres(limitUm)} counts as well ground)`;
}

export function filling({ pigment, massG, takenMl }: Of<"fills-the-jar">): string {
  return `${withUnit(significant(massG, 3), "g")} of dry ${within(pigment)} take ${withUnit(significant(takenMl, 2), "ml")}, from settled to poured:`;
}
