import type { ScreenColour } from "./screen-colour.ts";
import type { ShownStanding } from "./standing-mark.ts";
import { writtenSwatchStrip, type SwatchStrip } from "./swatch-strip.ts";

export interface GlossStep {
  /** "matte", "gloss". */
  readonly label: string;
  /** What the finish does to the depth: "L* 5", "N 0.6/". */
  readonly depth: string;
  readonly colour: ScreenColour | undefined;
  readonly standing: ShownStanding;
}

export interface GlossStrip extends SwatchStrip {
  /** In the order in which they are drawn: from matte to gloss. */
  readonly finishes: readonly GlossStep[];
}

/**
 * One paint at several finishes: how much of its depth is gloss.
 * @throws RangeError for no finishes.
 */
export function glossStrip(params: GlossStrip): string {
  const steps = params.finishes.map(({ label, depth, colour, standing }) => ({
    colour,
    standing,
    lines: [label, depth],
  }));
  return writtenSwatchStrip("gloss-strip", params, steps, { width: [56, 90], height: 64 });
}
