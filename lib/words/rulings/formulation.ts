import type { FormulationStatement } from "../../formulation/statements.ts";
import { FINISHES, OIL_CLASSES, OIL_WAYS } from "../closed-sets.ts";
import {
  fromTo,
  fillsTheGaps,
  times,
  finish,
  GRAINS,
  gauge,
  filling,
  eitherFinish,
} from "./formulation-phrases.ts";
import { de, en, es, fr, sentences } from "../phrases-in-each.ts";
import type { NamingRulings } from "./rulings-in-each.ts";

/** Oil demand, packing, finish, dispersion, the batch at the slab. */
export const FORMULATION_RULINGS: NamingRulings<FormulationStatement> = {
  "medium-holds-solvent": ({ mediums }) => ({
    en: `We do not know how much of ${en.namesWithin(mediums)} dries away: ${mediums.length > 1 ? "they hold" : "it holds"} a solvent, and all is reckoned as film.`,
    de: de.sentence(
      `${de.namesWithin(mediums)}: Wie viel davon verdunstet, ist nicht bekannt. Es ist Lösemittel darin, und alles ist als Film gerechnet`,
    ),
    fr: `On ignore quelle part ${fr.of(fr.namesWithin(mediums))} s’en va en séchant\u202f: il s’y trouve un solvant, et tout est compté comme film.`,
    es: `No se sabe cuánto de ${es.namesWithin(mediums)} se va al secar: lleva disolvente, y todo se cuenta como película.`,
  }),
  "oil-index-class": ({ oilIndexClass, oilIndexGPer100g, suchAs }, substance) => ({
    en: `A ${oilIndexClass} oil index: ${en.gramsTo100(oilIndexGPer100g)} by mass${suchAs.length === 0 ? "" : `, in one class with ${en.listed(suchAs)} in Church's table`}.`,
    de: `Ölindex ${OIL_CLASSES[oilIndexClass].de}: ${de.gramsTo100(oilIndexGPer100g)} nach Masse${suchAs.length === 0 ? "" : `, in einer Klasse mit ${de.listed(suchAs.map((one) => substance(one, "de")))} in Churchs Tabelle`}.`,
    fr: `Un indice d’huile ${OIL_CLASSES[oilIndexClass].fr}\u202f: ${fr.gramsTo100(oilIndexGPer100g)} en masse${suchAs.length === 0 ? "" : `, dans la même classe ${fr.than(fr.listed(suchAs.map((one) => substance(one, "fr"))))} dans la table de Church`}.`,
    es: `Un índice de aceite ${OIL_CLASSES[oilIndexClass].es}: ${es.gramsTo100(oilIndexGPer100g)} en masa${suchAs.length === 0 ? "" : `, en la misma clase que ${es.listed(suchAs.map((one) => substance(one, "es")))} en la tabla de Church`}.`,
  }),
  "oil-index-class-at-its-limit": ({ oilIndexGPer100g, limitGPer100g, within, spans }) => ({
    en: `A ${en.listed(spans, "or")} oil index: ${en.gramsTo100(oilIndexGPer100g)} by mass lies at the limit between the two, ${en.significant(limitGPer100g, 3)}, and one batch may differ from the next by ${en.percent(within)}.`,
    de: `Ölindex ${de.listed(
      spans.map((each) => OIL_CLASSES[each].de),
      "or",
    )}: ${de.gramsTo100(oilIndexGPer100g)} nach Masse liegen an der Grenze zwischen beiden, ${de.significant(limitGPer100g, 3)}, und ein Ansatz kann vom nächsten um ${de.percent(within)} abweichen.`,
    fr: `Un indice d’huile ${fr.listed(
      spans.map((each) => OIL_CLASSES[each].fr),
      "or",
    )}\u202f: ${fr.gramsTo100(oilIndexGPer100g)} en masse, à la limite des deux, ${fr.significant(limitGPer100g, 3)}, et une fabrication peut s’écarter de la suivante de ${fr.percent(within)}.`,
    es: `Un índice de aceite ${es.listed(
      spans.map((each) => OIL_CLASSES[each].es),
      "or",
    )}: ${es.gramsTo100(oilIndexGPer100g)} en masa, en el límite entre ambos, ${es.significant(limitGPer100g, 3)}, y una fabricación puede diferir de la siguiente en un ${es.percent(within)}.`,
  }),
  "oil-index-class-of-an-estimate": ({ oilIndexClass, oilIndexGPer100g, spans }) => ({
    en: `A ${oilIndexClass} oil index, judged by the middle of the estimate (${en.gramsTo100(oilIndexGPer100g)} by mass); the estimate runs ${fromTo(spans, OIL_CLASSES).en}.`,
    de: `Ölindex ${OIL_CLASSES[oilIndexClass].de}, nach der Mitte der Schätzung beurteilt (${de.gramsTo100(oilIndexGPer100g)} nach Masse); die Schätzung reicht ${fromTo(spans, OIL_CLASSES).de}.`,
    fr: `Un indice d’huile ${OIL_CLASSES[oilIndexClass].fr}, jugé d’après le milieu de l’estimation (${fr.gramsTo100(oilIndexGPer100g)} en masse)\u202f; l’estimation va ${fromTo(spans, OIL_CLASSES).fr}.`,
    es: `Un índice de aceite ${OIL_CLASSES[oilIndexClass].es}, juzgado por el centro de la estimación (${es.gramsTo100(oilIndexGPer100g)} en masa); la estimación va ${fromTo(spans, OIL_CLASSES).es}.`,
  }),
  "oil-index-class-not-told": ({ oilIndexGPer100g, spans }) => ({
    en: `We cannot say whether it takes much oil or little: the estimate (${en.gramsTo100(oilIndexGPer100g)} by mass) runs ${fromTo(spans, OIL_CLASSES).en}.`,
    de: `Ob die Farbe viel oder wenig Öl braucht, lässt sich nicht sagen: Die Schätzung (${de.gramsTo100(oilIndexGPer100g)} nach Masse) reicht ${fromTo(spans, OIL_CLASSES).de}.`,
    fr: `Nous ne pouvons dire si elle demande beaucoup ou peu d’huile\u202f: l’estimation (${fr.gramsTo100(oilIndexGPer100g)} en masse) va ${fromTo(spans, OIL_CLASSES).fr}.`,
    es: `No podemos decir si lleva mucho o poco aceite: la estimación (${es.gramsTo100(oilIndexGPer100g)} en masa) va ${fromTo(spans, OIL_CLASSES).es}.`,
  }),
  "working-paint-takes-more-than-rub-out": ({ ratio, oilAbsorptionGPer100g }) => ({
    en: `A working paint takes ${en.significant(ratio, 2)} times the oil of the rub-out figure (${en.gramsTo100(oilAbsorptionGPer100g)}), and the oil index is estimated from that.`,
    de: `Eine gebrauchsfertige Farbe nimmt das ${de.significant(ratio, 2)}-Fache der Ölzahl auf (${de.gramsTo100(oilAbsorptionGPer100g)}); daraus ist der Ölindex geschätzt.`,
    fr: `Une peinture prête à l’emploi demande ${fr.significant(ratio, 2)} fois la prise d’huile (${fr.gramsTo100(oilAbsorptionGPer100g)}), et l’indice d’huile est estimé à partir de là.`,
    es: `Una pintura lista para usar lleva ${es.significant(ratio, 2)} veces la absorción de aceite (${es.gramsTo100(oilAbsorptionGPer100g)}), y el índice de aceite se estima a partir de ahí.`,
  }),
  "rub-out-takes-less-than-working-paint": ({ ratio, oilIndexGPer100g }) => ({
    en: `A working paint takes ${en.significant(ratio, 2)} times the oil of a rub-out, and the rub-out figure is estimated from the oil index (${en.gramsTo100(oilIndexGPer100g)}).`,
    de: `Eine gebrauchsfertige Farbe nimmt das ${de.significant(ratio, 2)}-Fache der Ölzahl auf; die Ölzahl ist aus dem Ölindex geschätzt (${de.gramsTo100(oilIndexGPer100g)}).`,
    fr: `Une peinture prête à l’emploi demande ${fr.significant(ratio, 2)} fois la prise d’huile, et celle-ci est estimée d’après l’indice d’huile (${fr.gramsTo100(oilIndexGPer100g)}).`,
    es: `Una pintura lista para usar lleva ${es.significant(ratio, 2)} veces la absorción de aceite, y esta se estima a partir del índice de aceite (${es.gramsTo100(oilIndexGPer100g)}).`,
  }),
  "oil-index-below-rub-out": ({ oilIndexGPer100g, oilAbsorptionGPer100g }) => ({
    en: `The oil index (${en.gramsTo100(oilIndexGPer100g)}) lies below the rub-out figure (${en.gramsTo100(oilAbsorptionGPer100g)}), at which the pigment only just holds together: one of the two is doubtful.`,
    de: `Der Ölindex (${de.gramsTo100(oilIndexGPer100g)}) liegt unter der Ölzahl (${de.gramsTo100(oilAbsorptionGPer100g)}), bei der das Pigment gerade eben zusammenhält: Einer der beiden Werte ist zweifelhaft.`,
    fr: `L’indice d’huile (${fr.gramsTo100(oilIndexGPer100g)}) est au-dessous de la prise d’huile (${fr.gramsTo100(oilAbsorptionGPer100g)}), où le pigment se tient tout juste\u202f: l’un des deux chiffres est douteux.`,
    es: `El índice de aceite (${es.gramsTo100(oilIndexGPer100g)}) está por debajo de la absorción de aceite (${es.gramsTo100(oilAbsorptionGPer100g)}), con la que el pigmento apenas se sostiene: uno de los dos datos es dudoso.`,
  }),
  "oil-index-far-above-rub-out": ({ oilIndexGPer100g, oilAbsorptionGPer100g, ratio, reach }) => ({
    en: `The oil index (${en.gramsTo100(oilIndexGPer100g)}) is ${en.significant(ratio, 2)} times the rub-out figure (${en.gramsTo100(oilAbsorptionGPer100g)}); the most on record is ${en.significant(reach[1], 2)} times, so one of the two is doubtful.`,
    de: `Der Ölindex (${de.gramsTo100(oilIndexGPer100g)}) ist das ${de.significant(ratio, 2)}-Fache der Ölzahl (${de.gramsTo100(oilAbsorptionGPer100g)}); bekannt ist höchstens das ${de.significant(reach[1], 2)}-Fache. Einer der beiden Werte ist also zweifelhaft.`,
    fr: `L’indice d’huile (${fr.gramsTo100(oilIndexGPer100g)}) est ${fr.significant(ratio, 2)} fois la prise d’huile (${fr.gramsTo100(oilAbsorptionGPer100g)})\u202f; le plus qu’on connaisse est ${fr.significant(reach[1], 2)} fois, et l’un des deux chiffres est donc douteux.`,
    es: `El índice de aceite (${es.gramsTo100(oilIndexGPer100g)}) es ${es.significant(ratio, 2)} veces la absorción de aceite (${es.gramsTo100(oilAbsorptionGPer100g)}); lo más que hay registrado es ${es.significant(reach[1], 2)} veces, así que uno de los dos datos es dudoso.`,
  }),
  "oil-absorption-by-rub-out": ({ way, standard }) => ({
    en: `Oil absorption by ${way} (${standard}), the kind that CPVC is worked out from.`,
    de: `Ölzahl durch ${OIL_WAYS[way].de} (${standard}), die Art, aus der die KPVK errechnet wird.`,
    fr: `Prise d’huile par ${OIL_WAYS[way].fr} (${standard}), celle d’où l’on calcule la CPVC.`,
    es: `Absorción de aceite por ${OIL_WAYS[way].es} (${standard}): de ella se calcula la CPVC.`,
  }),
  "oil-absorption-rubbed-out": ({ method }) => ({
    en: `Oil absorption by rub-out (${method}), no standard named: the kind that CPVC is worked out from.`,
    de: `Ölzahl durch Anreiben (${method}), ohne Angabe einer Norm: die Art, aus der die KPVK errechnet wird.`,
    fr: `Prise d’huile par empâtage (${method}), sans norme indiquée\u202f: celle d’où l’on calcule la CPVC.`,
    es: `Absorción de aceite por amasado (${method}), sin norma indicada: de ella se calcula la CPVC.`,
  }),
  "oil-absorption-reads-higher": ({ standard, way }) => ({
    en: `Oil absorption by ${standard} (${way}) reads higher than a rub-out, so the CPVC comes out too low.`,
    de: `Die Ölzahl nach ${standard} (${OIL_WAYS[way].de}) fällt höher aus als beim Anreiben; die KPVK wird daher zu niedrig.`,
    fr: `La prise d’huile selon ${standard} (${OIL_WAYS[way].fr}) donne plus qu’un empâtage au couteau, et la CPVC en sort trop basse.`,
    es: `La absorción de aceite según ${standard} (${OIL_WAYS[way].es}) da más que un amasado con cuchillo, y la CPVC sale demasiado baja.`,
  }),
  "oil-absorption-method-unknown": ({ method }) => ({
    en: `How the method used for the oil absorption (${method}) compares with a rub-out, we do not know.`,
    de: `Wie sich das Verfahren für die Ölzahl (${method}) zum Anreiben verhält, wissen wir nicht.`,
    fr: `Nous ne savons pas comment la méthode employée pour la prise d’huile (${method}) se compare à un empâtage au couteau.`,
    es: `No sabemos cómo se compara el método usado para la absorción de aceite (${method}) con un amasado con cuchillo.`,
  }),
  "oil-absorption-method-not-stated": {
    en: "The method of the oil absorption is not recorded, and methods differ.",
    de: "Das Verfahren für die Ölzahl ist nicht aufgezeichnet, und die Verfahren liefern verschiedene Werte.",
    fr: "La méthode de la prise d’huile n’est pas consignée, et les méthodes diffèrent.",
    es: "El método de la absorción de aceite no está registrado, y los métodos difieren.",
  },
  "handbook-range": ({ range, colourIndexName, kinds }, substance) => ({
    en: `Handbooks give ${en.significant(range, 3)} for ${colourIndexName}${en.bracketed(en.namesWithin(kinds))}.`,
    de: `Handbücher nennen ${de.significant(range, 3)} für ${colourIndexName}${de.bracketed(de.listed(kinds.map((one) => substance(one, "de"))))}.`,
    fr: `Les manuels donnent ${fr.significant(range, 3)} pour ${colourIndexName}${fr.bracketed(fr.listed(kinds.map((one) => substance(one, "fr"))))}.`,
    es: `Los manuales dan ${es.significant(range, 3)} para ${colourIndexName}${es.bracketed(es.listed(kinds.map((one) => substance(one, "es"))))}.`,
  }),

  "high-oil-demand-low-cpvc": (v) => ({
    en: `By volume its oil demand is high: ${fillsTheGaps(v).en}, so the CPVC is low (${en.percent(v.cpvc)}).`,
    de: `Nach Volumen ist der Ölbedarf hoch: ${fillsTheGaps(v).de}; die KPVK ist daher niedrig (${de.percent(v.cpvc)}).`,
    fr: `En volume, son besoin en huile est élevé\u202f: ${fillsTheGaps(v).fr}, et la CPVC est basse (${fr.percent(v.cpvc)}).`,
    es: `En volumen su consumo de aceite es alto: ${fillsTheGaps(v).es}, así que la CPVC es baja (${es.percent(v.cpvc)}).`,
  }),
  "middling-oil-demand": (v) => ({
    en: `By volume its oil demand is middling: ${fillsTheGaps(v).en}, and the CPVC is ${en.percent(v.cpvc)}.`,
    de: `Nach Volumen ist der Ölbedarf mittel: ${fillsTheGaps(v).de}; die KPVK liegt bei ${de.percent(v.cpvc)}.`,
    fr: `En volume, son besoin en huile est moyen\u202f: ${fillsTheGaps(v).fr}, et la CPVC est de ${fr.percent(v.cpvc)}.`,
    es: `En volumen su consumo de aceite es medio: ${fillsTheGaps(v).es}, y la CPVC es del ${es.percent(v.cpvc)}.`,
  }),
  "low-oil-demand-high-cpvc": (v) => ({
    en: `By volume its oil demand is low: ${fillsTheGaps(v).en}, so the CPVC is high (${en.percent(v.cpvc)}).`,
    de: `Nach Volumen ist der Ölbedarf niedrig: ${fillsTheGaps(v).de}; die KPVK ist daher hoch (${de.percent(v.cpvc)}).`,
    fr: `En volume, son besoin en huile est faible\u202f: ${fillsTheGaps(v).fr}, et la CPVC est haute (${fr.percent(v.cpvc)}).`,
    es: `En volumen su consumo de aceite es bajo: ${fillsTheGaps(v).es}, así que la CPVC es alta (${es.percent(v.cpvc)}).`,
  }),
  "oil-alike": (v) => ({
    en: `The two take about the same oil, within ${times(v.massRatio).en} by mass and ${times(v.volumeRatio).en} by volume of pigment.`,
    de: `Die beiden nehmen etwa gleich viel Öl auf: Nach Masse unterscheiden sie sich höchstens um den Faktor ${de.decimals(v.massRatio, 1)}, nach Volumen des Pigments höchstens um den Faktor ${de.decimals(v.volumeRatio, 1)}.`,
    fr: `Les deux demandent à peu près autant d’huile, à un facteur ${fr.decimals(v.massRatio, 1)} près en masse et ${fr.decimals(v.volumeRatio, 1)} par volume de pigment.`,
    es: `Los dos llevan más o menos el mismo aceite, con un factor de ${es.decimals(v.massRatio, 1)} en masa y de ${es.decimals(v.volumeRatio, 1)} por volumen de pigmento.`,
  }),
  "oil-differs-by-mass-alone": ({ massRatio, volumeRatio, more, less }) => ({
    en:
      more !== undefined && less !== undefined
        ? `${more} takes ${times(massRatio).en} the oil of ${less} by mass; by volume of pigment the two lie within ${times(volumeRatio).en} of each other. Most of the difference is the weight of the pigment.`
        : `One takes ${times(massRatio).en} the oil of the other by mass, but only ${times(volumeRatio).en} by volume of pigment: most of the difference is the weight of the pigment.`,
    de:
      more !== undefined && less !== undefined
        ? `${more} nimmt nach Masse ${times(massRatio).de} so viel Öl auf wie ${less}; nach Volumen des Pigments unterscheiden sich die beiden höchstens um den Faktor ${de.decimals(volumeRatio, 1)}. Der Unterschied liegt vor allem am Gewicht des Pigments.`
        : `Die eine nimmt nach Masse ${times(massRatio).de} so viel Öl auf wie die andere, nach Volumen des Pigments nur ${times(volumeRatio).de} so viel: Der Unterschied liegt vor allem am Gewicht des Pigments.`,
    fr:
      more !== undefined && less !== undefined
        ? `${more} demande ${times(massRatio).fr} l’huile ${fr.of(less)} en masse\u202f; par volume de pigment, les deux se tiennent à un facteur ${fr.decimals(volumeRatio, 1)} près. L’essentiel de l’écart vient du poids du pigment.`
        : `L’une demande ${times(massRatio).fr} l’huile de l’autre en masse, mais seulement ${times(volumeRatio).fr} par volume de pigment\u202f: l’essentiel de l’écart vient du poids du pigment.`,
    es:
      more !== undefined && less !== undefined
        ? `${more} lleva ${times(massRatio).es} el aceite de ${less} en masa; por volumen de pigmento, la diferencia es de un factor de ${es.decimals(volumeRatio, 1)}. La mayor parte de la diferencia viene del peso del pigmento.`
        : `Uno lleva ${times(massRatio).es} el aceite del otro en masa, pero solo ${times(volumeRatio).es} por volumen de pigmento: la mayor parte de la diferencia viene del peso del pigmento.`,
  }),
  "oil-differs-by-volume-alone": ({ massRatio, volumeRatio }) => ({
    en: `One takes ${times(volumeRatio).en} the oil of the other by volume of pigment, though by mass (${times(massRatio).en}) it hardly shows.`,
    de: `Die eine nimmt nach Volumen des Pigments ${times(volumeRatio).de} so viel Öl auf wie die andere, auch wenn es sich nach Masse (${times(massRatio).de}) kaum zeigt.`,
    fr: `L’une demande ${times(volumeRatio).fr} l’huile de l’autre par volume de pigment, bien qu’en masse (${times(massRatio).fr}) cela se voie à peine.`,
    es: `Uno lleva ${times(volumeRatio).es} el aceite del otro por volumen de pigmento, aunque en masa (${times(massRatio).es}) apenas se nota.`,
  }),
  "oil-differs-both-ways": ({ massRatio, volumeRatio }) => ({
    en: `One takes ${times(massRatio).en} the oil of the other by mass, and ${times(volumeRatio).en} by volume of pigment.`,
    de: `Die eine nimmt nach Masse ${times(massRatio).de} so viel Öl auf wie die andere, nach Volumen des Pigments ${times(volumeRatio).de} so viel.`,
    fr: `L’une demande ${times(massRatio).fr} l’huile de l’autre en masse, et ${times(volumeRatio).fr} par volume de pigment.`,
    es: `Uno lleva ${times(massRatio).es} el aceite del otro en masa, y ${times(volumeRatio).es} por volumen de pigmento.`,
  }),

  "oil-in-excess": (v) =>
    finish(v, {
      en: "oil is in excess",
      de: "Öl ist im Überschuss",
      fr: "l’huile est en excès",
      es: "sobra aceite",
    }),
  "oil-little-in-excess": (v) =>
    finish(v, {
      en: "oil is a little in excess",
      de: "Öl ist leicht im Überschuss",
      fr: "l’huile est un peu en excès",
      es: "sobra un poco de aceite",
    }),
  "oil-just-fills": (v) =>
    finish(v, {
      en: "oil just fills the gaps",
      de: "das Öl füllt die Lücken gerade",
      fr: "l’huile comble tout juste les vides",
      es: "el aceite llena justo los huecos",
    }),
  "film-holds-voids": (v) =>
    finish(v, {
      en: "the film holds voids, which make it matte and paler",
      de: "der Film hat Hohlräume, die ihn matt und heller machen",
      fr: "le film a des vides, qui le rendent mat et plus pâle",
      es: "la película tiene huecos, que la hacen mate y más pálida",
    }),
  "clumps-make-voids": ({ finish: expected, reducedPvc, reducedPvcOpened }) =>
    sentences({
      en: `${expected} expected in spite of its oil: fully ground, its PVC would be ${en.decimals(reducedPvcOpened, 2)} of the CPVC, but clumps hold oil, so it is ${en.decimals(reducedPvc, 2)} and the film holds voids`,
      de: `${FINISHES[expected].de} zu erwarten, trotz des Öls: Vollständig dispergiert läge die PVK bei ${de.decimals(reducedPvcOpened, 2)} der KPVK, doch Agglomerate halten Öl fest; so liegt sie bei ${de.decimals(reducedPvc, 2)}, und der Film hat Hohlräume`,
      fr: `${FINISHES[expected].fr} à prévoir malgré son huile\u202f: broyée à fond, elle aurait une CPV de ${fr.decimals(reducedPvcOpened, 2)} fois la CPVC, mais les amas retiennent de l’huile\u202f: c’est ${fr.decimals(reducedPvc, 2)} fois, et le film a des vides`,
      es: `${FINISHES[expected].es} previsible a pesar de su aceite: molida del todo, su PVC sería ${es.decimals(reducedPvcOpened, 2)} veces la CPVC, pero los grumos retienen aceite: es ${es.decimals(reducedPvc, 2)} veces, y la película tiene huecos`,
    }),
  "finish-not-told": ({ reducedPvc }) => ({
    en: `We cannot say which finish to expect: the PVC is ${en.decimals(reducedPvc, 2)} of the effective CPVC, which may mean anything from gloss to matte.`,
    de: `Welcher Glanzgrad zu erwarten ist, lässt sich nicht sagen: Die PVK liegt bei ${de.decimals(reducedPvc, 2)} der wirksamen KPVK; das kann alles von glänzend bis matt heißen.`,
    fr: `Nous ne pouvons dire quel aspect prévoir\u202f: la CPV vaut ${fr.decimals(reducedPvc, 2)} fois la CPVC effective, ce qui peut aller du brillant au mat.`,
    es: `No podemos decir qué acabado prever: la PVC es ${es.decimals(reducedPvc, 2)} veces la CPVC efectiva, lo que puede ir de brillante a mate.`,
  }),
  "gloss-measured": ({ finish: measured, gloss60, betterAngle }) =>
    sentences({
      en: `${measured} by measurement: ${en.withUnit(en.significant(gloss60, 2), "gloss units")} at 60\u00b0${betterAngle === undefined ? "" : `; ${betterAngle}\u00b0 would tell more`}`,
      de: `${FINISHES[measured].de} nach Messung: ${de.withUnit(de.significant(gloss60, 2), "Glanzeinheiten")} bei 60\u00b0${betterAngle === undefined ? "" : `; ${betterAngle}\u00b0 würden mehr sagen`}`,
      fr: `${FINISHES[measured].fr} selon la mesure\u202f: ${fr.withUnit(fr.significant(gloss60, 2), "unités de brillance")} à 60\u00b0${betterAngle === undefined ? "" : `\u202f; un angle de ${betterAngle}\u00b0 en dirait plus`}`,
      es: `${FINISHES[measured].es} según la medición: ${es.withUnit(es.significant(gloss60, 2), "unidades de brillo")} a 60\u00b0${betterAngle === undefined ? "" : `; un ángulo de ${betterAngle}\u00b0 diría más`}`,
    }),
  "glossier-than-expected": ({ measured, expected }) => ({
    en: `Read as ${measured} where ${en.listed(expected, "or")} was expected: the oil index on record may be too low, or the paste better ground than recorded.`,
    de: `Gemessen ${FINISHES[measured].de}, erwartet ${eitherFinish(expected).de}: Der aufgezeichnete Ölindex kann zu niedrig sein oder die Paste besser dispergiert als aufgezeichnet.`,
    fr: `Mesuré ${FINISHES[measured].fr} là où l’on attendait ${eitherFinish(expected).fr}\u202f: l’indice d’huile consigné est peut-être trop bas, ou la pâte est mieux broyée qu’on ne l’a noté.`,
    es: `Medido ${FINISHES[measured].es} donde se esperaba ${eitherFinish(expected).es}: el índice de aceite registrado puede ser demasiado bajo, o la pasta puede estar mejor molida de lo que se anotó.`,
  }),
  "duller-than-expected": ({ measured, expected }) => ({
    en: `Read as ${measured} where ${en.listed(expected, "or")} was expected: clumps may hold oil, or the ground drew it out.`,
    de: `Gemessen ${FINISHES[measured].de}, erwartet ${eitherFinish(expected).de}: Agglomerate können Öl festhalten, oder der Grund hat es herausgezogen.`,
    fr: `Mesuré ${FINISHES[measured].fr} là où l’on attendait ${eitherFinish(expected).fr}\u202f: des amas retiennent peut-être de l’huile, ou la préparation l’a bue.`,
    es: `Medido ${FINISHES[measured].es} donde se esperaba ${eitherFinish(expected).es}: puede que los grumos retengan aceite, o que la imprimación lo haya absorbido.`,
  }),

  "agglomerates-hold-oil": ({ particle, factor }) => ({
    en: en.sentence(
      `${GRAINS[particle].en} stays partly in clumps, which hold oil: the paste behaves as if its CPVC were ${en.decimals(factor, 2)} of the full one`,
    ),
    de: `Ein Teil bleibt in Agglomeraten ${GRAINS[particle].de}, die Öl festhalten: Die Paste verhält sich, als läge ihre KPVK bei ${de.decimals(factor, 2)} der vollen.`,
    fr: fr.sentence(
      `${GRAINS[particle].fr} reste en partie en amas, qui retiennent de l’huile\u202f: la pâte se comporte comme si sa CPVC était réduite à ${fr.decimals(factor, 2)} fois sa valeur`,
    ),
    es: es.sentence(
      `${GRAINS[particle].es} queda en parte en grumos, que retienen aceite: la pasta se comporta como si su CPVC se redujera a ${es.decimals(factor, 2)} veces su valor`,
    ),
  }),
  "pigment-opened": {
    en: "Fully ground: no clumps hold oil, and the full CPVC counts.",
    de: "Vollständig dispergiert: Es gibt keine Agglomerate, die Öl festhalten, und es gilt die volle KPVK.",
    fr: "Broyé à fond\u202f: aucun amas ne retient d’huile, et la CPVC compte en entier.",
    es: "Molido del todo: ningún grumo retiene aceite, y la CPVC cuenta entera.",
  },
  "coarse-pigment-opens": {
    en: "A coarse pigment grinds out by hand as well as by mill: the full CPVC counts.",
    de: "Ein grobes Pigment lässt sich von Hand so gut dispergieren wie im Walzwerk: Es gilt die volle KPVK.",
    fr: "Un pigment grossier se broie à la molette aussi bien qu’à la machine\u202f: la CPVC compte en entier.",
    es: "Un pigmento grueso se muele con moleta tan bien como a máquina: la CPVC cuenta entera.",
  },
  "dispersion-unknown": ({ particle, factor }) => ({
    en: `How it was ground is not recorded: clumps of ${GRAINS[particle].en} hold oil, so the paste may behave as if its CPVC were ${en.decimals(factor, 2)} of the full one.`,
    de: `Wie angerieben wurde, ist nicht aufgezeichnet: Agglomerate ${GRAINS[particle].de} halten Öl fest; die Paste kann sich daher verhalten, als läge ihre KPVK bei ${de.decimals(factor, 2)} der vollen.`,
    fr: `On n’a pas consigné comment il a été broyé\u202f: des amas ${fr.of(GRAINS[particle].fr)} retiennent de l’huile, et la pâte peut se comporter comme si sa CPVC était réduite à ${fr.decimals(factor, 2)} fois sa valeur.`,
    es: `No está registrado cómo se molió: los grumos de ${GRAINS[particle].es} retienen aceite, y la pasta puede comportarse como si su CPVC se redujera a ${es.decimals(factor, 2)} veces su valor.`,
  }),
  "fineness-shows-the-grain": ({ finenessOfGrindUm }) => ({
    en: `The gauge reads ${en.micrometres(finenessOfGrindUm)}, which is the grain of a coarse pigment; it does not show how well the paste is ground.`,
    de: `Das Grindometer zeigt ${de.micrometres(finenessOfGrindUm)}, das Korn eines groben Pigments; wie gut die Paste dispergiert ist, zeigt es nicht.`,
    fr: `La jauge marque ${fr.micrometres(finenessOfGrindUm)}, et c’est là le grain d’un pigment grossier\u202f; elle ne montre pas si la pâte est bien broyée.`,
    es: `La galga marca ${es.micrometres(finenessOfGrindUm)}, que es el grano de un pigmento grueso; no muestra si la pasta está bien molida.`,
  }),
  "opened-as-if-milled": (v) => ({
    en: `Mulled, and ground as fine as from a mill: ${gauge(v).en}.`,
    de: `Von Hand angerieben, so fein wie aus dem Walzwerk: ${gauge(v).de}.`,
    fr: `À la molette, et broyé aussi fin qu’à la machine\u202f: ${gauge(v).fr}.`,
    es: `Con moleta, y molido tan fino como a máquina: ${gauge(v).es}.`,
  }),
  "opened-by-fineness": (v) => ({
    en: `Well ground: ${gauge(v).en}.`,
    de: `Gut dispergiert: ${gauge(v).de}.`,
    fr: `Bien broyé\u202f: ${gauge(v).fr}.`,
    es: `Bien molido: ${gauge(v).es}.`,
  }),
  "milled-but-not-opened": (v) => ({
    en: `Milled, but not fully ground: ${gauge(v).en}.`,
    de: `Gewalzt, aber nicht vollständig dispergiert: ${gauge(v).de}.`,
    fr: `À la machine, mais pas broyé à fond\u202f: ${gauge(v).fr}.`,
    es: `A máquina, pero no molido del todo: ${gauge(v).es}.`,
  }),
  "not-opened-by-fineness": (v) => ({
    en: `Not fully ground: ${gauge(v).en}.`,
    de: `Nicht vollständig dispergiert: ${gauge(v).de}.`,
    fr: `Pas broyé à fond\u202f: ${gauge(v).fr}.`,
    es: `No molido del todo: ${gauge(v).es}.`,
  }),

  "body-short": {
    en: "Short body: the paste breaks off and stands where the knife leaves it.",
    de: "Kurze Konsistenz: Die Paste reißt ab und bleibt stehen, wo der Spachtel sie lässt.",
    fr: "Consistance courte\u202f: la pâte casse et reste où le couteau la pose.",
    es: "Consistencia corta: la pasta se parte y queda donde la deja la espátula.",
  },
  "body-long": {
    en: "Long body: the paste draws out and flows after the knife.",
    de: "Lange Konsistenz: Die Paste zieht sich und fließt dem Spachtel nach.",
    fr: "Consistance longue\u202f: la pâte s’étire et suit le couteau.",
    es: "Consistencia larga: la pasta se estira y sigue a la espátula.",
  },
  "body-stiff": {
    en: "Stiff body: the paste resists the knife.",
    de: "Steife Konsistenz: Die Paste widersteht dem Spachtel.",
    fr: "Consistance ferme\u202f: la pâte résiste au couteau.",
    es: "Consistencia firme: la pasta resiste a la espátula.",
  },
  "body-ropy": {
    en: "Ropy body: the paste draws out in strings.",
    de: "Fadenziehende Konsistenz: Die Paste zieht Fäden.",
    fr: "Consistance filante\u202f: la pâte s’étire en fils.",
    es: "Consistencia filante: la pasta se estira en hilos.",
  },
  "oil-stays-in": {
    en: "The oil stays in the paste.",
    de: "Das Öl bleibt in der Paste.",
    fr: "L’huile reste dans la pâte.",
    es: "El aceite queda en la pasta.",
  },
  "oil-parts-slightly": {
    en: "A little oil separates from the paste.",
    de: "Ein wenig Öl scheidet sich aus der Paste ab.",
    fr: "Un peu d’huile se sépare de la pâte.",
    es: "Un poco de aceite se separa de la pasta.",
  },
  "oil-parts-markedly": {
    en: "Oil separates from the paste: knead the tube before use.",
    de: "Öl scheidet sich aus der Paste ab: die Tube vor Gebrauch durchkneten.",
    fr: "L’huile se sépare de la pâte\u202f: malaxer le tube avant l’emploi.",
    es: "El aceite se separa de la pasta: amasar el tubo antes de usarlo.",
  },

  "paste-loosens-under-the-muller": ({ fraction }) => ({
    en: `Hold back ${en.percent(fraction)} of the oil and add it last, only if needed: a paste loosens under the muller.`,
    de: `Halten Sie ${de.percent(fraction)} des Öls zurück und geben Sie es zuletzt und nur bei Bedarf zu: Eine Paste wird unter dem Läufer weicher.`,
    fr: `Garder ${fr.percent(fraction)} de l’huile en réserve et ne l’ajouter qu’à la fin, au besoin\u202f: une pâte se relâche sous la molette.`,
    es: `Reservar el ${es.percent(fraction)} del aceite y añadirlo al final, solo si hace falta: una pasta se afloja bajo la moleta.`,
  }),
  "paste-loosens-down-to-rub-out": ({ fraction, oilAbsorptionGPer100g }) => ({
    en: `Hold back ${en.percent(fraction)} of the oil and add it last: a paste loosens under the muller, but below the rub-out figure (${en.gramsTo100(oilAbsorptionGPer100g)}) it does not hold together.`,
    de: `Halten Sie ${de.percent(fraction)} des Öls zurück und geben Sie es zuletzt zu: Eine Paste wird unter dem Läufer weicher, doch unter der Ölzahl (${de.gramsTo100(oilAbsorptionGPer100g)}) hält sie nicht zusammen.`,
    fr: `Garder ${fr.percent(fraction)} de l’huile en réserve et l’ajouter à la fin\u202f: une pâte se relâche sous la molette, mais au-dessous de la prise d’huile (${fr.gramsTo100(oilAbsorptionGPer100g)}) elle ne se tient pas.`,
    es: `Reservar el ${es.percent(fraction)} del aceite y añadirlo al final: una pasta se afloja bajo la moleta, pero por debajo de la absorción de aceite (${es.gramsTo100(oilAbsorptionGPer100g)}) no se sostiene.`,
  }),
  "rub-out-takes-all-the-oil": ({ oilAbsorptionGPer100g }) => ({
    en: `Hold no oil back: the rub-out figure (${en.gramsTo100(oilAbsorptionGPer100g)}) takes all of it.`,
    de: `Halten Sie kein Öl zurück: Die Ölzahl (${de.gramsTo100(oilAbsorptionGPer100g)}) verlangt alles.`,
    fr: `Ne pas garder d’huile en réserve\u202f: la prise d’huile (${fr.gramsTo100(oilAbsorptionGPer100g)}) la prend toute.`,
    es: `No reservar aceite: la absorción de aceite (${es.gramsTo100(oilAbsorptionGPer100g)}) se lo lleva todo.`,
  }),
  "loss-on-slab": ({ fraction }) => ({
    en: `Allow ${en.percent(fraction)} for paint left on slab and muller.`,
    de: `Rechnen Sie mit ${de.percent(fraction)} Farbe, die auf Reibplatte und Läufer bleibt.`,
    fr: `Compter ${fr.percent(fraction)} pour la peinture qui reste sur le marbre et la molette.`,
    es: `Contar con un ${es.percent(fraction)} de pintura que queda en la losa y la moleta.`,
  }),
  "loss-on-mill": ({ fraction }) => ({
    en: `Allow ${en.percent(fraction)} for paint left on the rolls.`,
    de: `Rechnen Sie mit ${de.percent(fraction)} Farbe, die auf den Walzen bleibt.`,
    fr: `Compter ${fr.percent(fraction)} pour la peinture qui reste sur les cylindres.`,
    es: `Contar con un ${es.percent(fraction)} de pintura que queda en los rodillos.`,
  }),
  "loss-on-slab-or-mill": ({ fraction }) => ({
    en: `Allow ${en.percent(fraction)} for paint left on slab or mill.`,
    de: `Rechnen Sie mit ${de.percent(fraction)} Farbe, die auf Reibplatte oder Walzen bleibt.`,
    fr: `Compter ${fr.percent(fraction)} pour la peinture qui reste sur le marbre ou la broyeuse.`,
    es: `Contar con un ${es.percent(fraction)} de pintura que queda en la losa o el molino.`,
  }),
  "loss-of-lots": ({ fraction, lots }) => ({
    en:
      lots === 1
        ? `Allow ${en.percent(fraction)}: so much our one lot lost.`
        : `Allow ${en.percent(fraction)}: so much our ${lots} lots lost.`,
    de:
      lots === 1
        ? `Rechnen Sie mit ${de.percent(fraction)} Verlust: So viel ging bei unserer einzigen Charge verloren.`
        : `Rechnen Sie mit ${de.percent(fraction)} Verlust: So viel ging bei unseren ${lots} Chargen verloren.`,
    fr:
      lots === 1
        ? `Compter ${fr.percent(fraction)}\u202f: c’est ce qu’a perdu notre seul lot.`
        : `Compter ${fr.percent(fraction)}\u202f: c’est ce qu’ont perdu nos ${lots} lots.`,
    es:
      lots === 1
        ? `Contar con un ${es.percent(fraction)}: es lo que perdió nuestro único lote.`
        : `Contar con un ${es.percent(fraction)}: es lo que perdieron nuestros ${lots} lotes.`,
  }),
  "lots-lighter-than-reckoned": ({ measuredGPerCm3, reckonedGPerCm3, lots }) => ({
    en: `${lots === 1 ? "Our one lot weighs" : `Our ${lots} lots weigh`} ${en.withUnit(en.decimals(measuredGPerCm3, 2), "g/cm\u00b3")}, and from what is in ${lots === 1 ? "it" : "them"} ${en.withUnit(en.decimals(reckonedGPerCm3, 2), "g/cm\u00b3")} would follow: ${lots === 1 ? "it holds" : "they hold"} air, or an oil index or a pigment\u2019s density on record is off. What was weighed counts.`,
    de: `${lots === 1 ? "Unsere einzige Charge wiegt" : `Unsere ${lots} Chargen wiegen`} ${de.withUnit(de.decimals(measuredGPerCm3, 2), "g/cm\u00b3")}; nach den Bestandteilen wären ${de.withUnit(de.decimals(reckonedGPerCm3, 2), "g/cm\u00b3")} zu erwarten: Es ist Luft darin, oder ein aufgezeichneter Ölindex oder eine Pigmentdichte stimmt nicht. Es gilt, was gewogen wurde.`,
    fr: `${lots === 1 ? "Notre seul lot pèse" : `Nos ${lots} lots pèsent`} ${fr.withUnit(fr.decimals(measuredGPerCm3, 2), "g/cm\u00b3")}, alors que, d’après ce qui y entre, on attendrait ${fr.withUnit(fr.decimals(reckonedGPerCm3, 2), "g/cm\u00b3")}\u202f: il s’y trouve de l’air, ou un chiffre consigné (indice d’huile, masse volumique d’un pigment) est inexact. C’est la pesée qui compte.`,
    es: `${lots === 1 ? "Nuestro único lote pesa" : `Nuestros ${lots} lotes pesan`} ${es.withUnit(es.decimals(measuredGPerCm3, 2), "g/cm\u00b3")}, y de lo que ${lots === 1 ? "lleva" : "llevan"} saldría ${es.withUnit(es.decimals(reckonedGPerCm3, 2), "g/cm\u00b3")}: hay aire dentro, o alguna cifra registrada (índice de aceite, densidad de un pigmento) no es exacta. Vale lo que se pesó.`,
  }),
  "lots-heavier-than-reckoned": ({ measuredGPerCm3, reckonedGPerCm3, lots }) => ({
    en: `${lots === 1 ? "Our one lot weighs" : `Our ${lots} lots weigh`} ${en.withUnit(en.decimals(measuredGPerCm3, 2), "g/cm\u00b3")}, and from what is in ${lots === 1 ? "it" : "them"} ${en.withUnit(en.decimals(reckonedGPerCm3, 2), "g/cm\u00b3")} would follow: an oil index or a pigment\u2019s density on record is off. What was weighed counts.`,
    de: `${lots === 1 ? "Unsere einzige Charge wiegt" : `Unsere ${lots} Chargen wiegen`} ${de.withUnit(de.decimals(measuredGPerCm3, 2), "g/cm\u00b3")}; nach den Bestandteilen wären ${de.withUnit(de.decimals(reckonedGPerCm3, 2), "g/cm\u00b3")} zu erwarten: Ein aufgezeichneter Ölindex oder eine Pigmentdichte stimmt nicht. Es gilt, was gewogen wurde.`,
    fr: `${lots === 1 ? "Notre seul lot pèse" : `Nos ${lots} lots pèsent`} ${fr.withUnit(fr.decimals(measuredGPerCm3, 2), "g/cm\u00b3")}, alors que, d’après ce qui y entre, on attendrait ${fr.withUnit(fr.decimals(reckonedGPerCm3, 2), "g/cm\u00b3")}\u202f: un chiffre consigné (indice d’huile, masse volumique d’un pigment) est inexact. C’est la pesée qui compte.`,
    es: `${lots === 1 ? "Nuestro único lote pesa" : `Nuestros ${lots} lotes pesan`} ${es.withUnit(es.decimals(measuredGPerCm3, 2), "g/cm\u00b3")}, y de lo que ${lots === 1 ? "lleva" : "llevan"} saldría ${es.withUnit(es.decimals(reckonedGPerCm3, 2), "g/cm\u00b3")}: alguna cifra registrada (índice de aceite, densidad de un pigmento) no es exacta. Vale lo que se pesó.`,
  }),
  "fills-the-jar": (v) => ({
    en: `${filling(v).en} it fills a jar of ${en.millilitres(v.jarMl)} even when it has settled.`,
    de: `${filling(v).de} Das füllt ein Glas von ${de.millilitres(v.jarMl)}, auch wenn sich das Pigment gesetzt hat.`,
    fr: `${filling(v).fr} remplit un pot de ${fr.millilitres(v.jarMl)}, même une fois tassé.`,
    es: `${filling(v).es} llena un tarro de ${es.millilitres(v.jarMl)} aun después de asentarse.`,
  }),
  "fills-until-it-settles": (v) => ({
    en: `${filling(v).en} it fills a jar of ${en.millilitres(v.jarMl)} when just poured, but not once it has settled.`,
    de: `${filling(v).de} Das füllt ein Glas von ${de.millilitres(v.jarMl)}, solange das Pigment frisch geschüttet ist, aber nicht mehr, wenn es sich gesetzt hat.`,
    fr: `${filling(v).fr} remplit un pot de ${fr.millilitres(v.jarMl)} au moment où on le verse, mais plus une fois tassé.`,
    es: `${filling(v).es} llena un tarro de ${es.millilitres(v.jarMl)} recién vertido, pero no una vez asentado.`,
  }),
  "does-not-fill-the-jar": (v) => ({
    en: `${filling(v).en} it does not fill a jar of ${en.millilitres(v.jarMl)}.`,
    de: `${filling(v).de} Das füllt ein Glas von ${de.millilitres(v.jarMl)} nicht.`,
    fr: `${filling(v).fr} ne remplit pas un pot de ${fr.millilitres(v.jarMl)}.`,
    es: `${filling(v).es} no llena un tarro de ${es.millilitres(v.jarMl)}.`,
  }),
};
