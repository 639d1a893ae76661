import type { PhotographStatement } from "../../patches/statements.ts";
import type { Interval } from "../../quantities/interval.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { NUMBERS } from "./phrases.ts";

const ends = ([low, high]: Interval): string =>
  `${NUMBERS.decimal(low, 0)} a ${NUMBERS.decimal(high, 0)}`;

export const PATCH_RULINGS: WordingsOf<PhotographStatement> = {
  "photograph-corrected": ({ patches, median, largest }) =>
    `Colores corregidos según ${patches} muestras medidas. El error en una muestra apartada es de \u0394E00 ${NUMBERS.decimal(median, 1)} (mediana), y en la peor de ${NUMBERS.decimal(largest, 1)}.`,
  "photograph-not-corrected": ({ median, limit }) =>
    `Colores sin corregir: el error en las muestras apartadas es de \u0394E00 ${NUMBERS.decimal(median, 1)} (mediana), y se admite ${NUMBERS.decimal(limit, 0)} como máximo.`,
  "photograph-as-it-came": () => "Colores sin corregir.",
  "light-evened": ({ percent }) =>
    `La luz está igualada según el fondo desnudo: en la esquina más oscura caía el ${NUMBERS.decimal(percent, 0)} % de lo que caía en la más clara.`,
  "colour-of-photograph": ({ L, a, b }) =>
    `Estimado según esta fotografía: L* ${ends(L)}, a* ${ends(a)}, b* ${ends(b)} (D65, 2\u00b0).`,
  "photograph-beside-reading": ({ deltaE00 }) =>
    `El color medido y el fotografiado difieren en \u0394E00 ${NUMBERS.decimal(deltaE00, 1)}; vale la medición.`,
  "texture-in-read-colour": () =>
    "La película sola: su superficie tal como se fotografió, su color tal como se midió.",
};
