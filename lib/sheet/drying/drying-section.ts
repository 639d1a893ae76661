import { dryingClassRuling } from "../../drying/drying-class.ts";
import type { Contribution } from "../../drying/contribution.ts";
import { dryingEstimate, type DryingQuestion } from "../../drying/drying-estimate.ts";
import { dryingNotes } from "../../drying/drying-notes.ts";
import {
  missingConditions,
  trialContradiction,
  type DryingTrial,
} from "../../drying/drying-trial.ts";
import { fatnessRuling } from "../../drying/oil-richness.ts";
import { filmHealthRulings } from "../../drying/film-defects.ts";
import { GROUND_RULES, groundRulings, type Ground } from "../../drying/layering-advice.ts";
import { layeringLine } from "../../drying/layering-line.ts";
import { LINSEED_DAYS, type OilPart } from "../../drying/vehicle-drying.ts";
import {
  isKnown,
  notStated,
  sourceFigure,
  takenFrom,
  type Figure,
} from "../../quantities/figure.ts";
import type { Statement } from "../../quantities/statement.ts";
import type { Knowledge } from "../../knowledge/pigment-knowledge.ts";
import type { Colour, Records } from "../../records/records.ts";
import { contributionFigures, dryingClassFigure, expectedDays } from "./drying-days.ts";
import { dryingChemistry } from "./drying-chemistry.ts";
import { decidingTrial, recordedTrials } from "./drying-trials.ts";
import type { DryingSection, OilSection } from "../paint-section-types.ts";
import type { AdditionPart, PigmentPart, VehiclePart } from "../sheet.ts";
import { colourRecord } from "../record-inputs.ts";
import { paintRecords, tintDrying, type DryingPaint } from "./tint-drying.ts";

/** Days, class and reasons of drying, and what follows for layers and film. A trial of the workshop's own overrides the estimate. */
export function dryingSection(
  colour: Colour,
  parts: readonly PigmentPart[],
  vehicle: VehiclePart | undefined,
  additions: readonly AdditionPart[],
  oil: OilSection,
  records: Records,
): DryingSection {
  const paint: DryingPaint = { parts, vehicle, additions, oilIndexGPer100g: oil.oilIndexGPer100g };
  const question = dryingQuestion(paint, records.knowledge);
  const expected = dryingEstimate(question);
  const contributions = contributionFigures(expected, (contribution) => [
    ...inputsOf(contribution, paint),
    ...paintRecords(colour, records),
  ]);
  const linseedDays = sourceFigure("estimated", LINSEED_DAYS, {
    unit: "d",
    method: "linseed oil alone, thin film, 20 to 23 degrees C",
    source: "memory-drying",
    inputs: [],
  });
  const ruleDays = expectedDays(
    expected,
    [linseedDays, ...contributions.map(({ factor }) => factor), ...paintRecords(colour, records)],
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
    linseedDays,
    reasons: [
      ...(decides === undefined ? [] : [decides.figures.sentence]),
      ...(expected.known
        ? [
            expected.base,
            ...contributions.filter(({ sign }) => sign !== "none").map(({ sentence }) => sentence),
          ]
        : [expected.reason]),
      ...(expected.known && decides === undefined ? [expected.ruling.reason] : []),
      ...dryingNotes(parts.flatMap(({ colourIndexName }) => colourIndexName ?? [])),
    ],
    contributions,
    trials: trials.map(({ figures }) => figures),
    inWhites: tintDrying(colour, paint, trials, linseedDays, records),
    layering: [
      ...(isKnown(touchDryDays)
        ? [
            layeringLine(
              dryingClassRuling(touchDryDays.value).dryingClass,
              fatness?.fatness,
              zincShare(parts, records.knowledge),
            ),
          ]
        : []),
      ...(fatness === undefined ? [] : [fatness.reason]),
    ],
    grounds: (Object.keys(GROUND_RULES) as Ground[]).flatMap(groundRulings),
    filmHealth: filmHealthRulings({
      pigments: question.pigments,
      oils: question.oils,
      addedDriers: question.addedDriers,
      mediums: unknownMediums(vehicle, additions, records),
      ...(isKnown(oil.oilVolumeFraction) ? { oilVolumeFraction: oil.oilVolumeFraction.value } : {}),
      ...(isKnown(oil.effectiveReducedPvc) ? { reducedPvc: oil.effectiveReducedPvc.value } : {}),
    }),
    contradictions: plain.flatMap(({ trial }) => contradictionOf(trial, question)),
  };
}

