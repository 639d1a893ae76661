import type { Statement } from "../quantities/statement.ts";
import type { Words } from "../words/words.ts";

/** A ruling's sentence. @throws RangeError for a rule that the language has no sentence for: a build never prints a bare key. */
export function statementText(
  ruling: Statement,
  words: Pick<Words, "rulings" | "substance">,
): string {
  const wording = words.rulings[ruling.rule];
  if (wording === undefined)
    throw new RangeError(
      `The rule is ${ruling.rule}; right would be a rule with a row in lib/words/rulings`,
    );
  return wording(ruling.values, words.substance);
}
