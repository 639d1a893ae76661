import type { Finish } from "../../formulation/finish.ts";
import type { ParticleClass } from "../../formulation/particle-class.ts";
import type { FormulationStatement } from "../../formulation/statements.ts";
import type { ValuesOf } from "../../quantities/statement.ts";
import { FINISHES } from "../closed-sets.ts";
import type { InEach, InOthers } from "../in-each.ts";
import { de, en, es, fr, sentences } from "../phrases-in-each.ts";
import { alike } from "../texts.ts";

type Of<R extends FormulationStatement["rule"]> = ValuesOf<FormulationStatement, R>;

export const GRAINS: Readonly<Record<ParticleClass, InEach>> = {
  "fine carbon": {
    en: "fine carbon",
    de: "feinen Kohlenstoffs",
    fr: "un carbone fin",
    es: "un carbono fino",
  },
  fine: {
    en: "a fine pigment",
    de: "eines feinen Pigments",
    fr: "un pigment fin",
    es: "un pigmento fino",
  },
  coarse: {
    en: "a coarse pigment",
    de: "eines groben Pigments",
    fr: "un pigment grossier",
    es: "un pigmento grueso",
  },
};

/** From the first to the last class that an estimate reaches into. */
export function fromTo<K extends string>(
  spans: readonly K[],
  words: Readonly<Record<K, InOthers>>,
): InEach {
  const [first, last] = [spans[0], spans.at(-1)];
  if (first === undefined || last === undefined) return alike("");
  const [one, other] = [words[first], words[last]];
  return {
    en: `from ${first} to ${last}`,
    de: `von ${one.de} bis ${other.de}`,
    fr: `de ${one.fr} à ${other.fr}`,
    es: `de ${one.es} a ${other.es}`,
  };
}

export function fillsTheGaps({
  oilCm3Per100Cm3,
}: Pick<Of<"middling-oil-demand">, "oilCm3Per100Cm3">): InEach {
  return {
    en: `${en.withUnit(en.significant(oilCm3Per100Cm3, 2), "cm\u00b3")} of oil fill the gaps of 100\u00a0cm\u00b3 of pigment`,
    de: `${de.withUnit(de.significant(oilCm3Per100Cm3, 2), "cm\u00b3")} Öl füllen die Lücken von 100\u00a0cm\u00b3 Pigment`,
    fr: `${fr.withUnit(fr.significant(oilCm3Per100Cm3, 2), "cm\u00b3")} d’huile comblent les vides de 100\u00a0cm\u00b3 de pigment`,
    es: `${es.withUnit(es.significant(oilCm3Per100Cm3, 2), "cm\u00b3")} de aceite llenan los huecos de 100\u00a0cm\u00b3 de pigmento`,
  };
}

export function times(ratio: number): InEach {
  return {
    en: `${en.decimals(ratio, 1)} times`,
    de: `${de.decimals(ratio, 1)}-mal`,
    fr: `${fr.decimals(ratio, 1)} fois`,
    es: `${es.decimals(ratio, 1)} veces`,
  };
}

/** @param because what follows from the reduced PVC. */
export function finish(
  { finish: expected, reducedPvc, spans }: Of<"oil-in-excess">,
  because: InEach,
): InEach {
  const reach = fromTo(spans, FINISHES);
  const { de: deFinish, fr: frFinish, es: esFinish } = FINISHES[expected];
  const several = spans.length > 1;
  return sentences({
    en: `${expected} expected: PVC is ${en.decimals(reducedPvc, 2)} of the effective CPVC, so ${because.en}${several ? `; the estimate reaches ${reach.en}` : ""}`,
    de: `${deFinish} zu erwarten: Die PVK liegt bei ${de.decimals(reducedPvc, 2)} der wirksamen KPVK, ${because.de}${several ? `; die Schätzung reicht ${reach.de}` : ""}`,
    fr: `${frFinish} à prévoir\u202f: la CPV vaut ${fr.decimals(reducedPvc, 2)} fois la CPVC effective, donc ${because.fr}${several ? `\u202f; l’estimation va ${reach.fr}` : ""}`,
    es: `${esFinish} previsible: la PVC es ${es.decimals(reducedPvc, 2)} veces la CPVC efectiva, así que ${because.es}${several ? `; la estimación va ${reach.es}` : ""}`,
  });
}

export function gauge({ finenessOfGrindUm, limitUm }: Of<"opened-by-fineness">): InEach {
  return {
    en: `the gauge reads ${en.micrometres(finenessOfGrindUm)} (up to ${en.micrometres(limitUm)} counts as well ground)`,
    de: `Das Grindometer zeigt ${de.micrometres(finenessOfGrindUm)} (bis ${de.micrometres(limitUm)} gilt als gut dispergiert)`,
    fr: `la jauge marque ${fr.micrometres(finenessOfGrindUm)} (jusqu’à ${fr.micrometres(limitUm)} on le tient pour bien broyé)`,
    es: `la galga marca ${es.micrometres(finenessOfGrindUm)} (hasta ${es.micrometres(limitUm)} se considera bien molido)`,
  };
}

export function filling({ pigment, massG, takenMl }: Of<"fills-the-jar">): InEach {
  return {
    en: `${en.withUnit(en.significant(massG, 3), "g")} of dry ${en.within(pigment)} take ${en.withUnit(en.significant(takenMl, 2), "ml")}, from settled to poured:`,
    de: `${de.withUnit(de.significant(massG, 3), "g")} ${de.within(pigment)}, trocken, nehmen ${de.withUnit(de.significant(takenMl, 2), "ml")} ein, von gesetzt bis geschüttet:`,
    fr: `${fr.withUnit(fr.significant(massG, 3), "g")} ${fr.of(fr.within(pigment))} sec occupent ${fr.withUnit(fr.significant(takenMl, 2), "ml")}, tassé ou non\u202f: cela`,
    es: `${es.withUnit(es.significant(massG, 3), "g")} de ${es.within(pigment)} seco ocupan ${es.withUnit(es.significant(takenMl, 2), "ml")}, de asentado a vertido: eso`,
  };
}

/** Any of several: "matte or satin". */
export function eitherFinish(finishes: readonly Finish[]): InEach {
  return {
    en: en.listed(finishes, "or"),
    de: de.listed(
      finishes.map((one) => FINISHES[one].de),
      "or",
    ),
    fr: fr.listed(
      finishes.map((one) => FINISHES[one].fr),
      "or",
    ),
    es: es.listed(
      finishes.map((one) => FINISHES[one].es),
      "or",
    ),
  };
}
