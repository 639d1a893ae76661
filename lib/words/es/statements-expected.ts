import type { ExpectedStatement } from "../../optics/tints/expected-ladder.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { decimals, namesWithin, within } from "./phrases.ts";

/** What is expected of a colour in a white that it was not let down in. */
export const EXPECTED_RULINGS: WordingsOf<ExpectedStatement> = {
  "expected-in-white": ({ white, from, through, deltaE00 }) =>
    `No pintado en ${within(white)}: el aspecto previsible de una capa que cubre, según sus rebajes en ${within(from)} y lo que ${named(through)} en ambos; el error puede ser de \u0394E00\u00a0${decimals(deltaE00, 0)}.`,
};

/** By name as long as a reader takes them in. */
const NAMED_MAX = 3;

function named(colours: readonly string[]): string {
  const [first] = colours;
  if (colours.length === 1 && first !== undefined) return `hace ${within(first)}`;
  return colours.length > NAMED_MAX
    ? `hacen otros ${colours.length} colores`
    : `hacen ${namesWithin(colours)}`;
}
