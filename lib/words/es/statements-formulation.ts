import type { ParticleClass } from "../../formulation/particle-class.ts";
import type { FormulationStatement } from "../../formulation/statements.ts";
import type { ValuesOf, WordingsOf } from "../../quantities/statement.ts";
import { FINISHES, OIL_CLASSES, OIL_WAYS, wordOf } from "./closed-words.ts";
import { pigmentWord } from "../pigment-words.ts";
import {
  bracketed,
  decimals,
  gramsTo100,
  listed,
  micrometres,
  millilitres,
  namesWithin,
  percent,
  sentence,
  significant,
  within,
  withUnit,
} from "./phrases.ts";

const GRAINS: Readonly<Record<ParticleClass, string>> = {
  "fine carbon": "un carbono fino",
  fine: "un pigmento fino",
  coarse: "un pigmento grueso",
};

type Of<R extends FormulationStatement["rule"]> = ValuesOf<FormulationStatement, R>;

/** Oil demand, packing, finish, dispersion, the batch at the slab. */
export const FORMULATION_RULINGS: WordingsOf<FormulationStatement> = {
  "medium-holds-solvent": ({ mediums }) =>
    `No se sabe cuánto de ${namesWithin(mediums)} se va al secar: lleva disolvente, y todo se cuenta como película.`,
  "oil-index-class": ({ oilIndexClass, oilIndexGPer100g, suchAs }) =>
    `Un índice de aceite ${OIL_CLASSES[oilIndexClass]}: ${gramsTo100(oilIndexGPer100g)} en masa${suchAs.length === 0 ? "" : `, en la misma clase que ${listed(suchAs.map((one) => pigmentWord(one, "es")))} en la tabla de Church`}.`,
  "oil-index-class-of-an-estimate": ({ oilIndexClass, oilIndexGPer100g, spans }) =>
    `Un índice de aceite ${OIL_CLASSES[oilIndexClass]}, juzgado por el medio de la estimación (${gramsTo100(oilIndexGPer100g)} en masa); la estimación va ${fromTo(spans, OIL_CLASSES)}.`,
  "working-paint-takes-more-than-rub-out": ({ ratio, oilAbsorptionGPer100g }) =>
    `Una pintura lista para usar lleva ${significant(ratio, 2)} veces el aceite de la absorción (${gramsTo100(oilAbsorptionGPer100g)}), y el índice de aceite se estima a partir de ahí.`,
  "rub-out-takes-less-than-working-paint": ({ ratio, oilIndexGPer100g }) =>
    `Una pintura lista para usar lleva ${significant(ratio, 2)} veces el aceite de la absorción, y esta se estima a partir del índice de aceite (${gramsTo100(oilIndexGPer100g)}).`,
  "oil-index-below-rub-out": ({ oilIndexGPer100g, oilAbsorptionGPer100g }) =>
    `El índice de aceite (${gramsTo100(oilIndexGPer100g)}) está por debajo de la absorción (${gramsTo100(oilAbsorptionGPer100g)}), con la que el pigmento apenas se sostiene: uno de los dos datos es dudoso.`,
  "oil-index-far-above-rub-out": ({ oilIndexGPer100g, oilAbsorptionGPer100g, ratio, reach }) =>
    `El índice de aceite (${gramsTo100(oilIndexGPer100g)}) es ${significant(ratio, 2)} veces la absorción (${gramsTo100(oilAbsorptionGPer100g)}); lo más que hay registrado es ${significant(reach[1], 2)} veces, así que uno de los dos datos es dudoso.`,
  "oil-absorption-by-rub-out": ({ way, standard }) =>
    `Absorción de aceite por ${OIL_WAYS[way]} (${standard}), de la que se calcula la CPVC.`,
  "oil-absorption-rubbed-out": ({ method }) =>
    `Absorción de aceite por amasado (${method}), sin norma nombrada: de la que se calcula la CPVC.`,
  "oil-absorption-reads-higher": ({ standard, way }) =>
    `La absorción de aceite según ${standard} (${OIL_WAYS[way]}) da más que un amasado con cuchillo, y la CPVC sale demasiado baja.`,
  "oil-absorption-method-unknown": ({ method }) =>
    `Cómo se compara el método usado para la absorción de aceite (${method}) con un amasado con cuchillo, no lo sabemos.`,
  "oil-absorption-method-not-stated": () =>
    "El método de la absorción de aceite no está registrado, y los métodos difieren.",
  "handbook-range": ({ range, colourIndexName, kinds }) =>
    `Los manuales dan ${significant(range, 3)} para ${colourIndexName}${bracketed(listed(kinds.map((kind) => pigmentWord(kind, "es"))))}.`,

  "high-oil-demand-low-cpvc": (v) =>
    `En volumen su demanda de aceite es alta: ${fillsTheGaps(v)}, así que la CPVC es baja (${percent(v.cpvc)}).`,
  "middling-oil-demand": (v) =>
    `En volumen su demanda de aceite es media: ${fillsTheGaps(v)}, y la CPVC es del ${percent(v.cpvc)}.`,
  "low-oil-demand-high-cpvc": (v) =>
    `En volumen su demanda de aceite es baja: ${fillsTheGaps(v)}, así que la CPVC es alta (${percent(v.cpvc)}).`,
  "oil-alike": (v) =>
    `Los dos llevan más o menos el mismo aceite, dentro de ${times(v.massRatio)} en masa y de ${times(v.volumeRatio)} por volumen de pigmento.`,
  "oil-differs-by-mass-alone": ({ massRatio, volumeRatio, more, less }) =>
    more !== undefined && less !== undefined
      ? `${more} lleva ${times(massRatio)} el aceite de ${less} en masa; por volumen de pigmento los dos quedan dentro de ${times(volumeRatio)}. La mayor parte de la diferencia es el peso del pigmento.`
      : `Uno lleva ${times(massRatio)} el aceite del otro en masa, pero solo ${times(volumeRatio)} por volumen de pigmento: la mayor parte de la diferencia es el peso del pigmento.`,
  "oil-differs-by-volume-alone": ({ massRatio, volumeRatio }) =>
    `Uno lleva ${times(volumeRatio)} el aceite del otro por volumen de pigmento, aunque en masa (${times(massRatio)}) apenas se nota.`,
  "oil-differs-both-ways": ({ massRatio, volumeRatio }) =>
    `Uno lleva ${times(massRatio)} el aceite del otro en masa, y ${times(volumeRatio)} por volumen de pigmento.`,

  "oil-in-excess": (v) => finish(v, "sobra aceite"),
  "oil-little-in-excess": (v) => finish(v, "sobra un poco de aceite"),
  "oil-just-fills": (v) => finish(v, "el aceite llena justo los huecos"),
  "film-holds-voids": (v) => finish(v, "la película tiene huecos, que la hacen mate y más pálida"),
  "clumps-make-voids": ({ finish: expected, reducedPvc, reducedPvcOpened }) =>
    sentence(
      `${FINISHES[expected]} previsible a pesar de su aceite: molida del todo, su PVC sería ${decimals(reducedPvcOpened, 2)} de la CPVC, pero los grumos retienen aceite; es ${decimals(reducedPvc, 2)} y la película tiene huecos`,
    ),
  "finish-not-told": ({ reducedPvc }) =>
    `No podemos decir qué acabado prever: la PVC es ${decimals(reducedPvc, 2)} de la CPVC efectiva, lo que puede ir de brillante a mate.`,
  "gloss-measured": ({ finish: measured, gloss60, betterAngle }) =>
    sentence(
      `${FINISHES[measured]} según la medición: ${withUnit(significant(gloss60, 2), "unidades de brillo")} a 60\u00b0${betterAngle === undefined ? "" : `; ${betterAngle}\u00b0 dirían más`}`,
    ),
  "glossier-than-expected": ({ measured, expected }) =>
    `Medido ${FINISHES[measured]} donde se esperaba ${expectedText(expected)}: el índice de aceite registrado puede ser demasiado bajo, o la pasta estar mejor molida de lo anotado.`,
  "duller-than-expected": ({ measured, expected }) =>
    `Medido ${FINISHES[measured]} donde se esperaba ${expectedText(expected)}: puede que los grumos retengan aceite, o que la imprimación lo haya absorbido.`,

  "agglomerates-hold-oil": ({ particle, factor }) =>
    sentence(
      `${GRAINS[particle]} queda en parte en grumos, que retienen aceite: la pasta se comporta como si su CPVC fuera ${decimals(factor, 2)} de la plena`,
    ),
  "pigment-opened": () => "Molido del todo: ningún grumo retiene aceite, y cuenta la CPVC plena.",
  "coarse-pigment-opens": () =>
    "Un pigmento grueso se muele con moleta tan bien como a máquina: cuenta la CPVC plena.",
  "dispersion-unknown": ({ particle, factor }) =>
    `Cómo se molió no está registrado: los grumos de ${GRAINS[particle]} retienen aceite, y la pasta puede comportarse como si su CPVC fuera ${decimals(factor, 2)} de la plena.`,
  "fineness-shows-the-grain": ({ finenessOfGrindUm }) =>
    `La galga marca ${micrometres(finenessOfGrindUm)}, que es el grano de un pigmento grueso; no muestra si la pasta está bien molida.`,
  "opened-as-if-milled": (v) => `Con moleta, y molido tan fino como a máquina: ${gauge(v)}.`,
  "opened-by-fineness": (v) => `Bien molido: ${gauge(v)}.`,
  "milled-but-not-opened": (v) => `A máquina, pero no molido del todo: ${gauge(v)}.`,
  "not-opened-by-fineness": (v) => `No molido del todo: ${gauge(v)}.`,

  "body-short": () => "Cuerpo corto: la pasta se parte y queda donde la deja el cuchillo.",
  "body-long": () => "Cuerpo largo: la pasta se estira y sigue al cuchillo.",
  "body-stiff": () => "Cuerpo firme: la pasta resiste al cuchillo.",
  "body-ropy": () => "Cuerpo filamentoso: la pasta se estira en hilos.",
  "oil-stays-in": () => "El aceite queda en la pasta.",
  "oil-parts-slightly": () => "Un poco de aceite se separa de la pasta.",
  "oil-parts-markedly": () => "El aceite se separa de la pasta: amasar el tubo antes de usarlo.",

  "paste-loosens-under-the-muller": ({ fraction }) =>
    `Reservar el ${percent(fraction)} del aceite y añadirlo al final, solo si hace falta: una pasta se afloja bajo la moleta.`,
  "paste-loosens-down-to-rub-out": ({ fraction, oilAbsorptionGPer100g }) =>
    `Reservar el ${percent(fraction)} del aceite y añadirlo al final: una pasta se afloja bajo la moleta, pero por debajo de la absorción (${gramsTo100(oilAbsorptionGPer100g)}) no se sostiene.`,
  "rub-out-takes-all-the-oil": ({ oilAbsorptionGPer100g }) =>
    `No reservar aceite: la absorción (${gramsTo100(oilAbsorptionGPer100g)}) se lo lleva todo.`,
  "loss-on-slab": ({ fraction }) =>
    `Contar con un ${percent(fraction)} de pintura que queda en la losa y la moleta.`,
  "loss-on-mill": ({ fraction }) =>
    `Contar con un ${percent(fraction)} de pintura que queda en los rodillos.`,
  "loss-on-slab-or-mill": ({ fraction }) =>
    `Contar con un ${percent(fraction)} de pintura que queda en la losa o el molino.`,
  "loss-of-lots": ({ fraction, lots }) =>
    lots === 1
      ? `Contar con un ${percent(fraction)}: es lo que perdió nuestro único lote.`
      : `Contar con un ${percent(fraction)}: es lo que perdieron nuestros ${lots} lotes.`,
  "lots-lighter-than-reckoned": ({ measuredGPerCm3, reckonedGPerCm3, lots }) =>
    `${lots === 1 ? "Nuestro único lote pesa" : `Nuestros ${lots} lotes pesan`} ${withUnit(decimals(measuredGPerCm3, 2), "g/cm\u00b3")}, y de lo que llevan saldría ${withUnit(decimals(reckonedGPerCm3, 2), "g/cm\u00b3")}: hay aire dentro, o un índice de aceite o una densidad de pigmento registrados no son exactos. Vale lo que se pesó.`,
  "lots-heavier-than-reckoned": ({ measuredGPerCm3, reckonedGPerCm3, lots }) =>
    `${lots === 1 ? "Nuestro único lote pesa" : `Nuestros ${lots} lotes pesan`} ${withUnit(decimals(measuredGPerCm3, 2), "g/cm\u00b3")}, y de lo que llevan saldría ${withUnit(decimals(reckonedGPerCm3, 2), "g/cm\u00b3")}: un índice de aceite o una densidad de pigmento registrados no son exactos. Vale lo que se pesó.`,
  "fills-the-jar": (v) =>
    `${filling(v)} llena un tarro de ${millilitres(v.jarMl)} aun después de asentarse.`,
  "fills-until-it-settles": (v) =>
    `${filling(v)} llena un tarro de ${millilitres(v.jarMl)} recién vertido, pero no una vez asentado.`,
  "does-not-fill-the-jar": (v) => `${filling(v)} no llena un tarro de ${millilitres(v.jarMl)}.`,
};

