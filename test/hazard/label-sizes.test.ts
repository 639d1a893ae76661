import { describe, expect, test } from "vitest";
import { labelSizes } from "../../lib/hazard/label/label-sizes.ts";
import { checkTable, type Check } from "../support/checks.ts";

/** CLP, Annex I, Table 1.3, each row at both of its ends; letters as Regulation (EU) 2024/2865 adds them. */
const ROWS = [
  { ml: 15, label: [52, 74], pictogram: 16, least: 10, letters: 1.2 },
  { ml: 500, label: [52, 74], pictogram: 16, least: 10, letters: 1.2 },
  { ml: 501, label: [52, 74], pictogram: 16, least: 10, letters: 1.4 },
  { ml: 3000, label: [52, 74], pictogram: 16, least: 10, letters: 1.4 },
  { ml: 3001, label: [74, 105], pictogram: 23, least: 23, letters: 1.8 },
  { ml: 50_000, label: [74, 105], pictogram: 23, least: 23, letters: 1.8 },
  { ml: 50_001, label: [105, 148], pictogram: 32, least: 32, letters: 2 },
  { ml: 500_000, label: [105, 148], pictogram: 32, least: 32, letters: 2 },
  { ml: 500_001, label: [148, 210], pictogram: 46, least: 46, letters: 2 },
] as const;

const column = (
  name: string,
  source: string,
  locator: string,
  compute: (ml: number) => number,
  expected: (row: (typeof ROWS)[number]) => number,
): void =>
  checkTable(
    name,
    compute,
    ROWS.map((row): Check<number, number> => ({
      basis: "published",
      source,
      locator,
      input: row.ml,
      expected: expected(row),
      tolerance: 0,
    })),
  );

const TABLE = ["clp-label-sizes", "Table 1.3"] as const;
column(
  "shorter side of a label",
  ...TABLE,
  (ml) => labelSizes(ml).labelMm[0],
  ({ label }) => label[0],
);
column(
  "longer side of a label",
  ...TABLE,
  (ml) => labelSizes(ml).labelMm[1],
  ({ label }) => label[1],
);
column(
  "pictogram",
  ...TABLE,
  (ml) => labelSizes(ml).pictogramMm,
  ({ pictogram }) => pictogram,
);
column(
  "least pictogram",
  ...TABLE,
  (ml) => labelSizes(ml).leastPictogramMm,
  ({ least }) => least,
);
column(
  "height of a lower-case x",
  "clp-letter-sizes",
  "1.2.1, as commentaries print it",
  (ml) => labelSizes(ml).xHeightMm,
  ({ letters }) => letters,
);

describe("the table agrees with the rules above it", () => {
  test.each(ROWS)("at $ml ml a pictogram covers a fifteenth of the label and 1 cm2", ({ ml }) => {
    const { labelMm, pictogramMm, leastPictogramMm } = labelSizes(ml);
    // 1.2.1.3, to the whole millimetre in which the table is printed.
    expect((pictogramMm + 0.5) ** 2).toBeGreaterThanOrEqual((labelMm[0] * labelMm[1]) / 15);
    expect(leastPictogramMm ** 2).toBeGreaterThanOrEqual(100);
  });
});

test.each([0, -1, NaN])("refuses a capacity of %d ml", (ml) => {
  expect(() => labelSizes(ml)).toThrow(RangeError);
});
