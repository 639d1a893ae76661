import type { ExpectedStatement } from "../../optics/tints/expected-ladder.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { decimals, namesWithin, within } from "./phrases.ts";

/** What is expected of a colour in a white that it was not let down in. */
export const EXPECTED_RULINGS: WordingsOf<ExpectedStatement> = {
  "expected-in-white": ({ white, from, through, deltaE00 }) =>
    `Non peint dans ${within(white)}\u202f: l’aspect à prévoir d’une couche qui couvre, d’après ses dégradés dans ${within(from)} et ce que ${named(through)} dans les deux\u202f; l’écart peut aller à \u0394E00\u00a0${decimals(deltaE00, 0)}.`,
};

/** By name as long as a reader takes them in. */
const NAMED_MAX = 3;

function named(colours: readonly string[]): string {
  const [first] = colours;
  if (colours.length === 1 && first !== undefined) return `fait ${within(first)}`;
  return colours.length > NAMED_MAX
    ? `font ${colours.length} autres couleurs`
    : `font ${namesWithin(colours)}`;
}
