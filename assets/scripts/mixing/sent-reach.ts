import type { SentReach } from "../../../lib/mixing/reach/sent-reach.ts";

/** What the range reaches in each white, as the page sends it in a script beside its own; undefined where that has not come. */
export const { mixingReaches } = globalThis as { mixingReaches?: readonly SentReach[] };
