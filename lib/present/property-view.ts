import { isKnown, type Amount, type Known } from "../quantities/figure.ts";
import type { FigureEntry } from "../sheet/figure-entries.ts";
import type { FigureRow } from "../sheet/figure-table.ts";
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
  const named = { name, ...(gloss !== undefined && { gloss }) };
  if (!isKnown(figure)) {
    return {
      ...named,
      standing: { kind: "not stated", word: words.standings["not stated"].word },
      reason: words.absence(figure),
    };
  }
  const value = valueText(row, figure, words);
  const unit = unitText(figure.unit, words, value);
  const uncertainty = toldUncertainty(row, figure);
  return {
    ...named,
    value,
    ...(unit !== "" && { unit }),
    standing: standingView(figure, words),
    ...(uncertainty !== undefined && {
      note: `\u00b1\u00a0${words.numbers.significant(uncertainty, 1)}`,
    }),
    method: words.method(figure.method),
    ...(figure.source !== undefined && { source: sourceLink(figure.source) }),
  };
}

/**
 * An uncertainty in the unit that its figure is printed in, of a share in percent.
 * @returns undefined under a hundredth of the figure, or under 0.05 (of a share half a percent): that lies
 *   below what the figure is rounded to.
 */
function toldUncertainty(
  row: FigureRow,
  { value, uncertainty }: Known<Amount>,
): number | undefined {
  if (typeof value !== "number" || uncertainty === undefined) return undefined;
  const [scale, least] = row.kind === "share" ? [100, 0.5] : [1, 0.05];
  return uncertainty * scale >= least && uncertainty >= Math.abs(value) / 100
    ? uncertainty * scale
    : undefined;
}
