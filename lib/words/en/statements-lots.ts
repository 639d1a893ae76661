import { criteriaIn, criterionFigures } from "../lot-criteria.ts";
import type { Charted } from "../../lots/control-chart.ts";
import type { LotStatement } from "../../lots/statements.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { upperFirst } from "../letter-case.ts";
import { decimalText } from "../number-text.ts";

export const CRITERIA = criteriaIn(
  {
    masstone: "Masstone",
    letDown: "Let-down",
    strength: "Tinting strength",
    residual: "Let-down at equal strength",
    fineness: "Fineness of grind",
    oilIndex: "Oil index",
    density: "Density",
  },
  "g to 100 g",
);

export const { limitsText, figureOf, withUncertainty } = criterionFigures(CRITERIA, {
  atMost: "at most",
  to: "to",
  beforeUnit: " ",
});

/** What a chart follows, as it stands inside a sentence. */
const CHARTED: Readonly<Record<Charted, string>> = {
  strength: "strength",
  letDown: "the let-down\u2019s difference from the standard",
  masstone: "the masstone\u2019s difference from the standard",
};

export const LOT_RULINGS: WordingsOf<LotStatement> = {
  "within-tolerance": ({ criterion, value, limits, uncertainty }) =>
    `${CRITERIA[criterion].name} ${withUncertainty(criterion, value, uncertainty)} is within ${limitsText(criterion, limits)}.`,
  "near-its-tolerance": ({ criterion, value, limits, uncertainty }) =>
    `${CRITERIA[criterion].name} ${withUncertainty(criterion, value, uncertainty)} reaches across a limit (${limitsText(criterion, limits)}) with its uncertainty: read it again.`,
  "out-of-tolerance": ({ criterion, value, limits, uncertainty }) =>
    `${CRITERIA[criterion].name} ${withUncertainty(criterion, value, uncertainty)} is outside ${limitsText(criterion, limits)}.`,
  "reads-as-in-another-white": ({ white, other, deltaE00 }) =>
    `The let-down is written down in ${white.replaceAll("-", " ")} and reads as the standard does in ${other.replaceAll("-", " ")} (\u0394E00 ${decimalText(deltaE00, 2)}): the wrong white was weighed. Let it down again before the lot is judged.`,
  "lot-not-read-as-standard": ({ what }) =>
    `The ${what} was not read as the standard's was, and is not judged.`,
  "lot-has-no-let-down-of-standard": ({ white, ratio }) =>
    `The standard has no let-down of ${ratio} in ${white.replaceAll("-", " ")}, so that strength is not judged.`,
  "read-under-another-calibration": ({ lot, standard }) =>
    `The lot was read under the calibration of ${lot} and the standard under that of ${standard}: what the instrument's calibrations err by is in the uncertainty. Read the retained standard again beside the lot to be surer.`,
  "lot-beyond-limits": ({ of, value }) =>
    `One lot, at ${figureOf(of, value)} (${CHARTED[of]}), lies beyond the limits that all lots set.`,
  "lots-far-apart": ({ of, range, limit }) =>
    `Two lots one after another are ${figureOf(of, range)} apart (${CHARTED[of]}), and hardly ever more than ${figureOf(of, limit)}.`,
  "lots-drifting-up": ({ of, count }) =>
    `${upperFirst(CHARTED[of])} has risen over ${count} lots one after another: it drifts.`,
  "lots-drifting-down": ({ of, count }) =>
    `${upperFirst(CHARTED[of])} has fallen over ${count} lots one after another: it drifts.`,
  "lots-all-above": ({ of, count }) =>
    `${count} lots one after another lie above the mean (${CHARTED[of]}).`,
  "lots-all-below": ({ of, count }) =>
    `${count} lots one after another lie below the mean (${CHARTED[of]}).`,
};
