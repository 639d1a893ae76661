/** The paints that are sent to be mixed. */
import { mixingRange, type MixingRange } from "../../../lib/mixing/mixing-range.ts";
import type { MixingData } from "../../../lib/mixing/mixing-paint.ts";

interface Sent {
  readonly mixingPaints?: MixingData;
}

/** Why there are none, as the page words it: they did not come, or are in the form of another version. */
export type NoRange = "noData" | "olderData";

export function sentRange(): MixingRange | NoRange {
  const { mixingPaints } = globalThis as Sent;
  if (mixingPaints === undefined) return "noData";
  try {
    return mixingRange(mixingPaints);
  } catch (error) {
    if (error instanceof RangeError) return "olderData";
    throw error;
  }
}
