import type { WorkshopRecord } from "./schema/workshop.ts";

/** Colours that the workshop sets side by side on a page of their own: two to four. */
export interface ChosenPair {
  readonly colours: readonly string[];
  readonly heading?: string | undefined;
  readonly why?: string | undefined;
}

/** The pairs of workshop.yaml, in its order, however each is written. */
export function chosenPairs({ pairs = [] }: WorkshopRecord): readonly ChosenPair[] {
  return pairs.map((pair) => (Array.isArray(pair) ? { colours: pair } : pair));
}
