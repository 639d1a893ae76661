import { criteriaIn, criterionFigures } from "../lot-criteria.ts";
import type { Charted } from "../../lots/chart-signals.ts";
import { NUMBERS } from "./phrases.ts";

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
  "g por 100\u00a0g",
);

export const { limitsText, figureOf, withUncertainty } = criterionFigures(CRITERIA, {
  atMost: "como máximo",
  to: "a",
  beforeUnit: "\u00a0",
  numbers: NUMBERS,
});

/** What a chart follows, as it stands inside a sentence. */
export const CHARTED: Readonly<Record<Charted, string>> = {
  strength: "fuerza",
  letDown: "diferencia del rebaje con el patrón",
  masstone: "diferencia del tono pleno con el patrón",
};

export const NOT_READ = {
  masstone:
    "No hay registrado ningún espectro de su tono pleno: el veredicto no dice nada del tono pleno.",
  "let-down":
    "No hay registrado ningún espectro de un rebaje suyo: el veredicto no dice nada de su fuerza.",
  both: "No hay registrado ningún espectro de su tono pleno ni de un rebaje.",
} as const;

export const WITHOUT_STRENGTH = {
  "pigment-fluoresces": "es fluorescente",
  "pigment-is-flakes": "está formado por laminillas",
} as const;
