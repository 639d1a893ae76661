/**
 * Days to touch dry, and the class, expected of a paint from what is in it: the
 * days of linseed oil alone, times what oil, pigments, added driers, film and
 * room each do. A class and a range with its reasons, never one number of days.
 *
 * @source practice-drying ; memory-drying
 */
import type { Interval } from "../quantities/interval.ts";
import { estimated, type StatementOf } from "../quantities/statement.ts";
import type { AddedDrier } from "./added-drier.ts";
import { drierContributions } from "./added-drier-share.ts";
import type { ChemistryRow } from "./chemistry-drying.ts";
import { product, type Contribution } from "./contribution.ts";
import {
  dryingClassRuling,
  CLASS_FILM_UM,
  CLASS_TEMPERATURE_C,
  type DryingClassRuling,
} from "./drying-class.ts";
import type { DryingKnowledge } from "./drying-knowledge.ts";
import { filmContribution, temperatureContribution } from "./film-conditions.ts";
import { linseedDays, oilRow, type OilPart } from "./oils.ts";
import { pigmentContributions, slowingShare, type ChemicalPart } from "./pigment-contributions.ts";
import { oilContributions } from "./vehicle-drying.ts";

export interface DryingPigment {
  readonly name: string;
  /** Undefined for a pigment that no table knows. */
  readonly chemistry?: ChemistryRow | undefined;
  /** Share of the dry pigment by mass, the white's included where tinted; undefined when the parts are not recorded. */
  readonly massFraction?: number | undefined;
  /** Whether it is the white that the colour is tinted with. */
  readonly white?: boolean | undefined;
}

export interface DryingQuestion {
  readonly pigments: readonly DryingPigment[];
  /** Empty when the vehicle is not recorded. */
  readonly oils: readonly OilPart[];
  readonly addedDriers?: readonly AddedDrier[] | undefined;
  /** Wet film [um]; the classes' own when not given. */
  readonly filmThicknessUm?: number | undefined;
  /** [degrees C]; the classes' own when not given. */
  readonly temperatureC?: number | undefined;
}

export type BaseStatement = StatementOf<"linseed-oil-alone", { readonly days: Interval }>;
export type UnknownDryingStatement = StatementOf<
  "pigment-chemistry-unknown",
  { readonly pigments: readonly string[] }
>;

export interface DryingEstimate {
  readonly known: true;
  readonly touchDryDays: Interval;
  readonly ruling: DryingClassRuling;
  /** Each thing that moves the days, with its sign; their factors times the base days give the range. */
  readonly contributions: readonly Contribution[];
  readonly base: BaseStatement;
}

export interface DryingUnknown {
  readonly known: false;
  /** Pigments whose chemistry is not known here. */
  readonly unknownPigments: readonly string[];
  readonly reason: UnknownDryingStatement;
}

/** Digits kept of the days, so that rounding noise of the factors does not carry a figure over a class limit. */
const DIGITS = 12;

/**
 * @throws RangeError when a thickness, temperature or dose lies outside its law's reach, or oils do not sum to 1.
 */
export function dryingEstimate(
  question: DryingQuestion,
  { oils, driers }: Pick<DryingKnowledge, "oils" | "driers">,
): DryingEstimate | DryingUnknown {
  const { parts, unknownPigments } = identified(question.pigments);
  if (unknownPigments.length > 0 || parts.length === 0) {
    return {
      known: false,
      unknownPigments,
      reason: { rule: "pigment-chemistry-unknown", values: { pigments: unknownPigments } },
    };
  }
  const contributions: Contribution[] = [
    ...oilContributions(question.oils, oils, slowingShare(parts)),
    ...pigmentContributions(parts, oils),
    ...drierContributions(question.addedDriers ?? [], parts, driers),
    filmContribution(question.filmThicknessUm ?? CLASS_FILM_UM),
    temperatureContribution(question.temperatureC ?? CLASS_TEMPERATURE_C),
  ];
  const [least, most] = product(contributions.map(({ factor }) => factor));
  const days = linseedDays(oils);
  const touchDryDays: Interval = [
    Number((days[0] * least).toPrecision(DIGITS)),
    Number((days[1] * most).toPrecision(DIGITS)),
  ];
  return {
    known: true,
    touchDryDays,
    contributions,
    ruling: dryingClassRuling(touchDryDays),
    base: estimated("linseed-oil-alone", { days }, oilRow(oils, "linseed").source),
  };
}

function identified(pigments: readonly DryingPigment[]): {
  readonly parts: readonly ChemicalPart[];
  readonly unknownPigments: readonly string[];
} {
  const parts: ChemicalPart[] = [];
  const unknownPigments: string[] = [];
  for (const { name, chemistry, massFraction, white = false } of pigments) {
    if (chemistry === undefined) unknownPigments.push(name);
    else
      parts.push({
        name,
        chemistry,
        massFraction: pigments.length === 1 ? 1 : massFraction,
        white,
      });
  }
  return { parts, unknownPigments };
}
