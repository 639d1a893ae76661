import type { PhotographStatement } from "../../patches/statements.ts";
import type { Interval } from "../../quantities/interval.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { NUMBERS } from "./phrases.ts";

const ends = ([low, high]: Interval): string =>
  `${NUMBERS.decimal(low, 0)} bis ${NUMBERS.decimal(high, 0)}`;

export const PATCH_RULINGS: WordingsOf<PhotographStatement> = {
  "photograph-corrected": ({ patches, median, largest }) =>
    `Farben korrigiert nach ${patches} gemessenen Feldern. Ein weggelassenes Feld wird um \u0394E00 ${NUMBERS.decimal(median, 1)} verfehlt (Median), das schlechteste um ${NUMBERS.decimal(largest, 1)}.`,
  "photograph-not-corrected": ({ median, limit }) =>
    `Farben nicht korrigiert: weggelassene Felder werden um \u0394E00 ${NUMBERS.decimal(median, 1)} verfehlt (Median), höchstens ${NUMBERS.decimal(limit, 0)} wären recht.`,
  "photograph-as-it-came": () => "Farben nicht korrigiert.",
  "light-evened": ({ percent }) =>
    `Das Licht ist nach dem bloßen Grund ausgeglichen: auf die dunkelste Ecke fielen ${NUMBERS.decimal(percent, 0)} % dessen, was auf die hellste fiel.`,
  "colour-of-photograph": ({ L, a, b }) =>
    `Geschätzt nach diesem Foto: L* ${ends(L)}, a* ${ends(a)}, b* ${ends(b)} (D65, 2\u00b0).`,
  "photograph-beside-reading": ({ deltaE00 }) =>
    `Gemessene und fotografierte Farbe weichen um \u0394E00 ${NUMBERS.decimal(deltaE00, 1)} voneinander ab; die Messung gilt.`,
  "texture-in-read-colour": () =>
    "Der Film allein: Oberfläche wie fotografiert, Farbe wie gemessen.",
};
