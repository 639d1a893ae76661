import { CLASS_FILM_UM, CLASS_TEMPERATURE_C, dryingClassRuling } from "../drying/drying-class.ts";
import { dryingEstimate, type DryingEstimate, type DryingQuestion, type DryingUnknown } from "../drying/drying-estimate.ts";
import { dryingNotes } from "../drying/drying-notes.ts";
import { dryingTrialRuling, trialContradiction, type DryingTrial } from "../drying/drying-trial.ts";
import { fatnessRuling } from "../drying/fatness.ts";
import { filmHealthRulings } from "../drying/film-health.ts";
import { groundRulings, placeByClass } from "../drying/layering-advice.ts";
import { isKnown, notStated, rootFigure, type Figure } from "../quantities/figure.ts";
import { ends, type Quantity, type Range } from "../quantities/range.ts";
import type { Ruling } from "../quantities/ruling.ts";
import { ruledOut } from "../quantities/worked-out.ts";
import type { Colour, Records } from "../records/records.ts";
import type { AmountRecord } from "../records/schema/amount.ts";
import { addedDriers } from "./added-driers.ts";
import type { DryingSection, OilSection, PigmentPart, VehiclePart } from "./sheet.ts";

/** Days, class and reasons of drying, and what follows for layers and film. A trial of the workshop's own overrides the estimate. */
export function drySection(colour: Colour, parts: readonly PigmentPart[], vehicle: VehiclePart | undefined, oil: OilSection, records: Records): DryingSection {
  const question = dryingQuestion(colour, parts, vehicle, records);
  const expected = dryingEstimate(question);
  const trials = (colour.record.dryingTrials ?? []).map((trial) => ({ tintedWith: trial.tintedWith, trial: trialOf(trial) }));
  const plain = trials.filter(({ tintedWith }) => tintedWith === undefined).map(({ trial }) => trial);
  const trial = plain.toSorted((one, other) => distanceFromClass(one) - distanceFromClass(other))[0];
  const ruled = trial && dryingTrialRuling(trial);
  const touchDryDays = trial === undefined ? expectedDays(expected, colour) : trialDays(trial.touchDryDays);
  const contradictions = plain.flatMap((one) => contradictionOf(one, question));
  const dryingClass = ruledOut({ name: "class by days to touch dry", unit: "", source: "practice-drying" }, { days: { path: "drying.touchDryDays", figure: touchDryDays } }, (v) => dryingClassRuling(v.days).dryingClass as string);

  return {
    class: dryingClass,
    touchDryDays,
    throughDryDays: trial?.throughDryDays === undefined ? notStated("no trial to through dry", [`colours.${colour.slug}.dryingTrials.throughDryDays`]) : trialDays(trial.throughDryDays),
    standing: touchDryDays.standing,
    reasons: [
      ...(ruled === undefined ? [] : [ruled.reason]),
      ...(expected.known ? [expected.base, ...expected.contributions.filter(({ sign }) => sign !== "none").map(bareRuling)] : [expected.reason]),
      ...dryingNotes(parts.flatMap(({ colourIndexName }) => colourIndexName ?? [])),
    ],
    contributions: expected.known ? expected.contributions : [],
    trials: trials.map(({ trial: one, tintedWith }) => ({ ...dryingTrialRuling(one).reason, ...(tintedWith === undefined ? {} : { tintedWith }) })),
    layering: [...(isKnown(touchDryDays) ? [placeByClass(dryingClassRuling(touchDryDays.value).dryingClass)] : []), ...fatness(oil.pvc), ...groundRulings("acrylic")],
    filmHealth: filmHealthRulings({
      pigments: question.pigments, oils: question.oils, addedDriers: question.addedDriers,
      ...(isKnown(oil.pvc) ? { oilVolumeFraction: oilShare(oil.pvc.value) } : {}),
      ...(isKnown(oil.effectiveReducedPvc) ? { reducedPvc: oil.effectiveReducedPvc.value } : {}),
    }),
    contradictions,
  };
}

function dryingQuestion(colour: Colour, parts: readonly PigmentPart[], vehicle: VehiclePart | undefined, records: Records): DryingQuestion {
  return {
    pigments: parts.map(({ name, colourIndexName, massFraction }) => ({ name, colourIndexName, massFraction: isKnown(massFraction) ? massFraction.value : undefined })),
    oils: vehicle?.oil === undefined ? [] : [{ oil: vehicle.oil, massFraction: 1 }],
    addedDriers: addedDriers(colour, records),
  };
}

/** Nearest to the film and the room that the classes are meant for, each by its own measure. */
function distanceFromClass({ filmThicknessUm = Infinity, temperatureC = Infinity }: DryingTrial): number {
  return Math.abs(Math.log(filmThicknessUm / CLASS_FILM_UM)) + Math.abs(temperatureC - CLASS_TEMPERATURE_C) / 10;
}

function trialOf(trial: NonNullable<Colour["record"]["dryingTrials"]>[number]): DryingTrial {
  return {
    touchDryDays: quantityOf(trial.touchDryDays),
    throughDryDays: trial.throughDryDays === undefined ? undefined : quantityOf(trial.throughDryDays),
    filmThicknessUm: ends(quantityOf(trial.filmThicknessUm))[0],
    temperatureC: ends(quantityOf(trial.temperatureC))[0],
    humidityPercent: trial.humidityPercent === undefined ? undefined : ends(quantityOf(trial.humidityPercent))[0],
  };
}

function quantityOf(amount: AmountRecord): Quantity {
  return typeof amount === "number" ? amount : amount.value;
}

function trialDays(days: Quantity): Figure<Range> {
  return rootFigure("measured", ends(days), { unit: "d", method: "the workshop's own trial" });
}

function expectedDays(expected: DryingEstimate | DryingUnknown, colour: Colour): Figure<Range> {
  if (!expected.known) return notStated("how its pigment acts on drying oil is not known here, and there is no trial", [`colours.${colour.slug}.dryingTrials`]);
  return rootFigure("estimated", expected.touchDryDays, { unit: "d", method: "linseed oil alone x what oil, pigment, drier, film and room each do", source: "practice-drying" });
}

/** Held against the estimate for the trial's own film and room. */
function contradictionOf(trial: DryingTrial, question: DryingQuestion): Ruling[] {
  const expected = dryingEstimate({ ...question, filmThicknessUm: trial.filmThicknessUm, temperatureC: trial.temperatureC });
  const found = expected.known ? trialContradiction(trial, expected) : undefined;
  return found === undefined ? [] : [found];
}

function fatness(pvc: Figure<Quantity>): Ruling[] {
  return isKnown(pvc) ? [fatnessRuling(oilShare(pvc.value)).reason] : [];
}

function oilShare(pvc: Quantity): Quantity {
  const [lower, upper] = ends(pvc);
  return lower === upper ? 1 - lower : [1 - upper, 1 - lower];
}

function bareRuling({ rule, values, standing, source }: Ruling): Ruling {
  return { rule, values, ...(standing === undefined ? {} : { standing }), ...(source === undefined ? {} : { source }) };
}
