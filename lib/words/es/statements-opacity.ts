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

const OWN_LIMITS = "Los límites de estas palabras son nuestros, no de una norma.";

/** How opaque a film is, and by what that was judged. */
export const OPACITY_RULINGS: WordingsOf<OpacityStatement | OpacityContradiction> = {
  "opacity-unlike-its-pigment": (v) =>
    `El cálculo da «${OPACITIES[v.class]}», y de su pigmento se espera «${OPACITIES[v.expected]}».`,
  "opacity-by-contrast-ratio": ({ class: word, filmUm, contrastRatio, contrastRatioMin, bound }) =>
    sentence(
      `${bound === "at least" && word !== "opaque" ? `al menos ${OPACITIES[word]}` : OPACITIES[word]}: una película de ${micrometres(filmUm)} tiene una relación de contraste de ${bound === undefined ? "" : `${BOUNDS[bound]} `}${decimals(contrastRatio, 3)}${bracketed(
        contrastRatioMin > 0 ? `desde ${decimals(contrastRatioMin, 2)}` : undefined,
        "según límites nuestros",
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
      ? `${sentence(`${OPACITIES[word]}: una película de ${micrometres(filmUm)} ${word === "opaque" ? "cubre su fondo" : "deja ver su fondo"} (relación de contraste ${decimals(contrastRatio, 3)}), aunque dispersa como una película ${OPACITIES[byScattering]}, con S\u00b7X ${significant(scatteringPower, 2)}`)} ${OWN_LIMITS}`
      : `${sentence(`${OPACITIES[word]}: una película de ${micrometres(filmUm)} dispersa con S\u00b7X ${significant(scatteringPower, 2)}${bracketed(limitOf(word), reach(spans))}`)} Una película tan oscura cubre una carta por su sola oscuridad, y su relación de contraste no da ninguna clase. ${OWN_LIMITS}`,
  "too-dark-for-contrast-ratio": ({ contrastRatio }) =>
    `No podemos decir cuán transparente es: una película tan oscura cubre la carta por su sola oscuridad (relación de contraste ${decimals(contrastRatio, 3)}), y no sabemos cuánto dispersa.`,
  "film-not-comparable": ({ filmUm, wantedUm }) =>
    `La película medida, ${micrometres(filmUm)}, está demasiado lejos de los ${micrometres(wantedUm)} para los que valen las palabras de opacidad.`,
};

function limitOf(word: OpacityClass): string {
  const { from, below = 0 } = scatteringPowerLimit(word);
  return from === undefined
    ? `por debajo de ${significant(below, 2)}`
    : `desde ${significant(from, 2)}`;
}

function reach(spans: readonly OpacityClass[]): string | undefined {
  const [first] = spans;
  const last = spans.at(-1);
  return spans.length < 2 || first === undefined || last === undefined
    ? undefined
    : `el intervalo va de ${OPACITIES[first]} a ${OPACITIES[last]}`;
}
