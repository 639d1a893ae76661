import type { DrawnCoatStatement } from "../../optics/films/drawn-coat.ts";
import { de, en, es, fr } from "../phrases-in-each.ts";
import type { RulingsInEach } from "./rulings-in-each.ts";

/** What a drawdown of unknown thickness tells of hiding. */
export const DRAWN_COAT_RULINGS: RulingsInEach<DrawnCoatStatement> = {
  "coat-hides-as-drawn": ({ contrast }) => ({
    en: `As drawn down it hid a black-and-white chart (contrast ratio ${en.decimals(Math.min(contrast, 1), 2)}); how thick that film was is not recorded.`,
    de: `So aufgestrichen deckte sie eine schwarzweiße Prüfkarte (Kontrastverhältnis ${de.decimals(Math.min(contrast, 1), 2)}); wie dick dieser Film war, ist nicht aufgezeichnet.`,
    fr: `Telle qu’appliquée, elle couvrait une carte noire et blanche (rapport de contraste ${fr.decimals(Math.min(contrast, 1), 2)})\u202f; l’épaisseur de ce film n’est pas consignée.`,
    es: `Tal como se aplicó, cubría una carta en blanco y negro (relación de contraste ${es.decimals(Math.min(contrast, 1), 2)}); el espesor de esa película no está registrado.`,
  }),
};
