import {
  notStated,
  sourceFigure,
  type Figure,
  type FigurePath,
  type Input,
  type RootStanding,
} from "../quantities/figure.ts";
import type { Quantity } from "../quantities/interval.ts";
import type { AmountRecord } from "../records/schema/amount.ts";

/** Where an amount stands in the records, and what to say of it where the amount itself does not. */
export interface RecordedAs {
  readonly unit: string;
  /** The record field that would fill the figure, for when it is not there. */
  readonly wanting: FigurePath;
  readonly inputs: readonly Input[];
  /** How the workshop found it, where the record names no method: then it is its own reading. */
  readonly ownMethod?: string;
}

/**
 * A figure as a record gives it: the one way from an amount to a figure. A bare number is
 * somebody's word and so `stated`; one with a method or a date and no source is the workshop's
 * own reading; two ends are an estimate. A record that names the standing is believed.
 */
export function recordedFigure(
  amount: AmountRecord | undefined,
  { unit, wanting, inputs, ownMethod }: RecordedAs,
): Figure<Quantity> {
  if (amount === undefined) return notStated("not in the records", [wanting], inputs);
  const { value, method, source, uncertainty } = amountParts(amount);
  return sourceFigure<Quantity>(standingOf(amount, ownMethod !== undefined), value, {
    unit,
    method: method ?? ownMethod ?? "as recorded",
    source,
    uncertainty,
    inputs,
  });
}

/** What a record says of an amount; of a bare number the value alone. */
export function amountParts(amount: AmountRecord): Exclude<AmountRecord, number> {
  return typeof amount === "number" ? { value: amount } : amount;
}

/** The value alone, for a science that takes no more. */
export function amountValue(amount: AmountRecord): Quantity {
  return amountParts(amount).value;
}

function standingOf(amount: AmountRecord, isOwn: boolean): RootStanding {
  const { standing, value, method, date, source } = amountParts(amount);
  if (standing !== undefined) return standing;
  if (isOwn) return source === undefined ? "measured" : "stated";
  if (typeof value !== "number") return "estimated";
  return source === undefined && (method !== undefined || date !== undefined)
    ? "measured"
    : "stated";
}
