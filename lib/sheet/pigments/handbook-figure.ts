import { inputsOf, isKnown, sourceFigure, type Figure } from "../../quantities/figure.ts";
import type { Quantity } from "../../quantities/interval.ts";
import { handbookEstimate, type HandbookRow } from "../../formulation/handbook-estimate.ts";

/**
 * What the record says, else the range that a handbook expects of the pigment by
 * its Colour Index name, as an estimate; a measurement always wins.
 */
export function orHandbook(
  recorded: Figure<Quantity>,
  known: readonly HandbookRow[],
  colourIndexName: string | undefined,
  unit: string,
): Figure<Quantity> {
  if (isKnown(recorded) || colourIndexName === undefined) return recorded;
  const expected = handbookEstimate(known, { colourIndexName });
  if (expected === undefined) return recorded;
  return sourceFigure<Quantity>("estimated", expected.estimate, {
    unit,
    method: `handbook range for ${colourIndexName}`,
    source: expected.reason.source,
    inputs: inputsOf(recorded),
  });
}
