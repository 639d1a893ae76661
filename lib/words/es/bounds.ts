import type { Bound } from "../../quantities/figure.ts";

/** Before a value that is only what the true one does not pass. */
export const BOUNDS: Readonly<Record<Bound, string>> = {
  "at least": "al menos",
  "at most": "como máximo",
};
