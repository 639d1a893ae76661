import { criteriaIn, criterionFigures } from "../lot-criteria.ts";
import type { Charted } from "../../lots/control-chart.ts";
import type { LotStatement } from "../../lots/statements.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { lowerFirst } from "../letter-case.ts";
import { GEOMETRY_NAMES } from "./geometry-names.ts";
import { inGerman } from "./closed-sets.ts";
import { NUMBERS, within } from "./phrases.ts";

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
  "g auf 100 g",
);

export const { limitsText, figureOf, withUncertainty } = criterionFigures(CRITERIA, {
  atMost: "höchstens",
  to: "bis",
  beforeUnit: " ",
  numbers: NUMBERS,
});

/** What a chart follows. */
const CHARTED: Readonly<Record<Charted, string>> = {
  strength: "Farbstärke",
  letDown: "Abstand der Aufhellung vom Standard",
  masstone: "Abstand des Volltons vom Standard",
};

const PARTS = { masstone: "Der Vollton", "let-down": "Die Aufhellung" } as const;

const NOT_READ = {
  masstone:
    "Von ihrem Vollton ist kein Spektrum aufgezeichnet: das Urteil sagt nichts über den Vollton.",
  "let-down":
    "Von einer Aufhellung ist kein Spektrum aufgezeichnet: das Urteil sagt nichts über die Farbstärke.",
  both: "Weder vom Vollton noch von einer Aufhellung ist ein Spektrum aufgezeichnet.",
} as const;

export const LOT_RULINGS: WordingsOf<LotStatement> = {
  "within-tolerance": ({ criterion: of, value, limits, uncertainty }) =>
    `${CRITERIA[of].name} ${withUncertainty(of, value, uncertainty)} liegt in der Toleranz (${limitsText(of, limits)}).`,
  "near-its-tolerance": ({ criterion: of, value, limits, uncertainty }) =>
    `${CRITERIA[of].name} ${withUncertainty(of, value, uncertainty)} liegt zu nah an der Toleranz (${limitsText(of, limits)}), um davon unterschieden zu werden.`,
  "out-of-tolerance": ({ criterion: of, value, limits, uncertainty }) =>
    `${CRITERIA[of].name} ${withUncertainty(of, value, uncertainty)} liegt außerhalb der Toleranz (${limitsText(of, limits)}).`,
  "reads-as-in-another-white": ({ white, other, deltaE00 }) =>
    `Die Aufhellung ist in ${within(white)} notiert und misst wie der Standard in ${within(other)} (\u0394E00 ${NUMBERS.decimal(deltaE00, 2)}): das falsche Weiß wurde gewogen. Noch einmal aufhellen, bevor die Charge beurteilt wird.`,
  "lot-not-read-as-standard": ({ what, lot, standard }) =>
    `${PARTS[what]} wurde ${inGerman(GEOMETRY_NAMES, lot)} gemessen, beim Standard ${inGerman(GEOMETRY_NAMES, standard)}: die beiden lassen sich nicht vergleichen, und ${lowerFirst(PARTS[what])} wird nicht beurteilt.`,
  "standard-has-no-masstone": () =>
    "Vom Vollton des Standards ist kein Spektrum aufgezeichnet, der Vollton wird daher nicht beurteilt.",
  "lot-not-read": ({ what }) => NOT_READ[what],
  "lot-has-no-let-down-of-standard": ({ white, ratio }) =>
    `Der Standard hat keine Aufhellung ${ratio} in ${within(white)}, die Farbstärke wird daher nicht beurteilt.`,
  "read-under-another-calibration": ({ lot, standard }) =>
    `Die Charge wurde unter der Kalibrierung ${lot} gemessen, der Standard unter ${standard}: worin die Kalibrierungen des Geräts voneinander abweichen, steckt in der Unsicherheit. Das Rückstellmuster des Standards neben der Charge noch einmal messen, für mehr Gewissheit.`,
  "lot-beyond-limits": ({ of, value }) =>
    `Eine Charge, bei ${figureOf(of, value)} (${CHARTED[of]}), liegt jenseits der Grenzen, die alle Chargen setzen.`,
  "lots-far-apart": ({ of, range, limit }) =>
    `Zwei Chargen nacheinander liegen ${figureOf(of, range)} auseinander (${CHARTED[of]}), sonst kaum je mehr als ${figureOf(of, limit)}.`,
  "lots-drifting-up": ({ of, count }) =>
    `${CHARTED[of]}: über ${count} Chargen nacheinander gestiegen, also eine Verschiebung.`,
  "lots-drifting-down": ({ of, count }) =>
    `${CHARTED[of]}: über ${count} Chargen nacheinander gefallen, also eine Verschiebung.`,
  "lots-all-above": ({ of, count }) =>
    `${count} Chargen nacheinander liegen über dem Mittelwert (${CHARTED[of]}).`,
  "lots-all-below": ({ of, count }) =>
    `${count} Chargen nacheinander liegen unter dem Mittelwert (${CHARTED[of]}).`,
};
