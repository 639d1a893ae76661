import { NUMBERS } from "./phrases.ts";
import { criteriaIn, criterionFigures } from "../lot-criteria.ts";
import type { Charted } from "../../lots/control-chart.ts";
import type { LotStatement } from "../../lots/statements.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { upperFirst } from "../letter-case.ts";
import { GEOMETRY_WORDS } from "./geometry-names.ts";

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
  numbers: NUMBERS,
});

/** What a chart follows, as it stands inside a sentence. */
const CHARTED: Readonly<Record<Charted, string>> = {
  strength: "strength",
  letDown: "the let-down\u2019s difference from the standard",
  masstone: "the masstone\u2019s difference from the standard",
};

const NOT_READ = {
  masstone: "No spectrum of its masstone is recorded: the verdict says nothing of the masstone.",
  "let-down":
    "No spectrum of a let-down of it is recorded: the verdict says nothing of its strength.",
  both: "No spectrum of its masstone or of a let-down is recorded.",
} as const;

function geometryOf(name: string): string {
  return GEOMETRY_WORDS[name] ?? name;
}

export const LOT_RULINGS: WordingsOf<LotStatement> = {
  "within-tolerance": ({ criterion, value, limits, uncertainty }) =>
    `${CRITERIA[criterion].name} ${withUncertainty(criterion, value, uncertainty)} is within ${limitsText(criterion, limits)}.`,
  "near-its-tolerance": ({ criterion, value, limits, uncertainty }) =>
    `${CRITERIA[criterion].name} ${withUncertainty(criterion, value, uncertainty)} reaches across a limit (${limitsText(criterion, limits)}) with its uncertainty.`,
  "out-of-tolerance": ({ criterion, value, limits, uncertainty }) =>
    `${CRITERIA[criterion].name} ${withUncertainty(criterion, value, uncertainty)} is outside ${limitsText(criterion, limits)}.`,
  "reads-as-in-another-white": ({ white, other, deltaE00 }) =>
    `The let-down is written down in ${white.replaceAll("-", " ")} and reads as the standard does in ${other.replaceAll("-", " ")} (\u0394E00 ${NUMBERS.decimal(deltaE00, 2)}): the wrong white was weighed. Let it down again before the lot is judged.`,
  "lot-not-read-as-standard": ({ what, lot, standard }) =>
    `The ${what} was read ${geometryOf(lot)} and the standard's ${geometryOf(standard)}: the two can't be held against each other, and the ${what} is not judged.`,
  "standard-has-no-masstone": () =>
    "No spectrum of the standard's masstone is recorded, so that the masstone is not judged.",
  "lot-not-read": ({ what }) => NOT_READ[what],
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
