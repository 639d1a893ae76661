import type { OpacityContradiction } from "../../optics/films/expected-opacity.ts";
import type { OpacityStatement } from "../../optics/films/opacity.ts";
import { BOUNDS, OPACITIES } from "../closed-sets.ts";
import { reach, limitOf, OUR_LIMITS } from "./opacity-phrases.ts";
import { outward } from "../number-text.ts";
import { de, en, es, fr, sentences } from "../phrases-in-each.ts";
import type { RulingsInEach } from "./rulings-in-each.ts";

/** How opaque a film is, and by what that was judged. */
export const OPACITY_RULINGS: RulingsInEach<OpacityStatement | OpacityContradiction> = {
  "opacity-unlike-its-pigment": (v) => ({
    en: `Worked out as ${v.class}, and ${v.expected} is to be expected of its pigment.`,
    de: `Errechnet ist „${OPACITIES[v.class].de}“, nach dem Pigment wäre „${OPACITIES[v.expected].de}“ zu erwarten.`,
    fr: `Le calcul donne «\u202f${OPACITIES[v.class].fr}\u202f», et l’on attend de son pigment «\u202f${OPACITIES[v.expected].fr}\u202f».`,
    es: `El cálculo da «${OPACITIES[v.class].es}», y de su pigmento se espera «${OPACITIES[v.expected].es}».`,
  }),
  "opacity-by-contrast-ratio": ({
    class: word,
    filmUm,
    contrastRatio,
    contrastRatioMin,
    spans,
    bound,
  }) => {
    const ratio = outward(contrastRatio, bound, 3);
    return sentences({
      en: `${bound === "at least" && word !== "opaque" ? `at least ${word}` : word}: a film of ${en.micrometres(filmUm)} has a contrast ratio of ${bound === undefined ? "" : `${bound} `}${en.decimals(ratio, 3)}${en.bracketed(
        contrastRatioMin > 0 ? `from ${en.decimals(contrastRatioMin, 2)}` : undefined,
        "by limits of our own",
        reach(spans)?.en,
      )}`,
      de: `${bound === "at least" && word !== "opaque" ? "mindestens " : ""}${OPACITIES[word].de}: Ein Film von ${de.micrometres(filmUm)} hat ein Kontrastverhältnis von ${bound === undefined ? "" : `${BOUNDS[bound].de} `}${de.decimals(ratio, 3)}${de.bracketed(
        contrastRatioMin > 0 ? `ab ${de.decimals(contrastRatioMin, 2)}` : undefined,
        "nach eigenen Grenzen",
        reach(spans)?.de,
      )}`,
      fr: `${bound === "at least" && word !== "opaque" ? `au moins ${OPACITIES[word].fr}` : OPACITIES[word].fr}\u202f: un film de ${fr.micrometres(filmUm)} a un rapport de contraste ${bound === undefined ? "de " : `d’${BOUNDS[bound].fr} `}${fr.decimals(ratio, 3)}${fr.bracketed(
        contrastRatioMin > 0 ? `à partir de ${fr.decimals(contrastRatioMin, 2)}` : undefined,
        "selon nos propres limites",
        reach(spans)?.fr,
      )}`,
      es: `${bound === "at least" && word !== "opaque" ? `al menos ${OPACITIES[word].es}` : OPACITIES[word].es}: una película de ${es.micrometres(filmUm)} tiene una relación de contraste de ${bound === undefined ? "" : `${BOUNDS[bound].es} `}${es.decimals(ratio, 3)}${es.bracketed(
        contrastRatioMin > 0 ? `desde ${es.decimals(contrastRatioMin, 2)}` : undefined,
        "según límites nuestros",
        reach(spans)?.es,
      )}`,
    });
  },
  "opacity-by-scattering": ({
    class: word,
    filmUm,
    scatteringPower,
    spans,
    byScattering,
    contrastRatio,
  }) => ({
    en:
      byScattering !== undefined && contrastRatio !== undefined
        ? `${en.sentence(`${word}: a film of ${en.micrometres(filmUm)} ${word === "opaque" ? "hides its ground" : "lets its ground through"} (contrast ratio ${en.decimals(contrastRatio, 3)}), though it scatters as ${byScattering === "opaque" ? "an opaque" : `a ${byScattering}`} one does, with a power (S\u00b7X, scattering times thickness) of ${en.significant(scatteringPower, 2)}`)} ${OUR_LIMITS.en}`
        : `${en.sentence(`${word}: a film of ${en.micrometres(filmUm)} scatters with a power (S\u00b7X, scattering times thickness) of ${en.significant(scatteringPower, 2)}${en.bracketed(limitOf(word).en, reach(spans)?.en)}`)} A film that swallows so much light hides a chart whatever it scatters, so its contrast ratio gives no class. ${OUR_LIMITS.en}`,
    de:
      byScattering !== undefined && contrastRatio !== undefined
        ? `${de.sentence(`${OPACITIES[word].de}: Ein Film von ${de.micrometres(filmUm)} ${word === "opaque" ? "deckt seinen Grund" : "lässt seinen Grund durchscheinen"} (Kontrastverhältnis ${de.decimals(contrastRatio, 3)}), obwohl er mit einem Streuvermögen (S\u00b7X, Streuung mal Dicke) von ${de.significant(scatteringPower, 2)} so streut, wie es „${OPACITIES[byScattering].de}“ entspricht`)} ${OUR_LIMITS.de}`
        : `${de.sentence(`${OPACITIES[word].de}: Ein Film von ${de.micrometres(filmUm)} hat ein Streuvermögen (S\u00b7X, Streuung mal Dicke) von ${de.significant(scatteringPower, 2)}${de.bracketed(limitOf(word).de, reach(spans)?.de)}`)} Ein Film, der so viel Licht schluckt, deckt eine Prüfkarte, wie wenig er auch streut; aus seinem Kontrastverhältnis folgt daher keine Klasse. ${OUR_LIMITS.de}`,
    fr:
      byScattering !== undefined && contrastRatio !== undefined
        ? `${fr.sentence(`${OPACITIES[word].fr}\u202f: un film de ${fr.micrometres(filmUm)} ${word === "opaque" ? "couvre son fond" : "laisse voir son fond"} (rapport de contraste ${fr.decimals(contrastRatio, 3)}), bien qu’il diffuse comme un film ${OPACITIES[byScattering].fr}, avec une puissance (S\u00b7X, diffusion fois épaisseur) de ${fr.significant(scatteringPower, 2)}`)} ${OUR_LIMITS.fr}`
        : `${fr.sentence(`${OPACITIES[word].fr}\u202f: un film de ${fr.micrometres(filmUm)} diffuse avec une puissance (S\u00b7X, diffusion fois épaisseur) de ${fr.significant(scatteringPower, 2)}${fr.bracketed(limitOf(word).fr, reach(spans)?.fr)}`)} Un film qui absorbe tant de lumière couvre une carte, si peu qu’il diffuse, et son rapport de contraste ne donne aucune classe. ${OUR_LIMITS.fr}`,
    es:
      byScattering !== undefined && contrastRatio !== undefined
        ? `${es.sentence(`${OPACITIES[word].es}: una película de ${es.micrometres(filmUm)} ${word === "opaque" ? "cubre su fondo" : "deja ver su fondo"} (relación de contraste ${es.decimals(contrastRatio, 3)}), aunque dispersa como una película ${OPACITIES[byScattering].es}, con una potencia (S\u00b7X, dispersión por espesor) de ${es.significant(scatteringPower, 2)}`)} ${OUR_LIMITS.es}`
        : `${es.sentence(`${OPACITIES[word].es}: una película de ${es.micrometres(filmUm)} dispersa con una potencia (S\u00b7X, dispersión por espesor) de ${es.significant(scatteringPower, 2)}${es.bracketed(limitOf(word).es, reach(spans)?.es)}`)} Una película que absorbe tanta luz cubre una carta por poco que disperse, y su relación de contraste no da ninguna clase. ${OUR_LIMITS.es}`,
  }),
  "too-dark-for-contrast-ratio": ({ contrastRatio }) => ({
    en: `We cannot say how transparent it is: a film that swallows so much light hides the chart whatever it scatters (contrast ratio ${en.decimals(contrastRatio, 3)}), and how much it scatters we do not know.`,
    de: `Wie lasierend die Farbe ist, lässt sich nicht sagen: Ein Film, der so viel Licht schluckt, deckt die Prüfkarte, wie wenig er auch streut (Kontrastverhältnis ${de.decimals(contrastRatio, 3)}), und wie stark er streut, wissen wir nicht.`,
    fr: `Nous ne pouvons dire à quel point elle est transparente\u202f: un film qui absorbe tant de lumière couvre la carte, si peu qu’il diffuse (rapport de contraste ${fr.decimals(contrastRatio, 3)}), et nous ne savons pas combien il diffuse.`,
    es: `No podemos decir hasta qué punto es transparente: una película que absorbe tanta luz cubre la carta por poco que disperse (relación de contraste ${es.decimals(contrastRatio, 3)}), y no sabemos cuánto dispersa.`,
  }),
  "film-not-comparable": ({ filmUm, wantedUm }) => ({
    en: `The film read, ${en.micrometres(filmUm)}, is too far from the ${en.micrometres(wantedUm)} that words of opacity are meant for.`,
    de: `Der gemessene Film, ${de.micrometres(filmUm)}, liegt zu weit von den ${de.micrometres(wantedUm)} entfernt, für die die Angaben zum Deckvermögen gelten.`,
    fr: `Le film mesuré, ${fr.micrometres(filmUm)}, est trop loin des ${fr.micrometres(wantedUm)} pour lesquels valent nos mots d’opacité.`,
    es: `La película medida, ${es.micrometres(filmUm)}, está demasiado lejos de los ${es.micrometres(wantedUm)} para los que valen nuestras palabras de opacidad.`,
  }),
};