/** From the first to the last class that an estimate reaches into. */
function fromTo(spans: readonly string[], words: Readonly<Record<string, string>>): string {
  return `de ${wordOf(words, spans[0] ?? "")} a ${wordOf(words, spans.at(-1) ?? "")}`;
}

function expectedText(finishes: readonly string[]): string {
  return listed(
    finishes.map((one) => wordOf(FINISHES, one)),
    "or",
  );
}

function fillsTheGaps({
  oilCm3Per100Cm3,
}: Pick<Of<"middling-oil-demand">, "oilCm3Per100Cm3">): string {
  return `${withUnit(significant(oilCm3Per100Cm3, 2), "cm\u00b3")} de aceite llenan los huecos de 100\u00a0cm\u00b3 de pigmento`;
}

function times(ratio: number): string {
  return `${decimals(ratio, 1)} veces`;
}

function finish(
  { finish: expected, reducedPvc, spans }: Of<"oil-in-excess">,
  because: string,
): string {
  const reach = spans.length > 1 ? `; la estimación va ${fromTo(spans, FINISHES)}` : "";
  return sentence(
    `${FINISHES[expected]} previsible: la PVC es ${decimals(reducedPvc, 2)} de la CPVC efectiva, así que ${because}${reach}`,
  );
}

function gauge({ finenessOfGrindUm, limitUm }: Of<"opened-by-fineness">): string {
  return `la galga marca ${micrometres(finenessOfGrindUm)} (hasta ${micrometres(limitUm)} cuenta como bien molido)`;
}

function filling({ pigment, massG, takenMl }: Of<"fills-the-jar">): string {
  return `${withUnit(significant(massG, 3), "g")} de ${within(pigment)} seco ocupan ${withUnit(significant(takenMl, 2), "ml")}, de asentado a vertido: eso`;
}
