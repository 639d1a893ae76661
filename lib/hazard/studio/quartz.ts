/**
 * Whether a dry pigment's dust may hold respirable quartz: natural earths and
 * mineral fillers may, unless a paper states that there is none.
 *
 * @source practice-hazard
 */
import { rowsNamed } from "../../quantities/colour-index-name.ts";

export interface QuartzRow {
  readonly colourIndexName: string;
  /** What it is: "natural ochre". */
  readonly holds: string;
}

/** What a powder is called of which a paper states quartz. */
export const STATED_QUARTZ = "a powder with respirable quartz";

/**
 * @param respirableQuartzPercent as a paper states it; 0 where it states none.
 * @returns what the pigment is that may hold it, or undefined.
 */
export function mayHoldQuartz(
  {
    colourIndexName,
    respirableQuartzPercent,
  }: {
    readonly colourIndexName?: string | undefined;
    readonly respirableQuartzPercent?: number | undefined;
  },
  rows: readonly QuartzRow[],
): string | undefined {
  if (respirableQuartzPercent !== undefined)
    return respirableQuartzPercent > 0 ? STATED_QUARTZ : undefined;
  return rowsNamed(rows, colourIndexName)[0]?.holds;
}
