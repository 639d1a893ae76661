import { criteriaIn, criterionFigures } from "../lot-criteria.ts";
import type { Charted } from "../../lots/control-chart.ts";
import type { LotStatement } from "../../lots/statements.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { upperFirst } from "../letter-case.ts";
import { FORMS, GEOMETRIES, wordOf } from "./closed-words.ts";
import { NUMBERS, within } from "./phrases.ts";

export const CRITERIA = criteriaIn(
  {
    masstone: "Tono pleno",
    letDown: "Rebaje",
    strength: "Poder colorante",
    residual: "Rebaje a igual fuerza",
    fineness: "Finura de molienda",
    oilIndex: "Índice de aceite",
    density: "Densidad",
  },
  "g por 100 g",
);

export const { limitsText, figureOf, withUncertainty } = criterionFigures(CRITERIA, {
  atMost: "como máximo",
  to: "a",
  beforeUnit: "\u00a0",
  numbers: NUMBERS,
});

/** What a chart follows, as it stands inside a sentence. */
const CHARTED: Readonly<Record<Charted, string>> = {
  strength: "fuerza",
  letDown: "diferencia del rebaje con el patrón",
  masstone: "diferencia del tono pleno con el patrón",
};

const NOT_READ = {
  masstone:
    "No hay registrado ningún espectro de su tono pleno: el veredicto no dice nada del tono pleno.",
  "let-down":
    "No hay registrado ningún espectro de un rebaje suyo: el veredicto no dice nada de su fuerza.",
  both: "No hay registrado ningún espectro de su tono pleno ni de un rebaje.",
} as const;

export const LOT_RULINGS: WordingsOf<LotStatement> = {
  "within-tolerance": ({ criterion, value, limits, uncertainty }) =>
    `${CRITERIA[criterion].name}: ${withUncertainty(criterion, value, uncertainty)}, dentro de la tolerancia (${limitsText(criterion, limits)}).`,
  "near-its-tolerance": ({ criterion, value, limits, uncertainty }) =>
    `${CRITERIA[criterion].name}: ${withUncertainty(criterion, value, uncertainty)}, demasiado cerca del límite (${limitsText(criterion, limits)}) para distinguirlo de él.`,
  "out-of-tolerance": ({ criterion, value, limits, uncertainty }) =>
    `${CRITERIA[criterion].name}: ${withUncertainty(criterion, value, uncertainty)}, fuera de la tolerancia (${limitsText(criterion, limits)}).`,
  "reads-as-in-another-white": ({ white, other, deltaE00 }) =>
    `El rebaje está anotado en ${within(white)} y da lo mismo que el patrón en ${within(other)} (\u0394E00 ${NUMBERS.decimal(deltaE00, 2)}): se pesó el blanco equivocado. Repetir el rebaje antes de juzgar el lote.`,
  "lot-not-read-as-standard": ({ what, lot, standard }) =>
    `El ${wordOf(FORMS, what)} se midió en ${wordOf(GEOMETRIES, lot)} y el del patrón en ${wordOf(GEOMETRIES, standard)}: no se pueden comparar, y el ${wordOf(FORMS, what)} no se juzga.`,
  "standard-has-no-masstone": () =>
    "No hay registrado ningún espectro del tono pleno del patrón, y el tono pleno no se juzga.",
  "lot-not-read": ({ what }) => NOT_READ[what],
  "lot-has-no-let-down-of-standard": ({ white, ratio }) =>
    `El patrón no tiene rebaje ${ratio} en ${within(white)}, y la fuerza no se juzga.`,
  "read-under-another-calibration": ({ lot, standard }) =>
    `El lote se midió con la calibración de ${lot} y el patrón con la de ${standard}: el error de las calibraciones del instrumento está en la incertidumbre. Medir otra vez el patrón conservado junto al lote para más certeza.`,
  "lot-beyond-limits": ({ of, value }) =>
    `Un lote, con ${figureOf(of, value)} (${CHARTED[of]}), sale de los límites que fijan todos los lotes.`,
  "lots-far-apart": ({ of, range, limit }) =>
    `Dos lotes seguidos distan ${figureOf(of, range)} (${CHARTED[of]}), y casi nunca más de ${figureOf(of, limit)}.`,
  "lots-drifting-up": ({ of, count }) =>
    `${upperFirst(CHARTED[of])}: ha subido en ${count} lotes seguidos; deriva.`,
  "lots-drifting-down": ({ of, count }) =>
    `${upperFirst(CHARTED[of])}: ha bajado en ${count} lotes seguidos; deriva.`,
  "lots-all-above": ({ of, count }) =>
    `${count} lotes seguidos están por encima de la media (${CHARTED[of]}).`,
  "lots-all-below": ({ of, count }) =>
    `${count} lotes seguidos están por debajo de la media (${CHARTED[of]}).`,
};
