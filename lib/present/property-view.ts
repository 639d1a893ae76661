import { isKnown, type Amount, type Known } from "../quantities/figure.ts";
import type { FigureEntry } from "../sheet/figure-entries.ts";
import { unitText, valueText } from "./figure-text.ts";
import { standingView } from "./standing-view.ts";
import type { LinkView, PropertyView } from "./views.ts";
import type { Words } from "../words/words.ts";

/** A figure as a row of a property table: value, unit, standing, method, source; or why there is none. */
export function propertyView(
  { row, figure }: FigureEntry,
  words: Words,
  sourceLink: (key: string) => LinkView,
  name = words.figures[row.word],
): PropertyView {
  const gloss = words.glosses[row.word];
  const named = { name, ...(gloss === undefined ? {} : { gloss }) };
  if (!isKnown(figure)) {
    return {
      ...named,
      standing: { kind: "not stated", word: words.standings["not stated"].word },
      reason: words.absence(figure),
    };
  }
  const value = valueText(row, figure, words);
  const unit = unitText(figure.unit, words, value);
  return {
    ...named,
    value,
    ...(unit === "" ? {} : { unit }),
    standing: standingView(figure, words),
    ...(worthSaying(figure)
      ? { note: `\u00b1\u00a0${words.numbers.significant(figure.uncertainty, 1)}` }
      : {}),
    method: words.method(figure.method),
    ...(figure.source === undefined ? {} : { source: sourceLink(figure.source) }),
  };
}

/** An uncertainty under a hundredth of its figure, or under 0.05, lies below what the figure is rounded to. */
function worthSaying(
  figure: Known<Amount>,
): figure is Known<number> & { readonly uncertainty: number } {
  const { value, uncertainty } = figure;
  return (
    typeof value === "number" &&
    uncertainty !== undefined &&
    uncertainty >= 0.05 &&
    uncertainty >= Math.abs(value) / 100
  );
}
