import type { WorkshopRecord } from "./schema/workshop.ts";

/** Colours that the workshop sets side by side on a page of their own: two to four. */
export interface ChosenPair {
  readonly colours: readonly string[];
  readonly heading?: string | undefined;
  readonly why?: string | undefined;
}

/** The pairs of workshop.yaml, in its order, however each is written. */
export function listedPairs({ pairs = [] }: WorkshopRecord): readonly ChosenPair[] {
  return pairs.map((pair) => (Array.isArray(pair) ? { colours: pair } : pair));
}

/** The pairs that have a page: the leading one first, whether it is listed or not. */
export function chosenPairs(workshop: WorkshopRecord): readonly ChosenPair[] {
  const listed = listedPairs(workshop);
  const { leadingPair } = workshop;
  if (leadingPair === undefined) return listed;
  const leads = ({ colours }: ChosenPair) =>
    colours.length === leadingPair.length && leadingPair.every((slug) => colours.includes(slug));
  return [listed.find(leads) ?? { colours: leadingPair }, ...listed.filter((pair) => !leads(pair))];
}
