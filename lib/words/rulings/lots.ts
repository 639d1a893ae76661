import type { LotStatement } from "../../lots/statements.ts";
import { FORMS, GEOMETRIES, wordOf, THE_FORM } from "../closed-sets.ts";
import { de, en, es, fr } from "../phrases-in-each.ts";
import { upperFirst } from "../letter-case.ts";
import { criterionName, figureOf, limitsText, withUncertainty } from "../lot-criteria.ts";
import { WITHOUT_STRENGTH, NOT_READ, CHARTED } from "./lot-phrases.ts";
import type { RulingsInEach } from "./rulings-in-each.ts";

export const LOT_RULINGS: RulingsInEach<LotStatement> = {
  "within-tolerance": ({ criterion, value, limits, uncertainty }) => ({
    en: `${criterionName(criterion).en} ${withUncertainty(criterion, value, uncertainty).en} is within ${limitsText(criterion, limits).en}.`,
    de: `${criterionName(criterion).de} ${withUncertainty(criterion, value, uncertainty).de} liegt in der Toleranz (${limitsText(criterion, limits).de}).`,
    fr: `${criterionName(criterion).fr}\u202f: ${withUncertainty(criterion, value, uncertainty).fr}, dans la tolérance (${limitsText(criterion, limits).fr}).`,
    es: `${criterionName(criterion).es}: ${withUncertainty(criterion, value, uncertainty).es}, dentro de la tolerancia (${limitsText(criterion, limits).es}).`,
  }),
  "near-its-tolerance": ({ criterion, value, limits, uncertainty }) => ({
    en: `${criterionName(criterion).en} ${withUncertainty(criterion, value, uncertainty).en} reaches across a limit (${limitsText(criterion, limits).en}) with its uncertainty.`,
    de: `${criterionName(criterion).de} ${withUncertainty(criterion, value, uncertainty).de} liegt so nah an der Toleranzgrenze (${limitsText(criterion, limits).de}), dass die Unsicherheit darüber hinausreicht.`,
    fr: `${criterionName(criterion).fr}\u202f: ${withUncertainty(criterion, value, uncertainty).fr}, trop près de la limite (${limitsText(criterion, limits).fr}) pour en être distingué.`,
    es: `${criterionName(criterion).es}: ${withUncertainty(criterion, value, uncertainty).es}, demasiado cerca del límite (${limitsText(criterion, limits).es}) para distinguirlo de él.`,
  }),
  "out-of-tolerance": ({ criterion, value, limits, uncertainty }) => ({
    en: `${criterionName(criterion).en} ${withUncertainty(criterion, value, uncertainty).en} is outside ${limitsText(criterion, limits).en}.`,
    de: `${criterionName(criterion).de} ${withUncertainty(criterion, value, uncertainty).de} liegt außerhalb der Toleranz (${limitsText(criterion, limits).de}).`,
    fr: `${criterionName(criterion).fr}\u202f: ${withUncertainty(criterion, value, uncertainty).fr}, hors tolérance (${limitsText(criterion, limits).fr}).`,
    es: `${criterionName(criterion).es}: ${withUncertainty(criterion, value, uncertainty).es}, fuera de la tolerancia (${limitsText(criterion, limits).es}).`,
  }),
  "reads-as-in-another-white": ({ white, other, deltaE00 }) => ({
    en: `The let-down is written down in ${white.replaceAll("-", " ")} and reads as the standard does in ${other.replaceAll("-", " ")} (\u0394E00 ${en.NUMBERS.decimal(deltaE00, 2)}): the wrong white was weighed. Let it down again before the lot is judged.`,
    de: `Die Aufhellung ist in ${de.within(white)} verzeichnet, die Messung entspricht aber der des Standards in ${de.within(other)} (\u0394E00 ${de.NUMBERS.decimal(deltaE00, 2)}): Es wurde das falsche Weiß gewogen. Noch einmal aufhellen, bevor die Charge beurteilt wird.`,
    fr: `Le dégradé est noté dans ${fr.within(white)} et donne la même mesure que l’étalon dans ${fr.within(other)} (\u0394E00 ${fr.NUMBERS.decimal(deltaE00, 2)})\u202f: on a pesé le mauvais blanc. Refaire le dégradé avant de juger le lot.`,
    es: `El rebaje está anotado en ${es.within(white)} y da lo mismo que el patrón en ${es.within(other)} (\u0394E00 ${es.NUMBERS.decimal(deltaE00, 2)}): se pesó el blanco equivocado. Repetir el rebaje antes de juzgar el lote.`,
  }),
  "lot-not-read-as-standard": ({ what, lot, standard }) => ({
    en: `The ${what} was read ${wordOf(GEOMETRIES, lot, "en")} and the standard's ${wordOf(GEOMETRIES, standard, "en")}: the two can't be held against each other, and the ${what} is not judged.`,
    de: `${upperFirst(THE_FORM[what].de)} wurde ${wordOf(GEOMETRIES, lot, "de")} gemessen, beim Standard ${wordOf(GEOMETRIES, standard, "de")}: Die beiden lassen sich nicht vergleichen, und ${THE_FORM[what].de} wird nicht beurteilt.`,
    fr: `Le ${wordOf(FORMS, what, "fr")} a été mesuré en ${wordOf(GEOMETRIES, lot, "fr")}, celui de l’étalon en ${wordOf(GEOMETRIES, standard, "fr")}\u202f: les deux ne se comparent pas, et le ${wordOf(FORMS, what, "fr")} n’est pas jugé.`,
    es: `El ${wordOf(FORMS, what, "es")} se midió en ${wordOf(GEOMETRIES, lot, "es")} y el del patrón en ${wordOf(GEOMETRIES, standard, "es")}: no se pueden comparar, y el ${wordOf(FORMS, what, "es")} no se juzga.`,
  }),
  "standard-has-no-masstone": {
    en: "No spectrum of the standard's masstone is recorded, so that the masstone is not judged.",
    de: "Vom Vollton des Standards ist kein Spektrum aufgezeichnet; der Vollton wird daher nicht beurteilt.",
    fr: "Aucun spectre du ton plein de l’étalon n’est consigné, et le ton plein n’est donc pas jugé.",
    es: "No hay registrado ningún espectro del tono pleno del patrón, así que el tono pleno no se juzga.",
  },
  "strength-not-judged": ({ since, pigments }) => ({
    en: `Strength is not judged: of a pigment that ${WITHOUT_STRENGTH[since].en} (${en.listed(pigments)}) no reading tells how much is absorbed and how much scattered. The differences of colour are judged, as read.`,
    de: `Die Farbstärke wird nicht beurteilt: Bei einem Pigment, das ${WITHOUT_STRENGTH[since].de} (${de.listed(pigments)}), sagt keine Messung, wie viel absorbiert und wie viel gestreut wird. Die Farbabstände werden beurteilt, wie gemessen.`,
    fr: `La force n’est pas jugée\u202f: d’un pigment qui ${WITHOUT_STRENGTH[since].fr} (${fr.listed(pigments)}), aucune mesure ne dit combien est absorbé et combien est diffusé. Les écarts de couleur sont jugés, tels que mesurés.`,
    es: `La fuerza no se juzga: de un pigmento que ${WITHOUT_STRENGTH[since].es} (${es.listed(pigments)}), ninguna medición dice cuánto se absorbe y cuánto se dispersa. Las diferencias de color se juzgan, tal como se midieron.`,
  }),
  "lot-not-read": ({ what }) => NOT_READ[what],
  "lot-has-no-let-down-of-standard": ({ white, ratio }) => ({
    en: `The standard has no let-down of ${ratio} in ${white.replaceAll("-", " ")}, so that strength is not judged.`,
    de: `Der Standard hat keine Aufhellung ${ratio} in ${de.within(white)}; die Farbstärke wird daher nicht beurteilt.`,
    fr: `L’étalon n’a pas de dégradé ${ratio} dans ${fr.within(white)}, et la force n’est donc pas jugée.`,
    es: `El patrón no tiene rebaje ${ratio} en ${es.within(white)}, así que la fuerza no se juzga.`,
  }),
  "read-under-another-calibration": ({ lot, standard }) => ({
    en: `The lot was read under the calibration of ${lot} and the standard under that of ${standard}: what the instrument's calibrations err by is in the uncertainty. Read the retained standard again beside the lot to be surer.`,
    de: `Die Charge wurde unter der Kalibrierung ${lot} gemessen, der Standard unter ${standard}: Was die Kalibrierungen des Geräts voneinander abweichen, ist in der Unsicherheit enthalten. Mehr Gewissheit gibt es, wenn das Rückstellmuster des Standards neben der Charge noch einmal gemessen wird.`,
    fr: `Le lot a été mesuré sous l’étalonnage de ${lot} et l’étalon sous celui de ${standard}\u202f: l’erreur des étalonnages de l’instrument est comptée dans l’incertitude. Mesurer de nouveau l’étalon conservé à côté du lot pour plus de certitude.`,
    es: `El lote se midió con la calibración de ${lot} y el patrón con la de ${standard}: el error de las calibraciones del instrumento está en la incertidumbre. Medir otra vez el patrón conservado junto al lote para más certeza.`,
  }),
  "lot-beyond-limits": ({ of, value }) => ({
    en: `One lot, at ${figureOf(of, value).en} (${CHARTED[of].en}), lies beyond the limits that all lots set.`,
    de: `Eine Charge, bei ${figureOf(of, value).de} (${CHARTED[of].de}), liegt außerhalb der Grenzen, die sich aus allen Chargen ergeben.`,
    fr: `Un lot, à ${figureOf(of, value).fr} (${CHARTED[of].fr}), sort des limites que fixe l’ensemble des lots.`,
    es: `Un lote, con ${figureOf(of, value).es} (${CHARTED[of].es}), sale de los límites que fija el conjunto de los lotes.`,
  }),
  "lots-far-apart": ({ of, range, limit }) => ({
    en: `Two lots one after another are ${figureOf(of, range).en} apart (${CHARTED[of].en}), and hardly ever more than ${figureOf(of, limit).en}.`,
    de: `Zwei Chargen nacheinander liegen ${figureOf(of, range).de} auseinander (${CHARTED[of].de}), sonst fast nie mehr als ${figureOf(of, limit).de}.`,
    fr: `Deux lots de suite sont distants de ${figureOf(of, range).fr} (${CHARTED[of].fr}), alors que l’écart ne dépasse presque jamais ${figureOf(of, limit).fr}.`,
    es: `Dos lotes seguidos distan ${figureOf(of, range).es} (${CHARTED[of].es}), cuando la diferencia casi nunca pasa de ${figureOf(of, limit).es}.`,
  }),
  "lots-drifting-up": ({ of, count }) => ({
    en: `${upperFirst(CHARTED[of].en)} has risen over ${count} lots one after another: it drifts.`,
    de: `${CHARTED[of].de}: über ${count} Chargen nacheinander gestiegen, also ein Trend.`,
    fr: `${upperFirst(CHARTED[of].fr)}\u202f: en hausse sur ${count} lots de suite, ce qui est une dérive.`,
    es: `${upperFirst(CHARTED[of].es)}: sube desde hace ${count} lotes seguidos; hay una deriva.`,
  }),
  "lots-drifting-down": ({ of, count }) => ({
    en: `${upperFirst(CHARTED[of].en)} has fallen over ${count} lots one after another: it drifts.`,
    de: `${CHARTED[of].de}: über ${count} Chargen nacheinander gefallen, also ein Trend.`,
    fr: `${upperFirst(CHARTED[of].fr)}\u202f: en baisse sur ${count} lots de suite, ce qui est une dérive.`,
    es: `${upperFirst(CHARTED[of].es)}: baja desde hace ${count} lotes seguidos; hay una deriva.`,
  }),
  "lots-all-above": ({ of, count }) => ({
    en: `${count} lots one after another lie above the mean (${CHARTED[of].en}).`,
    de: `${count} Chargen nacheinander liegen über dem Mittelwert (${CHARTED[of].de}).`,
    fr: `${count} lots de suite sont au-dessus de la moyenne (${CHARTED[of].fr}).`,
    es: `${count} lotes seguidos están por encima de la media (${CHARTED[of].es}).`,
  }),
  "lots-all-below": ({ of, count }) => ({
    en: `${count} lots one after another lie below the mean (${CHARTED[of].en}).`,
    de: `${count} Chargen nacheinander liegen unter dem Mittelwert (${CHARTED[of].de}).`,
    fr: `${count} lots de suite sont au-dessous de la moyenne (${CHARTED[of].fr}).`,
    es: `${count} lotes seguidos están por debajo de la media (${CHARTED[of].es}).`,
  }),
};
