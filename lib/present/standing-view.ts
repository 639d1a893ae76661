import type { Figure, Standing, StandingKind } from "../quantities/figure.ts";
import type { StandingView } from "./views.ts";
import type { Words } from "../words/words.ts";

export function standingWord(kind: StandingKind, words: Words): StandingView {
  return { kind, word: words.standings[kind].word };
}

/** How a figure is known; a derived one also says what its weakest root is, unless that is a measurement. */
export function standingView(figure: Figure, words: Words): StandingView {
  if (figure.standing === "not stated") return standingWord("not stated", words);
  return derivedView(figure.standing, figure.restsOn, words);
}

function derivedView(standing: Standing, restsOn: Standing, words: Words): StandingView {
  const view = standingWord(standing, words);
  return standing === "derived" && restsOn !== "measured"
    ? { ...view, restsOn: words.restsOn(restsOn) }
    : view;
}
