import { CLASS_FILM_UM, CLASS_TEMPERATURE_C } from "../../drying/drying-class.ts";
import type { DryingTrial } from "../../drying/drying-trial.ts";
import { readOnce, type RememberedReads } from "../../kept/reads.ts";
import { midpoint } from "../../quantities/interval.ts";
import type { Colour, Records } from "../../records/records.ts";
import type { AmountRecord } from "../../records/schema/amount.ts";
import { whiteColour } from "../tints/drawdown-set.ts";
import { placeFigures } from "../figure-places.ts";
import { colourRecord } from "../record-inputs.ts";
import { filled } from "../found.ts";
import { amountParts, amountValue } from "../recorded-figure.ts";
import { TRIAL, type TrialFigures } from "./trial-figures.ts";

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
    placeFigures(
      colour.slug,
      trials.map(({ figures }) => figures),
      "drying.trials",
    );
    return trials;
  });
}

function trialsOf(colour: Colour, records: Records): RecordedTrial[] {
  return (colour.record.dryingTrials ?? []).map((record) => {
    const { tintedWith: white, method } = record;
    const trial = recordedTrial(record);
    const own = "the workshop's own trial";
    const figures = filled(TRIAL, {
      record,
      trial,
      // A trial is the workshop's own reading unless its record says otherwise.
      read: {
        unit: "d",
        wanting: `colours.${colour.slug}.dryingTrials`,
        inputs: colourRecord(colour, "dryingTrials"),
        ownMethod: method === undefined ? own : `${own}: ${method}`,
      },
      tintedWith:
        white === undefined ? undefined : { slug: white, name: whiteColour(white, records).name },
    });
    return { trial, figures };
  });
}

/** A trial as the drying rules take it. */
export function recordedTrial(
  record: NonNullable<Colour["record"]["dryingTrials"]>[number],
): DryingTrial {
  const { touchDryDays, throughDryDays } = record;
  const middle = (amount: AmountRecord | undefined): number | undefined =>
    amount === undefined ? undefined : midpoint(amountValue(amount));
  return {
    touchDryDays: amountValue(touchDryDays),
    throughDryDays: throughDryDays === undefined ? undefined : amountValue(throughDryDays),
    filmThicknessUm: middle(record.filmThicknessUm),
    temperatureC: middle(record.temperatureC),
    humidityPercent: middle(record.humidityPercent),
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
