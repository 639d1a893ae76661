import type { DrawnCoatStatement } from "../../optics/films/drawn-coat.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { decimals } from "./phrases.ts";

/** What a drawdown of unknown thickness tells of hiding. */
export const DRAWN_COAT_RULINGS: WordingsOf<DrawnCoatStatement> = {
  "coat-hides-as-drawn": ({ contrast }) =>
    `As drawn down it hid a black-and-white chart (contrast ratio ${decimals(Math.min(contrast, 1), 2)}); how thick that film was is not recorded.`,
};
