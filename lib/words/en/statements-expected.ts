import type { ExpectedStatement } from "../../optics/tints/expected-ladder.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { decimals, namesWithin, within } from "./phrases.ts";

/** What is expected of a colour in a white that it was not let down in. */
export const EXPECTED_RULINGS: WordingsOf<ExpectedStatement> = {
  "expected-in-white": ({ white, from, through, deltaE00 }) =>
    `Not painted out in ${within(white)}: what a coat that hides is expected to look like, by its let-downs in ${within(from)} and by what ${named(through)} in both; it may be off by \u0394E00\u00a0${decimals(deltaE00, 0)}.`,
};

/** By name as long as a reader takes them in. */
const NAMED_MAX = 3;

function named(colours: readonly string[]): string {
  const [first] = colours;
  if (colours.length === 1 && first !== undefined) return `${within(first)} does`;
  return colours.length > NAMED_MAX
    ? `${colours.length} other colours do`
    : `${namesWithin(colours)} do`;
}
