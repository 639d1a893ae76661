import { describe, expect, test } from "vitest";
import { comparedWays, type ComparedWay } from "../../lib/words/compared-ways.ts";

/** By the axes of CIE L*a*b*: a yellow has b* above 0, and one of less b* is a duller yellow as long as b* stays there. */
const ROWS: readonly [
  what: string,
  one: { a: number; b: number },
  other: { a: number; b: number },
  ways: readonly ComparedWay[],
][] = [
  ["an ochre beside an orange", { a: 22, b: 29 }, { a: 49, b: 51 }, ["less yellow", "less red"]],
  ["the orange beside the ochre", { a: 49, b: 51 }, { a: 22, b: 29 }, ["yellower", "redder"]],
  ["a grey beside an ochre", { a: 0, b: 2 }, { a: 22, b: 29 }, ["bluer", "greener"]],
  ["one white beside another", { a: 0, b: 1 }, { a: 0, b: 4 }, ["bluer"]],
  ["a dull blue beside a clear one", { a: 5, b: -20 }, { a: 5, b: -50 }, ["less blue"]],
  ["a dull green beside a clear one", { a: -20, b: 5 }, { a: -50, b: 5 }, ["less green"]],
  ["at the limit it is a lean still", { a: 15, b: 15 }, { a: 15, b: 30 }, ["bluer"]],
  ["past the limit it is a colour", { a: 15, b: 15.01 }, { a: 15, b: 30 }, ["less yellow"]],
];

describe("which way one colour lies from another", () => {
  test.each(ROWS)("%s", (_, one, other, ways) => {
    const [redder, yellower] = [one.a - other.a, one.b - other.b];
    expect(
      comparedWays({
        one: "One",
        other: "Other",
        ...one,
        lighter: 0,
        redder,
        yellower,
        distance: Math.hypot(redder, yellower),
      }),
    ).toEqual(ways);
  });
});
