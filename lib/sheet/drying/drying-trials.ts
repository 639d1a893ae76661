import { CLASS_FILM_UM, CLASS_TEMPERATURE_C } from "../../drying/drying-class.ts";
import { dryingTrialRuling, type DryingTrial } from "../../drying/drying-trial.ts";
import { sourceFigure, type Figure, type RootStanding } from "../../quantities/figure.ts";
import { ends, midpoint, type Quantity, type Interval } from "../../quantities/interval.ts";
import type { Colour, Records } from "../../records/records.ts";
import type { AmountRecord } from "../../records/schema/amount.ts";
import { whiteColour } from "../tints/drawdown-set.ts";
import type { TrialFigures } from "../paint-section-types.ts";

/** A trial as the drying rules take it, and as the sheet shows it. */
export interface RecordedTrial {
  /** Where its figures stand in the sheet. */
  readonly path: string;
  readonly trial: DryingTrial;
  readonly figures: TrialFigures;
}

/** Every trial of a colour, in the order of its record. */
export function recordedTrials(colour: Colour, records: Records): RecordedTrial[] {
  return (colour.record.dryingTrials ?? []).map((record, i) => {
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
    const trial: DryingTrial = {
      touchDryDays: quantityOf(touchDryDays),
      throughDryDays: throughDryDays === undefined ? undefined : quantityOf(throughDryDays),
      filmThicknessUm:
        filmThicknessUm === undefined ? undefined : midpoint(quantityOf(filmThicknessUm)),
      temperatureC: temperatureC === undefined ? undefined : midpoint(quantityOf(temperatureC)),
      humidityPercent:
        humidityPercent === undefined ? undefined : midpoint(quantityOf(humidityPercent)),
    };
    return {
      path: `drying.trials.${i}`,
      trial,
      figures: {
        sentence: dryingTrialRuling(trial).reason,
        ...(tintedWith === undefined
          ? {}
          : { tintedWith: { slug: tintedWith, name: whiteColour(tintedWith, records).name } }),
        ...(method === undefined ? {} : { method }),
        ...(date === undefined ? {} : { date }),
        touchDryDays: days(touchDryDays),
        ...(throughDryDays === undefined ? {} : { throughDryDays: days(throughDryDays) }),
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

function quantityOf(amount: AmountRecord): Quantity {
  return typeof amount === "number" ? amount : amount.value;
}

/** A trial is the workshop's own reading unless its record says otherwise. */
function standingOf(amount: AmountRecord): RootStanding {
  return typeof amount === "number" ? "measured" : (amount.standing ?? "measured");
}

function days(amount: AmountRecord): Figure<Interval> {
  return sourceFigure(standingOf(amount), ends(quantityOf(amount)), {
    unit: "d",
    method: "the workshop's own trial",
  });
}

function condition(amount: AmountRecord, unit: string): Figure<Quantity> {
  return sourceFigure<Quantity>(standingOf(amount), quantityOf(amount), {
    unit,
    method: "condition of the trial",
  });
}
