import {
  scatteringPowerLimit,
  type OpacityClass,
  type OpacityStatement,
} from "../../optics/films/opacity.ts";
import type { OpacityContradiction } from "../../optics/films/expected-opacity.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { bracketed, decimals, micrometres, sentence, significant } from "./phrases.ts";

/** How opaque a film is, and by what that was judged. */
export const OPACITY_RULINGS: WordingsOf<OpacityStatement | OpacityContradiction> = {
  "opacity-unlike-its-pigment": (v) =>
    `Worked out as ${v.class}, and ${v.expected} is to be expected of its pigment.`,
  "opacity-by-contrast-ratio": ({ class: word, filmUm, contrastRatio, contrastRatioMin, bound }) =>
    sentence(
      `${bound === "at least" && word !== "opaque" ? `at least ${word}` : word}: a film of ${micrometres(filmUm)} has a contrast ratio of ${bound === undefined ? "" : `${bound} `}${decimals(contrastRatio, 3)}${bracketed(
        contrastRatioMin > 0 ? `from ${decimals(contrastRatioMin, 2)}` : undefined,
        "by limits of our own",
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
      ? `${sentence(`${word}: a film of ${micrometres(filmUm)} ${word === "opaque" ? "hides its ground" : "lets its ground through"} (contrast ratio ${decimals(contrastRatio, 3)}), though it scatters as ${articled(byScattering)} one does, with S\u00b7X ${significant(scatteringPower, 2)}`)} The limits of these words are our own, not a standard’s.`
      : `${sentence(`${word}: a film of ${micrometres(filmUm)} scatters with S\u00b7X ${significant(scatteringPower, 2)}${bracketed(limitOf(word), reach(spans))}`)} A film as dark as this hides a chart by its darkness, so its contrast ratio gives no class. The limits of these words are our own, not a standard’s.`,
  "too-dark-for-contrast-ratio": ({ contrastRatio }) =>
    `We cannot say how transparent it is: a film as dark as this hides the chart by its darkness (contrast ratio ${decimals(contrastRatio, 3)}), and we do not know how much it scatters.`,
  "film-not-comparable": ({ filmUm, wantedUm }) =>
    `The film read, ${micrometres(filmUm)}, is too far from the ${micrometres(wantedUm)} that words of opacity are meant for.`,
};

function articled(word: OpacityClass): string {
  return word === "opaque" ? "an opaque" : `a ${word}`;
}

function limitOf(word: OpacityClass): string {
  const { from, below = 0 } = scatteringPowerLimit(word);
  return from === undefined ? `below ${significant(below, 2)}` : `from ${significant(from, 2)}`;
}

function reach(spans: readonly OpacityClass[]): string | undefined {
  return spans.length < 2
    ? undefined
    : `the range reaches from ${spans[0] ?? ""} to ${spans.at(-1) ?? ""}`;
}
