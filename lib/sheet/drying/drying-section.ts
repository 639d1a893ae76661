import type { ContributionStatement } from "../../drying/contribution.ts";
import { dryingEstimate, type DryingQuestion } from "../../drying/drying-estimate.ts";
import {
  missingConditions,
  trialContradiction,
  type DryingTrial,
} from "../../drying/drying-trial.ts";
import { isKnown, knownValue, type Figure } from "../../quantities/figure.ts";
import type { Statement } from "../../quantities/statement.ts";
import type { Colour, Records } from "../../records/records.ts";
import { filled } from "../found.ts";
import { mainOil } from "../oil/main-oil.ts";
import { expectedFinish } from "../oil/finish-figure.ts";
import type { PaintOfColour } from "../paint-as-made.ts";
import type { AdditionPart, PigmentPart } from "../pigments/pigment-figures.ts";
import { unknownMediums } from "../pigments/unknown-mediums.ts";
import { foundSoFar } from "../trials/found-so-far.ts";
import { daysFromTrials, trialOfPigment, type TriedDays } from "./days-from-trials.ts";
import { contributionFigures, expectedDays } from "./drying-days.ts";
import { DRYING, type DryingSection } from "./drying-figures.ts";
import { dryingParts } from "./drying-parts.ts";
import { dryingQuestion, type DryingPaint } from "./drying-question.ts";
import { decidingTrial, recordedTrials } from "./drying-trials.ts";
import { paintRecords, tintDrying } from "./tint-drying.ts";

/** Days, class and reasons of drying, and what follows for layers and film. A trial of the workshop's own overrides the estimate. */
export function dryingSection(ofColour: PaintOfColour): DryingSection {
  const { colour, pigments: parts, vehicle, additions, oil, records } = ofColour;
  const paint: DryingPaint = {
    parts: dryingParts(parts, records),
    vehicle,
    additions,
    mainOilGPer100g: mainOil(oil),
  };
  const question = dryingQuestion(paint);
  const { tables } = records.knowledge;
  const expected = dryingEstimate(question, tables);
  const made = paintRecords(colour, records);
  const ofParts = pigmentsAsTried(colour, paint, records);
  const contributions =
    ofParts === undefined
      ? contributionFigures(expected, ({ statement }) => [
          ...inputsOf(statement, parts, additions),
          ...made,
        ])
      : [];
  const trials = recordedTrials(colour, records);
  const alone = trials.filter(({ figures }) => figures.tintedWith === undefined);
  return filled(DRYING, {
    ...ofColour,
    tried: trials.map(({ figures }) => figures),
    decides: decidingTrial(alone)?.figures,
    contributions,
    byRules: (from: readonly Figure[]) =>
      ofParts?.days ??
      expectedDays(expected, [...from, ...made], `colours.${colour.slug}.dryingTrials`),
    ofRules:
      ofParts?.statements ??
      (expected.known
        ? [
            expected.base,
            ...contributions.filter(({ sign }) => sign !== "none").map(({ sentence }) => sentence),
          ]
        : [expected.reason]),
    againstRules: alone.flatMap(({ trial }) => contradictionOf(trial, question, records)),
    inEachWhite: (linseedDays: Figure) => tintDrying(colour, paint, trials, linseedDays, records),
    facts: {
      pigments: paint.parts,
      oils: question.oils,
      mediums: unknownMediums(vehicle, additions, records),
      addedDriers: question.addedDriers ?? [],
      hasDrier: additions.some(({ kind }) => kind === "drier"),
      oilVolumeFraction: knownValue(oil.oilVolumeFraction),
      finish: expectedFinish(oil),
      recordedTrials: alone.map(({ trial }) => trial),
      wetFilms: foundSoFar(colour.slug, records).films,
      tables,
    },
  });
}

/** Of a colour of several pigments: the days of each alone, by the trial of a paint of it where there is one. */
function pigmentsAsTried(
  colour: Colour,
  paint: DryingPaint,
  records: Records,
): TriedDays | undefined {
  if (paint.parts.length < 2) return undefined;
  return daysFromTrials(
    paint.parts.map((part) => ({
      name: part.name,
      pigments: [part],
      question: dryingQuestion({ ...paint, parts: [part] }),
      trial: trialOfPigment(part.slug, colour, records),
    })),
    paintRecords(colour, records),
    records,
  );
}

/** The figures that a contribution goes by: the share of its pigment, the dose of its drier. */
function inputsOf(
  { values }: ContributionStatement,
  parts: readonly PigmentPart[],
  additions: readonly AdditionPart[],
): Figure[] {
  if ("pigment" in values)
    return parts.flatMap(({ name, massFraction }) =>
      name === values.pigment && isKnown(massFraction) ? [massFraction] : [],
    );
  if ("metal" in values)
    return additions.flatMap(({ metals }) =>
      metals.flatMap(({ slug, percentOfOil }) =>
        slug === values.metal && isKnown(percentOfOil) ? [percentOfOil] : [],
      ),
    );
  return [];
}

/** Held against the estimate for the trial's own film and room; against none where they are not recorded. */
function contradictionOf(
  trial: DryingTrial,
  question: DryingQuestion,
  { knowledge }: Records,
): Statement[] {
  if (missingConditions(trial).length > 0) return [];
  const expected = dryingEstimate(
    {
      ...question,
      filmThicknessUm: trial.filmThicknessUm,
      temperatureC: trial.temperatureC,
    },
    knowledge.tables,
  );
  const found = expected.known ? trialContradiction(trial, expected) : undefined;
  return found === undefined ? [] : [found];
}
