import {
  notStated,
  sourceFigure,
  type Figure,
  type FigurePath,
  type RootStanding,
} from "../quantities/figure.ts";
import type { Quantity } from "../quantities/interval.ts";
import type { AmountRecord } from "../records/schema/amount.ts";

/**
 * A figure as a record gives it. A bare number is somebody's word and so `stated`;
 * one with a method or a date and no source is the workshop's own reading; two
 * ends are an estimate. A record that names the standing is believed.
 *
 * @param wanting the record field that would fill the figure, for when it is not there.
 */
export function recordedFigure(
  amount: AmountRecord | undefined,
  unit: string,
  wanting: FigurePath,
): Figure<Quantity> {
  if (amount === undefined) return notStated("not in the records", [wanting]);
  if (typeof amount === "number")
    return sourceFigure<Quantity>("stated", amount, { unit, method: "as recorded" });
  const { value, method, source, uncertainty } = amount;
  return sourceFigure<Quantity>(standingOf(amount), value, {
    unit,
    method: method ?? "as recorded",
    source,
    uncertainty,
  });
}

function standingOf({
  standing,
  value,
  method,
  date,
  source,
}: Exclude<AmountRecord, number>): RootStanding {
  if (standing !== undefined) return standing;
  if (typeof value !== "number") return "estimated";
  return source === undefined && (method !== undefined || date !== undefined)
    ? "measured"
    : "stated";
}
