import type { Candidate } from "../lots/correction.ts";
import type { PageContext } from "../pages/page-context.ts";
import type { Colour } from "../records/records.ts";

/** Pigments that a correction brings in and the colour is not made of, by Colour Index name. */
export function foreignPigments(
  { kind, slug }: Pick<Candidate, "kind" | "slug">,
  { record }: Pick<Colour, "record">,
  { records: { colours, pigments } }: PageContext,
): string[] {
  if (kind === "lot") return [];
  const own = new Set(record.pigments.map(({ pigment }) => pigment));
  const added = colours.get(slug)?.record.pigments.map(({ pigment }) => pigment) ?? [slug];
  return added
    .filter((pigment) => !own.has(pigment))
    .map((pigment) => {
      const found = pigments.get(pigment)?.record;
      return found?.colourIndexName ?? found?.name ?? pigment;
    });
}
