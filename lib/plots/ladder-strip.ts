import { domainError } from "../diagnostics/diagnostic.ts";
import type { ScreenColour } from "./screen-colour.ts";
import type { ShownStanding } from "./standing-mark.ts";
import { writtenSwatchStrip, type SwatchStrip } from "./swatch-strip.ts";

export interface LadderStep {
  /** Parts of white to one of colour, >= 0; 0 is the masstone. Orders the ladder. */
  readonly whiteParts: number;
  /** As the record says it: "1:20". */
  readonly label: string;
  readonly colour: ScreenColour | undefined;
  readonly standing: ShownStanding;
  /** A word on a step that the other drawdowns contradict: "suspect". */
  readonly suspect?: string | undefined;
}

export interface LadderStrip extends SwatchStrip {
  readonly steps: readonly LadderStep[];
}

/**
 * The let-downs of a colour in one white, from the strongest to the palest: drawn-down
 * steps as full swatches, predicted ones lower and in dashes.
 * @throws RangeError for no steps, or parts that are negative or not a number.
 */
export function ladderStrip(params: LadderStrip): string {
  for (const { whiteParts } of params.steps) {
    if (!(whiteParts >= 0 && whiteParts < Infinity))
      throw domainError("parts of white", whiteParts, "0 <= parts < Infinity");
  }
  const steps = params.steps.toSorted((one, other) => one.whiteParts - other.whiteParts);
  return writtenSwatchStrip(
    "ladder-strip",
    params,
    steps.map(({ label, suspect, ...step }) => ({ ...step, lines: [label], flag: suspect })),
    { width: [30, 52], height: 56 },
  );
}
