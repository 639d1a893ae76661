import { criteriaIn, criterionFigures } from "../lot-criteria.ts";
import type { Charted } from "../../lots/control-chart.ts";
import type { LotStatement } from "../../lots/statements.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { decimalText } from "../number-text.ts";
import { within } from "./statements-phrases.ts";

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
});

/** What a chart follows. */
const CHARTED: Readonly<Record<Charted, string>> = {
  strength: "Farbstärke",
  letDown: "Abstand der Aufhellung vom Standard",
  masstone: "Abstand des Volltons vom Standard",
};

const PARTS = { masstone: "Der Vollton", "let-down": "Die Aufhellung" } as const;

export const LOT_RULINGS: WordingsOf<LotStatement> = {
  "within-tolerance": ({ criterion: of, value, limits, uncertainty }) =>
    `${CRITERIA[of].name} ${withUncertainty(of, value, uncertainty)} liegt in der Toleranz (${limitsText(of, limits)}).`,
  "near-its-tolerance": ({ criterion: of, value, limits, uncertainty }) =>
    `${CRITERIA[of].name} ${withUncertainty(of, value, uncertainty)} liegt zu nah an der Toleranz (${limitsText(of, limits)}), um davon unterschieden zu werden: noch einmal messen.`,
  "out-of-tolerance": ({ criterion: of, value, limits, uncertainty }) =>
    `${CRITERIA[of].name} ${withUncertainty(of, value, uncertainty)} liegt außerhalb der Toleranz (${limitsText(of, limits)}).`,
  "reads-as-in-another-white": ({ white, other, deltaE00 }) =>
    `Die Aufhellung ist in ${within(white)} notiert und misst wie der Standard in ${within(other)} (\u0394E00 ${decimalText(deltaE00, 2)}): das falsche Weiß wurde gewogen. Noch einmal aufhellen, bevor die Charge beurteilt wird.`,
  "lot-not-read-as-standard": ({ what }) =>
    `${PARTS[what]} wurde nicht so gemessen wie beim Standard und wird nicht beurteilt.`,
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
