import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { firstInWindow } from "../../lib/collection/first-in-window.ts";

interface Entry {
  readonly place: number;
  readonly rank: number;
  readonly nth: number;
}

const REACH = 3;
const areNear = (one: Entry, other: Entry): boolean => Math.abs(one.place - other.place) <= REACH;
const inOrder = (one: Entry, other: Entry): number => one.rank - other.rank || one.nth - other.nth;

function entriesOf(pairs: readonly (readonly [place: number, rank: number])[]): Entry[] {
  return pairs
    .map(([place, rank], nth) => ({ place, rank, nth }))
    .toSorted((one, other) => one.place - other.place);
}

describe("the first of those near each entry", () => {
  test("is the one that is found by looking at all of them", () => {
    const pair = fc.tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 6 }));
    fc.assert(
      fc.property(fc.array(pair, { maxLength: 60 }), (pairs) => {
        const entries = entriesOf(pairs);
        const looked = entries.map(
          (entry) => entries.filter((other) => areNear(entry, other)).toSorted(inOrder)[0],
        );
        expect(firstInWindow(entries, areNear, inOrder)).toEqual(looked);
      }),
      { seed: 23 },
    );
  });

  test.each(["all near each other", "in a row"] as const)(
    "takes twice the looks for twice the entries, %s",
    (how) => {
      const looks = (count: number): number => {
        let counted = 0;
        const entries = entriesOf(
          Array.from({ length: count }, (_, i) => [how === "in a row" ? i : 0, (i * 7) % 11]),
        );
        firstInWindow(
          entries,
          (one, other) => {
            counted++;
            return areNear(one, other);
          },
          (one, other) => {
            counted++;
            return inOrder(one, other);
          },
        );
        return counted;
      };
      expect(looks(2000)).toBeLessThan(2.05 * looks(1000));
    },
  );
});
