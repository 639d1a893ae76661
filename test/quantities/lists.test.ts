import { expect, test } from "vitest";
import { given } from "../../lib/quantities/given.ts";
import { grouped } from "../../lib/quantities/grouped.ts";

/** Worked by hand: what the two say they do. */
test("a list keeps all that there is, what is empty or naught too", () => {
  expect(given([false, "alone", undefined, "", "again"])).toEqual(["alone", "", "again"]);
  expect(given([0, false])).toEqual([0]);
});

test("values stand by their keys, both in the order in which they were met", () => {
  const entries = [
    ["white", 1],
    ["black", 2],
    ["white", 3],
  ] as const;
  expect([...grouped(entries)]).toEqual([
    ["white", [1, 3]],
    ["black", [2]],
  ]);
  expect(grouped([]).size).toBe(0);
});
