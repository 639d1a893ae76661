import { CLASS_FILM_UM, CLASS_TEMPERATURE_C } from "../../drying/drying-class.ts";
import { dryingTrialRuling, type DryingTrial } from "../../drying/drying-trial.ts";
import { asInterval, type Figure } from "../../quantities/figure.ts";
import { readOnce, type RememberedReads } from "../../kept/reads.ts";
import { midpoint, type Quantity, type Interval } from "../../quantities/interval.ts";
import type { Colour, Records } from "../../records/records.ts";
import type { AmountRecord } from "../../records/schema/amount.ts";
import { whiteColour } from "../tints/drawdown-set.ts";
import { placeFigures } from "../figure-places.ts";
import { colourRecord } from "../record-inputs.ts";
import { amountParts, amountValue, recordedFigure, type RecordedAs } from "../recorded-figure.ts";
import type { TrialFigures } from "./drying-figures.ts";

/** A trial as the drying rules take it, and as the sheet shows it. */
export interface RecordedTrial {
  readonly trial: DryingTrial;
  readonly figures: TrialFigures;
}

const TRIALS: RememberedReads<Colour, readonly RecordedTrial[]> = new WeakMap();

/** Every trial of a colour, in the order of its record; the same for its own sheet and for a tint that is reckoned with it. */
export function recordedTrials(colour: Colour, records: Records): readonly RecordedTrial[] {
  return readOnce(TRIALS, colour, colour.slug, () => {
    const trials = trialsOf(colour, records);
    placeFigures(colour.slug, { drying: { trials: trials.map(({ figures }) => figures) } });
    return trials;
  });
}

function trialsOf(colour: Colour, records: Records): RecordedTrial[] {
  return (colour.record.dryingTrials ?? []).map((record) => {
    const {
      touchDryDays,
      throughDryDays,
      filmThicknessUm,
      temperatureC,
      humidityPercent,
      tintedWith,
      method,
      date,
    } = record;
    const trial = recordedTrial(record);
    const read = {
      unit: "d",
      wanting: `colours.${colour.slug}.dryingTrials`,
      inputs: colourRecord(colour, "dryingTrials"),
      ownMethod:
        method === undefined ? "the workshop's own trial" : `the workshop's own trial: ${method}`,
    };
    const condition = (amount: AmountRecord, unit: string): Figure<Quantity> =>
      recordedFigure(amount, { ...read, unit, ownMethod: "condition of the trial" });
    return {
      trial,
      figures: {
        sentence: dryingTrialRuling(trial).reason,
        ...(tintedWith === undefined
          ? {}
          : { tintedWith: { slug: tintedWith, name: whiteColour(tintedWith, records).name } }),
        ...(method === undefined ? {} : { method }),
        ...(date === undefined ? {} : { date }),
        touchDryDays: days(touchDryDays, read),
        ...(throughDryDays === undefined ? {} : { throughDryDays: days(throughDryDays, read) }),
        ...(filmThicknessUm === undefined
          ? {}
          : { filmThicknessUm: condition(filmThicknessUm, "um") }),
        ...(temperatureC === undefined ? {} : { temperatureC: condition(temperatureC, "degC") }),
        ...(humidityPercent === undefined
          ? {}
          : { humidityPercent: condition(humidityPercent, "%") }),
      },
    };
  });
}

/** A trial as the drying rules take it. */
export function recordedTrial({
  touchDryDays,
  throughDryDays,
  filmThicknessUm,
  temperatureC,
  humidityPercent,
}: NonNullable<Colour["record"]["dryingTrials"]>[number]): DryingTrial {
  const condition = (amount: AmountRecord | undefined): number | undefined =>
    amount === undefined ? undefined : midpoint(amountValue(amount));
  return {
    touchDryDays: amountValue(touchDryDays),
    throughDryDays: throughDryDays === undefined ? undefined : amountValue(throughDryDays),
    filmThicknessUm: condition(filmThicknessUm),
    temperatureC: condition(temperatureC),
    humidityPercent: condition(humidityPercent),
    toldBy: isOwn(touchDryDays) ? undefined : "others",
  };
}

/** Of several trials the one whose film and room are nearest to those that the classes are meant for. */
export function decidingTrial(trials: readonly RecordedTrial[]): RecordedTrial | undefined {
  return trials.toSorted(
    (one, other) => distanceFromClass(one.trial) - distanceFromClass(other.trial),
  )[0];
}

/** Each by its own measure: the film by its ratio, the room by ten degrees. */
function distanceFromClass({
  filmThicknessUm = Infinity,
  temperatureC = Infinity,
}: DryingTrial): number {
  return (
    Math.abs(Math.log(filmThicknessUm / CLASS_FILM_UM)) +
    Math.abs(temperatureC - CLASS_TEMPERATURE_C) / 10
  );
}

function isOwn(days: AmountRecord): boolean {
  const { standing, source } = amountParts(days);
  return standing === undefined ? source === undefined : standing === "measured";
}

/** A trial is the workshop's own reading unless its record says otherwise. */
function days(amount: AmountRecord, read: RecordedAs): Figure<Interval> {
  return asInterval(recordedFigure(amount, { ...read, unit: "d" }));
}
