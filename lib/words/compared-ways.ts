import type { PlacesApart } from "../collection/statements.ts";

export type ComparedWay = "lighter" | "darker" | "yellower" | "bluer" | "redder" | "greener";

/** Less than this share of the distance is no direction worth a word. */
const WORTH_SAYING = 0.4;

/** The ways, in which one colour lies from another, that make up their distance. */
export function comparedWays({ lighter, yellower, redder, distance }: PlacesApart): ComparedWay[] {
  const way = (by: number, more: ComparedWay, less: ComparedWay): ComparedWay[] =>
    Math.abs(by) < WORTH_SAYING * distance ? [] : [by > 0 ? more : less];
  return [
    ...way(lighter, "lighter", "darker"),
    ...way(yellower, "yellower", "bluer"),
    ...way(redder, "redder", "greener"),
  ];
}
