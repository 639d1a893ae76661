import { isKnown } from "../quantities/figure.ts";
import type { Leaf } from "../sheet/walk.ts";
import { decimalText, significantText } from "./number-text.ts";
import { unitText, valueText } from "./figure-text.ts";
import { standingView } from "./standing-view.ts";
import type { LinkView, PropertyView } from "./views.ts";
import type { Words } from "./words/words.ts";

/** A figure as a row of a property table: value, unit, standing, method, source; or why there is none. */
export function propertyView({ row, figure }: Leaf, words: Words, sourceLink: (key: string) => LinkView, name = words.figures[row.word]): PropertyView {
  if (name === undefined) throw new RangeError(`Unexpected figure word \`${row.word}\`, expected \`a name in words/${words.language}\``);
  const gloss = words.glosses[row.word];
  const named = { name, ...(gloss === undefined ? {} : { gloss }) };
  if (!isKnown(figure)) {
    return { ...named, standing: { kind: "not stated", word: words.standings["not stated"].word }, reason: words.absence(figure) };
  }
  const unit = unitText(figure.unit, words);
  return {
    ...named,
    value: valueText(row, figure, words),
    ...(unit === "" ? {} : { unit }),
    standing: standingView(figure, words),
    ...(figure.uncertainty === undefined || row.kind === "share" ? {} : { note: `\u00b1\u00a0${uncertaintyText(figure.uncertainty)}` }),
    method: figure.method,
    ...(figure.source === undefined ? {} : { source: sourceLink(figure.source) }),
  };
}

/** One significant digit, as an uncertainty is known no better. */
function uncertaintyText(uncertainty: number): string {
  return uncertainty < 0.05 ? `< ${decimalText(0.05, 2)}` : significantText(uncertainty, 1);
}
