import type { ScreenColour } from "./screen-colour.ts";
import type { ShownStanding } from "./standing-mark.ts";
import { writtenSwatchStrip, type SwatchStrip } from "./swatch-strip.ts";
import { wrappedLines } from "./text-width.ts";
import { TEXT_SIZE } from "./picture.ts";

export interface ColourStep {
  /** Name of the colour; broken into lines where it is long. */
  readonly name: string;
  /** What tells it from its neighbours: "b* -2.7". */
  readonly detail: string;
  readonly colour: ScreenColour | undefined;
  readonly standing: ShownStanding;
}

export interface ColourStrip extends SwatchStrip {
  readonly colours: readonly ColourStep[];
}

/** Width that a name may take before it is broken [user units]. */
const NAME_WIDTH = 84;

/**
 * Several colours under one condition, side by side: tints at equal lightness in one white.
 * @throws RangeError for no colours.
 */
export function colourStrip(params: ColourStrip): string {
  const lines = params.colours.map(({ name }) => wrappedLines(name, NAME_WIDTH, TEXT_SIZE));
  const most = Math.max(0, ...lines.map((one) => one.length));
  const steps = params.colours.map(({ detail, colour, standing }, i) => {
    const own = lines[i] ?? [];
    return {
      colour,
      standing,
      lines: [...own, detail, ...Array.from({ length: most - own.length }, () => "")],
    };
  });
  return writtenSwatchStrip("colour-strip", params, steps, { width: [56, 90], height: 72 });
}
