import type { MixtureStatement } from "../../optics/statements.ts";
import { TOWARD } from "../closed-sets.ts";
import { de, en, es, fr } from "../phrases-in-each.ts";
import { losing, change, lightness, amount, span } from "./mixture-phrases.ts";
import type { RulingsInEach } from "./rulings-in-each.ts";

/** Where a mixed colour drifts, what keeps colours from being reckoned together, and what theory allows to be said. */
export const MIXTURE_RULINGS: RulingsInEach<MixtureStatement> = {
  "drift-not-seen": (v) => ({
    en: `${losing(v).en} no change is seen (${change(v).en}).`,
    de: `${losing(v).de} ist keine Änderung zu sehen (${change(v).de}).`,
    fr: `${losing(v).fr} aucun changement ne se voit (${change(v).fr}).`,
    es: `${losing(v).es} no se ve ningún cambio (${change(v).es}).`,
  }),
  "drift-grows-lighter": (v) => ({
    en: `${losing(v).en} it only grows lighter (${change(v).en}).`,
    de: `${losing(v).de} wird die Farbe nur heller (${change(v).de}).`,
    fr: `${losing(v).fr} la couleur ne fait que s’éclaircir (${change(v).fr}).`,
    es: `${losing(v).es} el color solo se aclara (${change(v).es}).`,
  }),
  "drift-grows-darker": (v) => ({
    en: `${losing(v).en} it only grows darker (${change(v).en}).`,
    de: `${losing(v).de} wird die Farbe nur dunkler (${change(v).de}).`,
    fr: `${losing(v).fr} la couleur ne fait que s’assombrir (${change(v).fr}).`,
    es: `${losing(v).es} el color solo se oscurece (${change(v).es}).`,
  }),
  "drift-grows-duller": (v) => ({
    en: `${losing(v).en} its colour grows duller (${change(v).en}).`,
    de: `${losing(v).de} wird die Farbe stumpfer (${change(v).de}).`,
    fr: `${losing(v).fr} la couleur se ternit (${change(v).fr}).`,
    es: `${losing(v).es} el color se apaga (${change(v).es}).`,
  }),
  "drift-grows-stronger": (v) => ({
    en: `${losing(v).en} its colour grows stronger (${change(v).en}).`,
    de: `${losing(v).de} wird die Farbe kräftiger (${change(v).de}).`,
    fr: `${losing(v).fr} la couleur s’avive (${change(v).fr}).`,
    es: `${losing(v).es} el color se aviva (${change(v).es}).`,
  }),
  "drift-goes-toward": (v) => ({
    en: `${losing(v).en} it goes towards ${v.toward} (${change(v).en}).`,
    de: `${losing(v).de} verschiebt sich die Farbe nach ${TOWARD[v.toward].de} (${change(v).de}).`,
    fr: `${losing(v).fr} la couleur vire ${TOWARD[v.toward].fr} (${change(v).fr}).`,
    es: `${losing(v).es} el color vira ${TOWARD[v.toward].es} (${change(v).es}).`,
  }),
  "parts-not-recorded": {
    en: "Nothing is predicted: the parts of its pigments are not in the record.",
    de: "Keine Vorhersage: Die Teile der Pigmente sind nicht aufgezeichnet.",
    fr: "Rien n’est prévu\u202f: les parts de ses pigments ne sont pas consignées.",
    es: "No se prevé nada: las partes de sus pigmentos no están en el registro.",
  },
  "component-not-let-down": (v) => ({
    en: `Nothing is predicted: no paint of ${en.namesWithin(v.components, "or")} alone has let-downs that can be fitted.`,
    de: `Keine Vorhersage: Für ${de.namesWithin(v.components, "or")} allein gibt es keine Farbe mit Aufhellungen, die sich anpassen lassen.`,
    fr: `Rien n’est prévu\u202f: aucune peinture dont ${fr.namesWithin(v.components, "or")} soit le seul pigment n’a de dégradés utilisables.`,
    es: `No se prevé nada: ninguna pintura con ${es.namesWithin(v.components, "or")} como único pigmento tiene rebajes utilizables.`,
  }),
  "no-common-white": (v) => ({
    en: `Nothing is predicted: ${en.namesWithin(v.components)} were not let down in one and the same white.`,
    de: `Keine Vorhersage: ${de.namesWithin(v.components)} wurden nicht in ein und demselben Weiß aufgehellt.`,
    fr: `Rien n’est prévu\u202f: ${fr.namesWithin(v.components)} n’ont pas été coupés avec un seul et même blanc.`,
    es: `No se prevé nada: ${es.namesWithin(v.components)} no se rebajaron con un mismo blanco.`,
  }),
  "oil-of-paint-not-known": (v) => ({
    en: `Nothing is predicted: how much oil is in ${en.namesWithin(v.paints)} is not known, so pigment cannot be converted to paint.`,
    de: `Keine Vorhersage: Wie viel Öl ${de.namesWithin(v.paints)} ${v.paints.length > 1 ? "enthalten" : "enthält"}, ist nicht bekannt; Pigment lässt sich daher nicht in Farbe umrechnen.`,
    fr: `Rien n’est prévu\u202f: on ne sait pas combien d’huile contient ${fr.namesWithin(v.paints)}, et le pigment ne peut être converti en peinture.`,
    es: `No se prevé nada: no se sabe cuánto aceite hay en ${es.namesWithin(v.paints)}, y el pigmento no puede convertirse en pintura.`,
  }),

  "particle-size-not-known": (v) => ({
    en: `Theory says nothing of ${en.within(v.pigment)}: the size of its grain is not recorded.`,
    de: `Die Theorie sagt nichts über ${de.within(v.pigment)}: Die Korngröße ist nicht aufgezeichnet.`,
    fr: `La théorie ne dit rien ${fr.of(fr.within(v.pigment))}\u202f: la taille de son grain n’est pas consignée.`,
    es: `La teoría no dice nada de ${es.within(v.pigment)}: el tamaño de su grano no está registrado.`,
  }),
  "particle-too-coarse": (v) => ({
    en: `Theory says nothing of ${en.within(v.pigment)}: its grain (${en.micrometres(v.sizeUm)}) is over ${en.micrometres(v.limitUm)}, above which a grain scatters like a flat surface.`,
    de: `Die Theorie sagt nichts über ${de.within(v.pigment)}: Das Korn (${de.micrometres(v.sizeUm)}) liegt über ${de.micrometres(v.limitUm)}, und darüber streut ein Korn wie eine ebene Fläche.`,
    fr: `La théorie ne dit rien ${fr.of(fr.within(v.pigment))}\u202f: son grain (${fr.micrometres(v.sizeUm)}) dépasse ${fr.micrometres(v.limitUm)}, au-delà de quoi un grain diffuse comme une surface plane.`,
    es: `La teoría no dice nada de ${es.within(v.pigment)}: su grano (${es.micrometres(v.sizeUm)}) pasa de ${es.micrometres(v.limitUm)}, por encima de lo cual un grano dispersa como una superficie plana.`,
  }),
  "absorption-not-known": (v) => ({
    en: `Theory says nothing of ${en.within(v.pigment)}: we do not know how strongly its substance absorbs.`,
    de: `Die Theorie sagt nichts über ${de.within(v.pigment)}: Wie stark der Stoff absorbiert, wissen wir nicht.`,
    fr: `La théorie ne dit rien ${fr.of(fr.within(v.pigment))}\u202f: nous ne savons pas à quel point sa matière absorbe.`,
    es: `La teoría no dice nada de ${es.within(v.pigment)}: no sabemos cuánto absorbe su materia.`,
  }),
  "refractive-index-not-known": (v) => ({
    en: `Theory says nothing of ${en.within(v.pigment)}: its refractive index is not recorded.`,
    de: `Die Theorie sagt nichts über ${de.within(v.pigment)}: Der Brechungsindex ist nicht aufgezeichnet.`,
    fr: `La théorie ne dit rien ${fr.of(fr.within(v.pigment))}\u202f: son indice de réfraction n’est pas consigné.`,
    es: `La teoría no dice nada de ${es.within(v.pigment)}: su índice de refracción no está registrado.`,
  }),
  "theory-bluer": (v) => ({
    en: `By theory ${en.within(v.first)} is bluer than ${en.within(v.second)} at L* ${lightness(v).en}, in ${en.percent(v.bluerShare)} of the cases tried (b* lower by ${amount(v).en}).`,
    de: `Nach der Theorie ist ${de.within(v.first)} blauer als ${de.within(v.second)} bei L* ${lightness(v).de}, in ${de.percent(v.bluerShare)} der gerechneten Fälle (b* niedriger um ${amount(v).de}).`,
    fr: `Selon la théorie, ${fr.within(v.first)} est plus bleu ${fr.than(fr.within(v.second))} à L* ${lightness(v).fr}, dans ${fr.percent(v.bluerShare)} des cas essayés (b* plus bas de ${amount(v).fr}).`,
    es: `Según la teoría, ${es.within(v.first)} es más azul que ${es.within(v.second)} a L* ${lightness(v).es}, en el ${es.percent(v.bluerShare)} de los casos probados (b* más bajo en ${amount(v).es}).`,
  }),
  "theory-warmer": (v) => ({
    en: `By theory ${en.within(v.first)} is warmer than ${en.within(v.second)} at L* ${lightness(v).en}, in ${en.percent(1 - v.bluerShare)} of the cases tried (b* higher by ${amount(v).en}).`,
    de: `Nach der Theorie ist ${de.within(v.first)} wärmer als ${de.within(v.second)} bei L* ${lightness(v).de}, in ${de.percent(1 - v.bluerShare)} der gerechneten Fälle (b* höher um ${amount(v).de}).`,
    fr: `Selon la théorie, ${fr.within(v.first)} est plus chaud ${fr.than(fr.within(v.second))} à L* ${lightness(v).fr}, dans ${fr.percent(1 - v.bluerShare)} des cas essayés (b* plus haut de ${amount(v).fr}).`,
    es: `Según la teoría, ${es.within(v.first)} es más cálido que ${es.within(v.second)} a L* ${lightness(v).es}, en el ${es.percent(1 - v.bluerShare)} de los casos probados (b* más alto en ${amount(v).es}).`,
  }),
  "theory-all-bluer": (v) => ({
    en: `By theory ${v.first} is bluer than ${v.second}, ${v.how} ${en.namesWithin(v.members)} at L* ${lightness(v).en}, in ${en.percent(v.bluerShare)} of the cases tried or more (b* lower by ${amount(v).en}).`,
    de: `Nach der Theorie ist ${v.first} blauer als ${v.second}, ${v.how === "with" ? "mit" : "in"} ${de.namesWithin(v.members)} bei L* ${lightness(v).de}, in ${de.percent(v.bluerShare)} der gerechneten Fälle oder mehr (b* niedriger um ${amount(v).de}).`,
    fr: `Selon la théorie, ${v.first} est plus bleu ${fr.than(v.second)}, ${v.how === "in" ? "dans" : "avec"} ${fr.namesWithin(v.members)} à L* ${lightness(v).fr}, dans ${fr.percent(v.bluerShare)} des cas essayés ou plus (b* plus bas de ${amount(v).fr}).`,
    es: `Según la teoría, ${v.first} es más azul que ${v.second}, ${v.how === "in" ? "en" : "con"} ${es.namesWithin(v.members)} a L* ${lightness(v).es}, en el ${es.percent(v.bluerShare)} de los casos probados o más (b* más bajo en ${amount(v).es}).`,
  }),
  "theory-sign-not-known": (v) => ({
    en: `Theory cannot say whether ${en.within(v.first)} or ${en.within(v.second)} is the bluer at L* ${lightness(v).en} (b* differs by ${span(v.change, 1).en}).`,
    de: `Die Theorie kann nicht sagen, ob ${de.within(v.first)} oder ${de.within(v.second)} bei L* ${lightness(v).de} blauer ist (Unterschied in b* ${span(v.change, 1).de}).`,
    fr: `La théorie ne peut dire lequel est le plus bleu, ${fr.within(v.first)} ou ${fr.within(v.second)}, à L* ${lightness(v).fr} (écart de b*\u202f: ${span(v.change, 1).fr}).`,
    es: `La teoría no puede decir cuál es más azul, ${es.within(v.first)} o ${es.within(v.second)}, a L* ${lightness(v).es} (diferencia de b*: ${span(v.change, 1).es}).`,
  }),
  "theory-leans": (v) => ({
    en: `By theory ${en.within(v.black)} leans ${v.blueShare >= 0.5 ? "blue" : "warm"} in ${en.within(v.white)} at L* ${lightness(v).en} (b* ${span(v.b, 0).en}).`,
    de: `Nach der Theorie neigt ${de.within(v.black)} in ${de.within(v.white)} bei L* ${lightness(v).de} zu ${v.blueShare >= 0.5 ? "Blau" : "einem warmen Ton"} (b* ${span(v.b, 0).de}).`,
    fr: `Selon la théorie, ${fr.within(v.black)} tire ${v.blueShare >= 0.5 ? "vers le bleu" : "vers les tons chauds"} dans ${fr.within(v.white)} à L* ${lightness(v).fr} (b* ${span(v.b, 0).fr}).`,
    es: `Según la teoría, ${es.within(v.black)} tira ${v.blueShare >= 0.5 ? "al azul" : "a los tonos cálidos"} en ${es.within(v.white)} a L* ${lightness(v).es} (b* ${span(v.b, 0).es}).`,
  }),
  "theory-lean-not-known": (v) => ({
    en: `Theory cannot say which way ${en.within(v.black)} leans in ${en.within(v.white)} at L* ${lightness(v).en} (b* ${span(v.b, 0).en}).`,
    de: `Die Theorie kann nicht sagen, wohin ${de.within(v.black)} in ${de.within(v.white)} bei L* ${lightness(v).de} neigt (b* ${span(v.b, 0).de}).`,
    fr: `La théorie ne peut dire de quel côté tire ${fr.within(v.black)} dans ${fr.within(v.white)} à L* ${lightness(v).fr} (b* ${span(v.b, 0).fr}).`,
    es: `La teoría no puede decir hacia dónde tira ${es.within(v.black)} en ${es.within(v.white)} a L* ${lightness(v).es} (b* ${span(v.b, 0).es}).`,
  }),
};
