import { keysOf } from "../../quantities/members.ts";
import type { ContributionStatement } from "../../drying/contribution.ts";
import { dryingClassRuling } from "../../drying/drying-class.ts";
import { dryingEstimate, type DryingQuestion } from "../../drying/drying-estimate.ts";
import { noteStatements, THROUGH_DRY } from "../../drying/drying-notes.ts";
import {
  missingConditions,
  trialContradiction,
  type DryingTrial,
} from "../../drying/drying-trial.ts";
import { fatnessRuling } from "../../drying/oil-richness.ts";
import { filmHealthStatements } from "../../drying/film-defects.ts";
import { GROUND_RULES, groundStatements } from "../../drying/layering-advice.ts";
import { keptPaintStatements } from "../../drying/kept-in-the-tube.ts";
import { layeringLine } from "../../drying/layering-line.ts";
import { mediumStatements } from "../../drying/medium-in-paint.ts";
import type { ExpectedFinish } from "../../drying/sinking-in.ts";
import { linseedDays } from "../../drying/oils.ts";
import { wetFilmStatements } from "../../drying/wet-film.ts";
import {
  isKnown,
  notStated,
  sourceFigure,
  takenFrom,
  type Figure,
} from "../../quantities/figure.ts";
import type { Statement } from "../../quantities/statement.ts";
import type { Colour, Records } from "../../records/records.ts";
import { daysFromTrials, trialOfPigment, type TriedDays } from "./days-from-trials.ts";
import { contributionFigures, dryingClassFigure, expectedDays } from "./drying-days.ts";
import { dryingParts, type DryingPart } from "./drying-parts.ts";
import { dryingQuestion, type DryingPaint } from "./drying-question.ts";
import { decidingTrial, recordedTrials } from "./drying-trials.ts";
import { unknownMediums } from "../pigments/unknown-mediums.ts";
import type { DryingSection } from "./drying-figures.ts";
import type { OilSection } from "../oil/oil-figures.ts";
import type { AdditionPart, PigmentPart, VehiclePart } from "../pigments/pigment-figures.ts";
import { colourRecord } from "../record-inputs.ts";
import { foundSoFar } from "../trials/found-so-far.ts";
import { paintRecords, tintDrying } from "./tint-drying.ts";
import { mainOil } from "../oil/main-oil.ts";

/** Days, class and reasons of drying, and what follows for layers and film. A trial of the workshop's own overrides the estimate. */
export function dryingSection(
  colour: Colour,
  parts: readonly PigmentPart[],
  vehicle: VehiclePart | undefined,
  additions: readonly AdditionPart[],
  oil: OilSection,
  finish: ExpectedFinish | undefined,
  records: Records,
): DryingSection {
  const paint: DryingPaint = {
    parts: dryingParts(parts, records),
    vehicle,
    additions,
    mainOilGPer100g: mainOil(oil),
  };
  const question = dryingQuestion(paint);
  const mediums = unknownMediums(vehicle, additions, records);
  const { tables } = records.knowledge;
  const expected = dryingEstimate(question, tables);
  const made = paintRecords(colour, records);
  const tried = pigmentsAsTried(colour, paint, records);
  const contributions =
    tried === undefined
      ? contributionFigures(expected, ({ statement }) => [
          ...inputsOf(statement, parts, additions),
          ...made,
        ])
      : [];
  const ofLinseed = sourceFigure("estimated", linseedDays(tables.oils), {
    unit: "d",
    method: "linseed oil alone, thin film, 20 to 23 degrees C",
    source: "memory-drying",
    inputs: [],
  });
  const ruleDays =
    tried?.days ??
    expectedDays(
      expected,
      [ofLinseed, ...contributions.map(({ factor }) => factor), ...made],
      `colours.${colour.slug}.dryingTrials`,
    );
  const trials = recordedTrials(colour, records);
  const plain = trials.filter(({ figures }) => figures.tintedWith === undefined);
  const decides = decidingTrial(plain);
  const touchDryDays = decides === undefined ? ruleDays : takenFrom(decides.figures.touchDryDays);
  const through = decides?.figures.throughDryDays;
  const fatness = isKnown(oil.oilVolumeFraction)
    ? fatnessRuling(oil.oilVolumeFraction.value)
    : undefined;
  const ofRules: readonly Statement[] =
    tried?.statements ??
    (expected.known
      ? [
          expected.base,
          ...contributions.filter(({ sign }) => sign !== "none").map(({ sentence }) => sentence),
        ]
      : [expected.reason]);

  return {
    class: dryingClassFigure(touchDryDays),
    touchDryDays,
    throughDryDays:
      decides === undefined || through === undefined
        ? notStated(
            "no trial to through dry",
            [`colours.${colour.slug}.dryingTrials`],
            colourRecord(colour, "dryingTrials"),
          )
        : takenFrom(through),
    standing: touchDryDays.standing,
    expectedDays: ruleDays,
    linseedDays: ofLinseed,
    reasons: [
      ...(decides === undefined ? [] : [decides.figures.sentence]),
      ...foundSoFar(colour.slug, records).films.flatMap((film) =>
        wetFilmStatements(
          film,
          plain.map(({ trial }) => trial),
        ),
      ),
      ...ofRules,
      ...(decides === undefined && isKnown(ruleDays)
        ? [dryingClassRuling(ruleDays.value).reason]
        : []),
      ...mediumStatements(mediums, "drying"),
      THROUGH_DRY,
      ...(additions.some(({ kind }) => kind === "drier")
        ? []
        : noteStatements("driers-customary", paint.parts)),
      ...keptPaintStatements(question.addedDriers ?? [], question.pigments, tables.driers),
    ],
    contributions,
    trials: trials.map(({ figures }) => figures),
    inWhites: tintDrying(colour, paint, trials, ofLinseed, records),
    layering: isKnown(touchDryDays)
      ? [
          layeringLine(
            dryingClassRuling(touchDryDays.value).dryingClass,
            fatness?.fatness,
            zincShare(paint.parts),
          ),
        ]
      : [],
    layeringReasons: [
      ...(fatness === undefined ? [] : [fatness.reason]),
      ...mediumStatements(mediums, "fat over lean"),
    ],
    grounds: keysOf(GROUND_RULES).flatMap(groundStatements),
    filmHealth: filmHealthStatements(
      {
        pigments: paint.parts.map(({ name, chemistry, massFraction, notes }) => ({
          name,
          chemistry: chemistry?.chemistry,
          massFraction,
          notes,
        })),
        oils: question.oils,
        addedDriers: question.addedDriers,
        mediums,
        ...(isKnown(oil.oilVolumeFraction)
          ? { oilVolumeFraction: oil.oilVolumeFraction.value }
          : {}),
        ...(finish === undefined ? {} : { finish }),
      },
      tables,
    ),
    contradictions: plain.flatMap(({ trial }) => contradictionOf(trial, question, records)),
  };
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

/** Zinc oxide's share of the dry pigment; all of it where the parts are not recorded. */
function zincShare(parts: readonly DryingPart[]): number {
  return parts
    .filter(({ chemistry }) => chemistry?.chemistry === "zinc oxide")
    .reduce((sum, { massFraction = 1 }) => sum + massFraction, 0);
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
