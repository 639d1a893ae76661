import { criteriaIn, criterionFigures } from "../lot-criteria.ts";
import type { Charted } from "../../lots/chart-signals.ts";
import { NUMBERS } from "./phrases.ts";

export const CRITERIA = criteriaIn(
  {
    masstone: "Vollton",
    letDown: "Aufhellung",
    strength: "Farbstärke",
    residual: "Aufhellung bei gleicher Stärke",
    fineness: "Mahlfeinheit",
    oilIndex: "Ölindex",
    density: "Dichte",
  },
  "g auf 100\u00a0g",
);

export const { limitsText, figureOf, withUncertainty } = criterionFigures(CRITERIA, {
  atMost: "höchstens",
  to: "bis",
  beforeUnit: "\u00a0",
  numbers: NUMBERS,
});

/** What a chart follows. */
export const CHARTED: Readonly<Record<Charted, string>> = {
  strength: "Farbstärke",
  letDown: "Abstand der Aufhellung vom Standard",
  masstone: "Abstand des Volltons vom Standard",
};

export const PARTS = { masstone: "Der Vollton", "let-down": "Die Aufhellung" } as const;

export const NOT_READ = {
  masstone: "Vom Vollton ist kein Spektrum aufgezeichnet: Das Urteil sagt nichts über den Vollton.",
  "let-down":
    "Von einer Aufhellung ist kein Spektrum aufgezeichnet: Das Urteil sagt nichts über die Farbstärke.",
  both: "Weder vom Vollton noch von einer Aufhellung ist ein Spektrum aufgezeichnet.",
} as const;

export const WITHOUT_STRENGTH = {
  "pigment-fluoresces": "fluoresziert",
  "pigment-is-flakes": "besteht aus Plättchen",
} as const;
