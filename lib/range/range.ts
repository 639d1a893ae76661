import { isKnown } from "../quantities/figure.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { nearestColours, type LabEntry, type Neighbour } from "./lab-index.ts";

/** Finished sheets held against each other. */
export interface Range {
  /** By slug: the nearest masstones in daylight (D65/10), nearest first. */
  readonly nearest: ReadonlyMap<string, readonly Neighbour[]>;
}

const NEIGHBOURS = 6;

export function rangeOf(sheets: readonly Sheet[]): Range {
  return { nearest: nearestColours(sheets.flatMap(dayEntry), NEIGHBOURS) };
}

function dayEntry({ slug, notations }: Sheet): LabEntry[] {
  const lab = notations.masstone?.lab["D65/10"];
  if (lab === undefined || !isKnown(lab.L) || !isKnown(lab.a) || !isKnown(lab.b)) return [];
  return [{ slug, lab: { L: lab.L.value, a: lab.a.value, b: lab.b.value } }];
}

/** Neighbours made of none of a colour's pigments: the same colour from another pigment. */
export function sameColourOtherPigment(sheet: Sheet, sheets: ReadonlyMap<string, Sheet>, { nearest }: Range): Neighbour[] {
  const own = new Set(sheet.pigments.map(({ slug }) => slug));
  return (nearest.get(sheet.slug) ?? []).filter(({ slug }) => !(sheets.get(slug)?.pigments ?? []).some((pigment) => own.has(pigment.slug)));
}

/** Colours that share a pigment: the same pigment in another colour. */
export function samePigmentOtherColour(sheet: Sheet, sheets: ReadonlyMap<string, Sheet>): string[] {
  const own = new Set(sheet.pigments.map(({ slug }) => slug));
  return [...sheets.values()].filter((other) => other.slug !== sheet.slug && other.pigments.some(({ slug }) => own.has(slug))).map(({ slug }) => slug);
}
