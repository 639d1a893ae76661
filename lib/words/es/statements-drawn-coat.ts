import type { DrawnCoatStatement } from "../../optics/films/drawn-coat.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { decimals } from "./phrases.ts";

/** What a drawdown of unknown thickness tells of hiding. */
export const DRAWN_COAT_RULINGS: WordingsOf<DrawnCoatStatement> = {
  "coat-hides-as-drawn": ({ contrast }) =>
    `Tal como se aplicó, cubría una carta en blanco y negro (relación de contraste ${decimals(Math.min(contrast, 1), 2)}); el espesor de esa película no está registrado.`,
};
