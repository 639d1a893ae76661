import { expect, test } from "vitest";
import { isKnown } from "../../lib/quantities/figure.ts";
import { figureEntries } from "../../lib/sheet/figure-entries.ts";
import { FIGURE_TABLE } from "../../lib/sheet/figure-table.ts";
import { sheets } from "../support/demonstration.ts";

/** Every white of the demonstration has its trial; test/sheet/drying-trials.test.ts holds one that has none. */
const OF_UNTRIED_WHITES = "drying.inWhites.*.contributions.*.factor";

test("every published figure is filled by a sheet of the demonstration: where not, a record of content/ wants what it takes", () => {
  const filled = new Set(
    sheets().flatMap((sheet) =>
      [...figureEntries(sheet)].flatMap(({ figure, row }) =>
        isKnown(figure) ? [row.pattern] : [],
      ),
    ),
  );
  const published = FIGURE_TABLE.flatMap(({ isPrivate, pattern }) => (isPrivate ? [] : [pattern]));
  expect(published.length).toBeGreaterThan(150);
  expect(published.filter((pattern) => !filled.has(pattern))).toEqual([OF_UNTRIED_WHITES]);
});
