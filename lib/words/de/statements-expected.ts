import type { ExpectedStatement } from "../../optics/tints/expected-ladder.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { decimals, namesWithin, within } from "./phrases.ts";

/** What is expected of a colour in a white that it was not let down in. */
export const EXPECTED_RULINGS: WordingsOf<ExpectedStatement> = {
  "expected-in-white": ({ white, from, through, deltaE00 }) =>
    `Nicht aufgestrichen in ${within(white)}: wie ein deckender Auftrag voraussichtlich aussieht, nach den Aufhellungen in ${within(from)} und nach dem Verhalten von ${named(through)} in beiden Weiß; die Abweichung kann \u0394E00\u00a0${decimals(deltaE00, 0)} betragen.`,
};

/** By name as long as a reader takes them in. */
const NAMED_MAX = 3;

function named(colours: readonly string[]): string {
  return colours.length > NAMED_MAX ? `${colours.length} anderen Farben` : namesWithin(colours);
}
