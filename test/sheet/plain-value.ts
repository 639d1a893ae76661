import { isKnown, type Figure } from "../../lib/quantities/figure.ts";
import { midpoint, type Quantity } from "../../lib/quantities/interval.ts";

/** The number of a figure, the middle of an estimate. @throws Error where nothing is stated. */
export function valueOf(figure: Figure<Quantity> | undefined): number {
  if (figure === undefined || !isKnown(figure)) throw new Error("Unexpected absence of a figure");
  return midpoint(figure.value);
}

/** The method of a figure. @throws Error where nothing is stated. */
export function methodOf(figure: Figure): string {
  if (!isKnown(figure)) throw new Error("Unexpected absence of a figure");
  return figure.method;
}
