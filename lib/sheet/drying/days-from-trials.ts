import { daysOfParts, type DaysOfParts, type PartAlone } from "../../drying/days-of-parts.ts";
import { dryingEstimate, type DryingQuestion } from "../../drying/drying-estimate.ts";
import { sourceFigure, type Figure, type Input } from "../../quantities/figure.ts";
import type { Interval } from "../../quantities/interval.ts";
import { remembered } from "../../quantities/remembered.ts";
import type { Colour, Records } from "../../records/records.ts";
import { vehiclePart } from "../pigments/pigment-parts.ts";
import { paintsOfPigment } from "../record-inputs.ts";
import type { DryingPart } from "./drying-parts.ts";
import { decidingTrial, recordedTrials, type RecordedTrial } from "./drying-trials.ts";
import { certain } from "../../quantities/at.ts";

/** A paint or pigment of a mixture, with its trial where it has one of its own. */
export interface MixturePart {
  readonly name: string;
  /** Its pigments, each with its share of all the pigment of the mixture. */
  readonly pigments: readonly DryingPart[];
  /** What the rules are asked of it alone. */
  readonly question: DryingQuestion;
  readonly trial: RecordedTrial | undefined;
}

export interface TriedDays {
  readonly days: Figure<Interval>;
  readonly statements: DaysOfParts["statements"];
}

/** From the trials of what is in it; undefined where no part was tried or one cannot be reckoned. */
export function daysFromTrials(
  parts: readonly MixturePart[],
  made: readonly Input[],
  { knowledge: { tables } }: Records,
): TriedDays | undefined {
  const tried = parts.flatMap(({ trial }) => trial ?? []);
  const alone = parts.flatMap((part) => partAlone(part, tables) ?? []);
  if (tried.length === 0 || alone.length < parts.length) return undefined;
  const { touchDryDays, statements } = daysOfParts(alone);
  return {
    statements,
    days: sourceFigure("estimated", touchDryDays, {
      unit: "d",
      method: "between what its parts take alone, as tried or by the rules, each by its share",
      source: "practice-drying",
      inputs: [...tried.map(({ figures }) => figures.touchDryDays), ...made],
    }),
  };
}

function partAlone(
  { name, pigments, question, trial }: MixturePart,
  tables: Records["knowledge"]["tables"],
): PartAlone | undefined {
  const chemistries = pigments.flatMap(({ chemistry }) => chemistry ?? []);
  if (chemistries.length < pigments.length) return undefined;
  const expected = trial === undefined ? dryingEstimate(question, tables) : undefined;
  if (expected?.known === false) return undefined;
  const shares = pigments.flatMap(({ massFraction }) => massFraction ?? []);
  return {
    name,
    isTried: trial !== undefined,
    touchDryDays: certain(trial?.trial.touchDryDays ?? expected?.touchDryDays),
    massFraction:
      shares.length < pigments.length ? undefined : shares.reduce((sum, share) => sum + share, 0),
    fullFromMassFraction: Math.min(
      ...chemistries.map(({ fullFromMassFraction }) => fullFromMassFraction),
    ),
  };
}

/** The trial that stands for a paint: of the film and room that the classes are meant for. */
export function standingTrial(trials: readonly RecordedTrial[]): RecordedTrial | undefined {
  return decidingTrial(
    trials.filter(
      ({ figures: { tintedWith, sentence } }) =>
        tintedWith === undefined && sentence.rule === "trial-decides",
    ),
  );
}

/** The trial of a paint of one pigment alone in the same oil, where neither it nor the mixture has a drier in it. */
export function trialOfPigment(
  pigment: string,
  mixture: Colour,
  records: Records,
): RecordedTrial | undefined {
  return mixture.record.additions === undefined
    ? firstTrial(records, pigment, vehiclePart(mixture, records)?.oil ?? "")
    : undefined;
}

const firstTrial = remembered(
  (records: Records, pigment: string, oil: string): RecordedTrial | undefined => {
    for (const colour of paintsOfPigment(pigment, records.colours)) {
      if (colour.record.additions !== undefined) continue;
      if ((vehiclePart(colour, records)?.oil ?? "") !== oil) continue;
      const trial = standingTrial(recordedTrials(colour, records));
      if (trial !== undefined) return trial;
    }
    return undefined;
  },
);
