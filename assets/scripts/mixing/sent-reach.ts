import type { Outline } from "../../../lib/mixing/reach/range-outline.ts";

/** What the range can mix, and what is left of it without each colour. */
export interface SentReach {
  readonly all: Outline;
  readonly without: Readonly<Record<string, Outline>>;
}

/** As the page sends it in a script beside its own; undefined where that has not come. */
export const { mixingReach } = globalThis as { mixingReach?: SentReach };
