import type { PlacesApart } from "../collection/statements.ts";

export type ComparedWay =
  | "lighter"
  | "darker"
  | "yellower"
  | "bluer"
  | "less yellow"
  | "less blue"
  | "redder"
  | "greener"
  | "less red"
  | "less green";

/** Less than this share of the distance is no direction worth a word. */
const WORTH_SAYING = 0.4;

/** From here on a* or b* makes a colour of its own and no lean of a grey or white; our own choice. */
const PLAIN_COLOUR = 15;

/** The ways, in which one colour lies from another, that make up their distance. */
export function comparedWays(places: PlacesApart): ComparedWay[] {
  const { lighter, yellower, redder, distance, a, b } = places;
  const way = (by: number, more: ComparedWay, less: ComparedWay): ComparedWay[] =>
    Math.abs(by) < WORTH_SAYING * distance ? [] : [by > 0 ? more : less];
  return [
    ...way(lighter, "lighter", "darker"),
    ...way(
      yellower,
      b < -PLAIN_COLOUR ? "less blue" : "yellower",
      b > PLAIN_COLOUR ? "less yellow" : "bluer",
    ),
    ...way(
      redder,
      a < -PLAIN_COLOUR ? "less green" : "redder",
      a > PLAIN_COLOUR ? "less red" : "greener",
    ),
  ];
}
