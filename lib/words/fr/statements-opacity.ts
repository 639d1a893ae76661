import {
  scatteringPowerLimit,
  type OpacityClass,
  type OpacityStatement,
} from "../../optics/films/opacity.ts";
import type { OpacityContradiction } from "../../optics/films/expected-opacity.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { BOUNDS } from "./bounds.ts";
import { OPACITIES } from "./closed-words.ts";
import { bracketed, decimals, micrometres, sentence, significant } from "./phrases.ts";

const OWN_LIMITS = "Les limites de ces mots sont les nôtres, non celles d’une norme.";

/** How opaque a film is, and by what that was judged. */
export const OPACITY_RULINGS: WordingsOf<OpacityStatement | OpacityContradiction> = {
  "opacity-unlike-its-pigment": (v) =>
    `Le calcul donne «\u202f${OPACITIES[v.class]}\u202f», et de son pigment on attend «\u202f${OPACITIES[v.expected]}\u202f».`,
  "opacity-by-contrast-ratio": ({ class: word, filmUm, contrastRatio, contrastRatioMin, bound }) =>
    sentence(
      `${bound === "at least" && word !== "opaque" ? `au moins ${OPACITIES[word]}` : OPACITIES[word]}\u202f: un film de ${micrometres(filmUm)} a un rapport de contraste de ${bound === undefined ? "" : `${BOUNDS[bound]} `}${decimals(contrastRatio, 3)}${bracketed(
        contrastRatioMin > 0 ? `à partir de ${decimals(contrastRatioMin, 2)}` : undefined,
        "selon nos propres limites",
      )}`,
    ),
  "opacity-by-scattering": ({
    class: word,
    filmUm,
    scatteringPower,
    spans,
    byScattering,
    contrastRatio,
  }) =>
    byScattering !== undefined && contrastRatio !== undefined
      ? `${sentence(`${OPACITIES[word]}\u202f: un film de ${micrometres(filmUm)} ${word === "opaque" ? "couvre son fond" : "laisse voir son fond"} (rapport de contraste ${decimals(contrastRatio, 3)}), bien qu’il diffuse comme un film ${OPACITIES[byScattering]}, avec S\u00b7X ${significant(scatteringPower, 2)}`)} ${OWN_LIMITS}`
      : `${sentence(`${OPACITIES[word]}\u202f: un film de ${micrometres(filmUm)} diffuse avec S\u00b7X ${significant(scatteringPower, 2)}${bracketed(limitOf(word), reach(spans))}`)} Un film aussi sombre couvre une carte par sa seule noirceur, et son rapport de contraste ne donne aucune classe. ${OWN_LIMITS}`,
  "too-dark-for-contrast-ratio": ({ contrastRatio }) =>
    `Nous ne pouvons dire combien elle est transparente\u202f: un film aussi sombre couvre la carte par sa seule noirceur (rapport de contraste ${decimals(contrastRatio, 3)}), et nous ne savons pas combien il diffuse.`,
  "film-not-comparable": ({ filmUm, wantedUm }) =>
    `Le film mesuré, ${micrometres(filmUm)}, est trop loin des ${micrometres(wantedUm)} pour lesquels valent les mots de l’opacité.`,
};

function limitOf(word: OpacityClass): string {
  const { from, below = 0 } = scatteringPowerLimit(word);
  return from === undefined
    ? `au-dessous de ${significant(below, 2)}`
    : `à partir de ${significant(from, 2)}`;
}

function reach(spans: readonly OpacityClass[]): string | undefined {
  const [first] = spans;
  const last = spans.at(-1);
  return spans.length < 2 || first === undefined || last === undefined
    ? undefined
    : `l’intervalle va de ${OPACITIES[first]} à ${OPACITIES[last]}`;
}
