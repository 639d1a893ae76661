import type { Markup } from "../present/views.ts";
import type { RowStep } from "./swatch-row.ts";
import { swatchStrip, type SwatchStrip } from "./swatch-strip.ts";
import { wrappedLines } from "./text-width.ts";

export interface ColourStep extends Pick<RowStep, "colour" | "standing"> {
  /** Name of the colour; broken into lines where it is long. */
  readonly name: string;
  /** What tells it from its neighbours: "b* -2.7". */
  readonly detail: string;
}

interface ColourStrip extends Omit<SwatchStrip, "steps"> {
  readonly colours: readonly ColourStep[];
}

/** Width that a name may take before it is broken [user units]. */
const NAME_WIDTH = 84;

/**
 * Several colours under one condition, side by side: tints at equal lightness in one white.
 * @throws RangeError for no colours.
 */
export function colourStrip({ colours, ...strip }: ColourStrip): Markup {
  const named = colours.map((step) => ({ ...step, names: wrappedLines(step.name, NAME_WIDTH) }));
  const most = Math.max(0, ...named.map(({ names }) => names.length));
  const steps = named.map(({ names, detail, colour, standing }) => ({
    colour,
    standing,
    lines: [...names, detail, ...Array.from({ length: most - names.length }, () => "")],
  }));
  return swatchStrip("colour-strip", { ...strip, steps });
}
