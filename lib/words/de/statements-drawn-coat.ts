import type { DrawnCoatStatement } from "../../optics/films/drawn-coat.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { decimals } from "./phrases.ts";

/** What a drawdown of unknown thickness tells of hiding. */
export const DRAWN_COAT_RULINGS: WordingsOf<DrawnCoatStatement> = {
  "coat-hides-as-drawn": ({ contrast }) =>
    `So aufgestrichen deckte sie eine schwarzweiße Prüfkarte (Kontrastverhältnis ${decimals(Math.min(contrast, 1), 2)}); wie dick dieser Film war, ist nicht aufgezeichnet.`,
};
