import { criteriaIn, criterionFigures } from "../lot-criteria.ts";
import type { Charted } from "../../lots/chart-signals.ts";
import { NUMBERS } from "./phrases.ts";

export const CRITERIA = criteriaIn(
  {
    masstone: "Ton plein",
    letDown: "Dégradé",
    strength: "Pouvoir colorant",
    residual: "Dégradé à force égale",
    fineness: "Finesse de broyage",
    oilIndex: "Indice d’huile",
    density: "Masse volumique",
  },
  "g pour 100\u00a0g",
);

export const { limitsText, figureOf, withUncertainty } = criterionFigures(CRITERIA, {
  atMost: "au plus",
  to: "à",
  beforeUnit: "\u00a0",
  numbers: NUMBERS,
});

/** What a chart follows, as it stands inside a sentence. */
export const CHARTED: Readonly<Record<Charted, string>> = {
  strength: "force",
  letDown: "écart du dégradé à l’étalon",
  masstone: "écart du ton plein à l’étalon",
};

export const NOT_READ = {
  masstone:
    "Aucun spectre du ton plein du lot n’est consigné\u202f: le verdict ne dit rien du ton plein.",
  "let-down":
    "Aucun spectre d’un dégradé du lot n’est consigné\u202f: le verdict ne dit rien de sa force.",
  both: "Aucun spectre du ton plein du lot ni d’un de ses dégradés n’est consigné.",
} as const;

export const WITHOUT_STRENGTH = {
  "pigment-fluoresces": "est fluorescent",
  "pigment-is-flakes": "est en paillettes",
} as const;
