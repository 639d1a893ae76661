import type { Collection } from "../collection/collection.ts";
import { remembered } from "../quantities/remembered.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { PublishedSheet } from "./published-data.ts";

const bySlug = remembered(
  (sheets: readonly Sheet[]) => new Map(sheets.map((sheet) => [sheet.slug, sheet])),
);

/** What sheet.json says of a colour's nearest: rounded as its other numbers are. */
export function neighboursOf(
  sheet: Sheet,
  sheets: readonly Sheet[],
  { nearest, inTwoLights }: Collection,
): PublishedSheet["neighbours"] {
  const own = new Set(sheet.pigments.map(({ slug }) => slug));
  const tidy = (value: number): number => Number(value.toPrecision(6));
  return (nearest.get(sheet.slug) ?? []).map(({ slug, deltaE00 }) => {
    const lights = inTwoLights.get(sheet.slug)?.find((pair) => pair.slug === slug);
    return {
      slug,
      deltaE00: tidy(deltaE00),
      samePigment:
        bySlug(sheets)
          .get(slug)
          ?.pigments.some((pigment) => own.has(pigment.slug)) ?? false,
      ...(lights !== undefined && {
        metamerism: {
          daylight: tidy(lights.daylight),
          lamplight: tidy(lights.lamplight),
          index: tidy(lights.statement.values.index),
        },
      }),
    };
  });
}
