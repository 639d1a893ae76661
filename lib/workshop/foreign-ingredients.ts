import type { Candidate } from "../lots/correction.ts";
import type { PageContext } from "../pages/page-context.ts";
import type { Colour } from "../records/records.ts";

/**
 * What a correction brings in and the colour is not made of: pigments by Colour Index name, then oils,
 * mediums and driers. A colour that names no oil is ground in the workshop's.
 */
export function foreignIngredients(
  { kind, slug }: Pick<Candidate, "kind" | "slug">,
  { record }: Pick<Colour, "record">,
  { records: { colours, pigments, vehicles, workshop } }: PageContext,
): string[] {
  if (kind === "lot") return [];
  const added = colours.get(slug)?.record;
  const pigmentsOf = (of: Colour["record"]): string[] => of.pigments.map(({ pigment }) => pigment);
  const vehiclesOf = ({ vehicle = workshop.vehicle, additions = [] }: Colour["record"]): string[] =>
    [vehicle, ...additions.map((one) => one.vehicle)].flatMap((one) => one ?? []);
  const beside = (own: readonly string[], all: readonly string[]): string[] =>
    [...new Set(all)].filter((one) => !own.includes(one));
  return [
    ...beside(pigmentsOf(record), added === undefined ? [slug] : pigmentsOf(added)).map(
      (pigment) => {
        const found = pigments.get(pigment)?.record;
        return found?.colourIndexName ?? found?.name ?? pigment;
      },
    ),
    ...beside(vehiclesOf(record), added === undefined ? [] : vehiclesOf(added)).map(
      (vehicle) => vehicles.get(vehicle)?.record.name ?? vehicle,
    ),
  ];
}
