import { dryingTrialRuling, type DryingTrial } from "../../drying/drying-trial.ts";
import { asInterval, type Figure } from "../../quantities/figure.ts";
import type { Interval, Quantity } from "../../quantities/interval.ts";
import type { AmountRecord } from "../../records/schema/amount.ts";
import type { ColourRecord } from "../../records/schema/colour.ts";
import * as d from "../declaration.ts";
import { found, type Found } from "../found.ts";
import { recordedFigure, type RecordedAs } from "../recorded-figure.ts";

/** A trial as its colour's record has it, and as the drying rules take it. */
interface TrialOfRecord {
  readonly record: NonNullable<ColourRecord["dryingTrials"]>[number];
  readonly trial: DryingTrial;
  readonly read: RecordedAs;
}

function asDays(amount: AmountRecord, read: RecordedAs): Figure<Interval> {
  return asInterval(recordedFigure(amount, read));
}

/** What the film and the room were; left out where the record does not say. */
function condition<D extends d.Declared<Figure<Quantity>>>(
  part: D,
  key: "filmThicknessUm" | "temperatureC" | "humidityPercent",
): Found<D, TrialOfRecord> {
  const { unit } = d.figureForm(part);
  const how = ({ record, read }: TrialOfRecord): Figure<Quantity> | undefined =>
    record[key] === undefined
      ? undefined
      : recordedFigure(record[key], { ...read, unit, ownMethod: "condition of the trial" });
  return { ...part, found: how };
}

export const TRIAL = d.section({
  sentence: found(d.statement, ({ trial }: TrialOfRecord) => dryingTrialRuling(trial).reason),
  /** The white that the colour was let down with; absent for the colour alone. */
  tintedWith: d.optional(d.NAMED),
  method: found(d.optional(d.text), ({ record }: TrialOfRecord) => record.method),
  date: found(d.optional(d.text), ({ record }: TrialOfRecord) => record.date),
  touchDryDays: found(
    d.days("touchDryDays"),
    ({ record, read }: TrialOfRecord) => asDays(record.touchDryDays, read),
    ["lamp-black.drying.trials.0.touchDryDays", "as recorded", 8],
  ),
  throughDryDays: found(
    d.optional(d.days("throughDryDays")),
    ({ record: { throughDryDays: amount }, read }: TrialOfRecord) =>
      amount === undefined ? undefined : asDays(amount, read),
    ["lamp-black.drying.trials.0.throughDryDays", "as recorded", 21],
  ),
  filmThicknessUm: condition(
    d.optional(d.quantity({ unit: "um", kind: "significant", digits: 3, word: "filmThickness" })),
    "filmThicknessUm",
  ),
  temperatureC: condition(
    d.optional(d.quantity({ unit: "degC", kind: "significant", digits: 2, word: "temperature" })),
    "temperatureC",
  ),
  humidityPercent: condition(
    d.optional(d.quantity({ unit: "%", kind: "significant", digits: 2, word: "humidity" })),
    "humidityPercent",
  ),
});
export type TrialFigures = d.SectionOf<typeof TRIAL>;