/** Zinc oxide's share of the dry pigment; all of it where the parts are not recorded. */
function zincShare(parts: readonly PigmentPart[], knowledge: Knowledge): number {
  return parts
    .filter((part) => dryingChemistry(part, knowledge) === "zinc oxide")
    .reduce((sum, { massFraction }) => sum + (isKnown(massFraction) ? massFraction.value : 1), 0);
}

/** Names of mediums in the recipe that are recorded as no drying oil, and bring no drier. */
function unknownMediums(
  vehicle: VehiclePart | undefined,
  additions: readonly AdditionPart[],
  records: Records,
): string[] {
  return [...(vehicle === undefined ? [] : [vehicle]), ...additions].flatMap(({ slug, name }) => {
    const record = records.vehicles.get(slug)?.record;
    return record?.kind === "medium" && record.oil === undefined ? [name] : [];
  });
}

function dryingQuestion(
  { parts, vehicle, additions }: DryingPaint,
  knowledge: Knowledge,
): DryingQuestion {
  return {
    pigments: parts.map((part) => ({
      name: part.name,
      chemistry: dryingChemistry(part, knowledge),
      massFraction: isKnown(part.massFraction) ? part.massFraction.value : undefined,
    })),
    oils: oilParts(vehicle, additions),
    addedDriers: additions.flatMap(({ metals }) =>
      metals.flatMap(({ slug, percentOfOil }) =>
        !isKnown(percentOfOil) || typeof percentOfOil.value !== "number"
          ? []
          : [{ metal: slug, percentOnOil: percentOfOil.value }],
      ),
    ),
  };
}

/** The oil and the oils added to it, each by its share of all of them; one oil twice counts once. */
function oilParts(vehicle: VehiclePart | undefined, additions: readonly AdditionPart[]): OilPart[] {
  if (vehicle?.oil === undefined) return [];
  const parts = new Map([[vehicle.oil, 100]]);
  for (const { oil, percentOfOil } of additions) {
    if (oil !== undefined && isKnown(percentOfOil))
      parts.set(oil, (parts.get(oil) ?? 0) + percentOfOil.value);
  }
  const whole = [...parts.values()].reduce((sum, part) => sum + part, 0);
  return [...parts].map(([oil, part]) => ({ oil, massFraction: part / whole }));
}

/** The figures that a contribution goes by: the share of its pigment, the dose of its drier. */
function inputsOf(
  { values: { pigment, metal } }: Contribution,
  { parts, additions }: DryingPaint,
): Figure[] {
  return [
    ...parts.flatMap(({ name, massFraction }) =>
      name === pigment && isKnown(massFraction) ? [massFraction] : [],
    ),
    ...additions.flatMap(({ metals }) =>
      metals.flatMap(({ slug, percentOfOil }) =>
        slug === metal && isKnown(percentOfOil) ? [percentOfOil] : [],
      ),
    ),
  ];
}

/** Held against the estimate for the trial's own film and room; against none where they are not recorded. */
function contradictionOf(trial: DryingTrial, question: DryingQuestion): Statement[] {
  if (missingConditions(trial).length > 0) return [];
  const expected = dryingEstimate({
    ...question,
    filmThicknessUm: trial.filmThicknessUm,
    temperatureC: trial.temperatureC,
  });
  const found = expected.known ? trialContradiction(trial, expected) : undefined;
  return found === undefined ? [] : [found];
}
