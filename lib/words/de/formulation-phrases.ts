import type { ParticleClass } from "../../formulation/particle-class.ts";
import type { Finish } from "../../formulation/finish.ts";
import type { FormulationStatement } from "../../formulation/statements.ts";
import type { ValuesOf } from "../../quantities/statement.ts";
import { FINISHES } from "../closed-sets.ts";
import {
  decimals,
  listed,
  micrometres,
  sentence,
  significant,
  within,
  withUnit,
} from "./phrases.ts";

/** Whose clumps hold oil, after "Agglomerate". */
export const GRAINS: Readonly<Record<ParticleClass, string>> = {
  "fine carbon": "feinen Kohlenstoffs",
  fine: "eines feinen Pigments",
  coarse: "eines groben Pigments",
};

type Of<R extends FormulationStatement["rule"]> = ValuesOf<FormulationStatement, R>;

/** From the first to the last class that an estimate reaches into. */
export function fromTo(classes: readonly string[]): string {
  return `von ${classes[0] ?? ""} bis ${classes.at(-1) ?? ""}`;
}

export function asRead(measured: Finish, expected: readonly Finish[]): string {
  return `Gemessen ${FINISHES[measured].de}, erwartet ${listed(
    expected.map((each) => FINISHES[each].de),
    "or",
  )}`;
}

export function fillsTheGaps({
  oilCm3Per100Cm3,
}: Pick<Of<"middling-oil-demand">, "oilCm3Per100Cm3">): string {
  return `${withUnit(significant(oilCm3Per100Cm3, 2), "cm\u00b3")} Öl füllen die Lücken von 100\u00a0cm\u00b3 Pigment`;
}

export function times(ratio: number): string {
  return `${decimals(ratio, 1)}-mal`;
}

export function factor(ratio: number): string {
  return decimals(ratio, 1);
}

export function finish(
  { finish: expected, reducedPvc, spans }: Of<"oil-in-excess">,
  because: string,
): string {
  const reach =
    spans.length > 1
      ? `; die Schätzung reicht ${fromTo(spans.map((each) => FINISHES[each].de))}`
      : "";
  return sentence(
    `${FINISHES[expected].de} zu erwarten: Die PVK liegt bei ${decimals(reducedPvc, 2)} der wirksamen KPVK, ${because}${reach}`,
  );
}

export function gauge({ finenessOfGrindUm, limitUm }: Of<"opened-by-fineness">): string {
  return `Das Grindometer zeigt ${micrometres(finenessOfGrindUm)} (bis ${micrometres(limitUm)} gilt als gut dispergiert)`;
}

export function filling({ pigment, massG, takenMl }: Of<"fills-the-jar">): string {
  return `${withUnit(significant(massG, 3), "g")} ${within(pigment)}, trocken, nehmen ${withUnit(significant(takenMl, 2), "ml")} ein, von gesetzt bis geschüttet:`;
}
