import type { PhotographStatement } from "../../patches/statements.ts";
import type { Interval } from "../../quantities/interval.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { NUMBERS } from "./phrases.ts";

const ends = ([low, high]: Interval): string =>
  `${NUMBERS.decimal(low, 0)} à ${NUMBERS.decimal(high, 0)}`;

export const PATCH_RULINGS: WordingsOf<PhotographStatement> = {
  "photograph-corrected": ({ patches, median, largest }) =>
    `Couleurs corrigées d’après ${patches} plages mesurées. Une plage mise de côté s’écarte de \u0394E00 ${NUMBERS.decimal(median, 1)} (médiane), la pire de ${NUMBERS.decimal(largest, 1)}.`,
  "photograph-not-corrected": ({ median, limit }) =>
    `Couleurs non corrigées\u202f: les plages mises de côté s’écartent de \u0394E00 ${NUMBERS.decimal(median, 1)} (médiane), il faudrait ${NUMBERS.decimal(limit, 0)} au plus.`,
  "photograph-as-it-came": () => "Couleurs non corrigées.",
  "light-evened": ({ percent }) =>
    `La lumière est égalisée d’après le fond nu\u202f: le coin le plus sombre recevait ${NUMBERS.decimal(percent, 0)} % de ce que recevait le plus clair.`,
  "colour-of-photograph": ({ L, a, b }) =>
    `Estimé d’après cette photographie\u202f: L* ${ends(L)}, a* ${ends(a)}, b* ${ends(b)} (D65, 2\u00b0).`,
  "photograph-beside-reading": ({ deltaE00 }) =>
    `La couleur mesurée et la couleur photographiée diffèrent de \u0394E00 ${NUMBERS.decimal(deltaE00, 1)}\u202f; la mesure fait foi.`,
  "texture-in-read-colour": () =>
    "Le film seul\u202f: sa surface telle que photographiée, sa couleur telle que mesurée.",
};
