import type { DrawnCoatStatement } from "../../optics/films/drawn-coat.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { decimals } from "./phrases.ts";

/** What a drawdown of unknown thickness tells of hiding. */
export const DRAWN_COAT_RULINGS: WordingsOf<DrawnCoatStatement> = {
  "coat-hides-as-drawn": ({ contrast }) =>
    `Telle qu’appliquée, elle couvrait une carte noire et blanche (rapport de contraste ${decimals(Math.min(contrast, 1), 2)})\u202f; l’épaisseur de ce film n’est pas consignée.`,
};
