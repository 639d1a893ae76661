import {
  scatteringPowerLimit,
  type OpacityClass,
  type OpacityStatement,
} from "../../optics/films/opacity.ts";
import type { OpacityContradiction } from "../../optics/films/expected-opacity.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { BOUND_WORDS, OPACITY_WORDS } from "./closed-sets.ts";
import { bracketed, decimals, micrometres, sentence, significant } from "./phrases.ts";

const OUR_LIMITS = "Die Grenzen dieser Wörter sind unsere eigenen, nicht die einer Norm.";

/** How opaque a film is, and by what that was judged. */
export const OPACITY_RULINGS: WordingsOf<OpacityStatement | OpacityContradiction> = {
  "opacity-unlike-its-pigment": (v) =>
    `Errechnet ist „${OPACITY_WORDS[v.class]}“, und nach ihrem Pigment ist „${OPACITY_WORDS[v.expected]}“ zu erwarten.`,
  "opacity-by-contrast-ratio": ({ class: word, filmUm, contrastRatio, contrastRatioMin, bound }) =>
    sentence(
      `${bound === "at least" && word !== "opaque" ? "mindestens " : ""}${OPACITY_WORDS[word]}: ein Film von ${micrometres(filmUm)} hat ein Kontrastverhältnis von ${bound === undefined ? "" : `${BOUND_WORDS[bound]} `}${decimals(contrastRatio, 3)}${bracketed(
        contrastRatioMin > 0 ? `ab ${decimals(contrastRatioMin, 2)}` : undefined,
        "nach eigenen Grenzen",
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
      ? `${sentence(`${OPACITY_WORDS[word]}: ein Film von ${micrometres(filmUm)} ${word === "opaque" ? "deckt seinen Grund" : "lässt seinen Grund durchscheinen"} (Kontrastverhältnis ${decimals(contrastRatio, 3)}), obwohl er mit S\u00b7X ${significant(scatteringPower, 2)} so streut, wie es „${OPACITY_WORDS[byScattering]}“ entspricht`)} ${OUR_LIMITS}`
      : `${sentence(`${OPACITY_WORDS[word]}: ein Film von ${micrometres(filmUm)} streut mit S\u00b7X ${significant(scatteringPower, 2)}${bracketed(limitOf(word), reach(spans))}`)} Ein so dunkler Film deckt eine Prüfkarte durch seine Dunkelheit, sein Kontrastverhältnis ergibt daher keine Klasse. ${OUR_LIMITS}`,
  "too-dark-for-contrast-ratio": ({ contrastRatio }) =>
    `Wie lasierend sie ist, lässt sich nicht sagen: ein so dunkler Film deckt die Prüfkarte durch seine Dunkelheit (Kontrastverhältnis ${decimals(contrastRatio, 3)}), und wie stark er streut, wissen wir nicht.`,
  "film-not-comparable": ({ filmUm, wantedUm }) =>
    `Der gemessene Film, ${micrometres(filmUm)}, liegt zu weit weg von den ${micrometres(wantedUm)}, für die die Wörter des Deckvermögens gelten.`,
};

function limitOf(word: OpacityClass): string {
  const { from, below = 0 } = scatteringPowerLimit(word);
  return from === undefined ? `unter ${significant(below, 2)}` : `ab ${significant(from, 2)}`;
}

function reach(spans: readonly OpacityClass[]): string | undefined {
  const [first, last] = [spans[0], spans.at(-1)];
  return spans.length < 2 || first === undefined || last === undefined
    ? undefined
    : `der Bereich reicht von ${OPACITY_WORDS[first]} bis ${OPACITY_WORDS[last]}`;
}
