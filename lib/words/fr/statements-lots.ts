import { criteriaIn, criterionFigures } from "../lot-criteria.ts";
import type { Charted } from "../../lots/control-chart.ts";
import type { LotStatement } from "../../lots/statements.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { upperFirst } from "../letter-case.ts";
import { FORMS, GEOMETRIES, wordOf } from "./closed-words.ts";
import { NUMBERS, within } from "./phrases.ts";

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
  "g pour 100 g",
);

export const { limitsText, figureOf, withUncertainty } = criterionFigures(CRITERIA, {
  atMost: "au plus",
  to: "à",
  beforeUnit: "\u00a0",
  numbers: NUMBERS,
});

/** What a chart follows, as it stands inside a sentence. */
const CHARTED: Readonly<Record<Charted, string>> = {
  strength: "force",
  letDown: "écart du dégradé à l’étalon",
  masstone: "écart du ton plein à l’étalon",
};

const NOT_READ = {
  masstone:
    "Aucun spectre de son ton plein n’est consigné\u202f: le verdict ne dit rien du ton plein.",
  "let-down":
    "Aucun spectre d’un dégradé n’en est consigné\u202f: le verdict ne dit rien de sa force.",
  both: "Aucun spectre de son ton plein ni d’un dégradé n’est consigné.",
} as const;

export const LOT_RULINGS: WordingsOf<LotStatement> = {
  "within-tolerance": ({ criterion, value, limits, uncertainty }) =>
    `${CRITERIA[criterion].name}\u202f: ${withUncertainty(criterion, value, uncertainty)}, dans la tolérance (${limitsText(criterion, limits)}).`,
  "near-its-tolerance": ({ criterion, value, limits, uncertainty }) =>
    `${CRITERIA[criterion].name}\u202f: ${withUncertainty(criterion, value, uncertainty)}, trop près de la limite (${limitsText(criterion, limits)}) pour en être distingué.`,
  "out-of-tolerance": ({ criterion, value, limits, uncertainty }) =>
    `${CRITERIA[criterion].name}\u202f: ${withUncertainty(criterion, value, uncertainty)}, hors tolérance (${limitsText(criterion, limits)}).`,
  "reads-as-in-another-white": ({ white, other, deltaE00 }) =>
    `Le dégradé est noté dans ${within(white)} et donne la même mesure que l’étalon dans ${within(other)} (\u0394E00 ${NUMBERS.decimal(deltaE00, 2)})\u202f: on a pesé le mauvais blanc. Refaire le dégradé avant de juger le lot.`,
  "lot-not-read-as-standard": ({ what, lot, standard }) =>
    `Le ${wordOf(FORMS, what)} a été mesuré en ${wordOf(GEOMETRIES, lot)}, celui de l’étalon en ${wordOf(GEOMETRIES, standard)}\u202f: les deux ne se comparent pas, et le ${wordOf(FORMS, what)} n’est pas jugé.`,
  "standard-has-no-masstone": () =>
    "Aucun spectre du ton plein de l’étalon n’est consigné, et le ton plein n’est pas jugé.",
  "lot-not-read": ({ what }) => NOT_READ[what],
  "lot-has-no-let-down-of-standard": ({ white, ratio }) =>
    `L’étalon n’a pas de dégradé ${ratio} dans ${within(white)}, et la force n’est pas jugée.`,
  "read-under-another-calibration": ({ lot, standard }) =>
    `Le lot a été mesuré sous l’étalonnage de ${lot} et l’étalon sous celui de ${standard}\u202f: l’erreur des étalonnages de l’instrument est comptée dans l’incertitude. Mesurer de nouveau l’étalon conservé à côté du lot pour plus de certitude.`,
  "lot-beyond-limits": ({ of, value }) =>
    `Un lot, à ${figureOf(of, value)} (${CHARTED[of]}), sort des limites que fixent tous les lots.`,
  "lots-far-apart": ({ of, range, limit }) =>
    `Deux lots de suite sont distants de ${figureOf(of, range)} (${CHARTED[of]}), et presque jamais de plus de ${figureOf(of, limit)}.`,
  "lots-drifting-up": ({ of, count }) =>
    `${upperFirst(CHARTED[of])}\u202f: en hausse sur ${count} lots de suite, donc à la dérive.`,
  "lots-drifting-down": ({ of, count }) =>
    `${upperFirst(CHARTED[of])}\u202f: en baisse sur ${count} lots de suite, donc à la dérive.`,
  "lots-all-above": ({ of, count }) =>
    `${count} lots de suite sont au-dessus de la moyenne (${CHARTED[of]}).`,
  "lots-all-below": ({ of, count }) =>
    `${count} lots de suite sont au-dessous de la moyenne (${CHARTED[of]}).`,
};
