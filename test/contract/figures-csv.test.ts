import { readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { describe, expect, inject, test } from "vitest";
import { publishedSheets } from "./published.ts";
import { sheetLeaves } from "./sheet-leaves.ts";

const ROWS = parse<Readonly<Record<string, string>>>(
  readFileSync(join(inject("siteDir"), "figures.csv"), "utf8"),
  { columns: true },
);

test("figures.csv has a row for each sheet", () => {
  expect(ROWS.map(({ slug }) => slug).toSorted()).toEqual(
    publishedSheets().map(({ slug }) => slug),
  );
});

describe.each(publishedSheets())("the row of $slug", ({ slug, sheet }) => {
  const row = ROWS.find((one) => one["slug"] === slug) ?? {};
  const values = new Map(sheetLeaves(sheet).map(({ path, value }) => [path, value]));
  const standings = new Map(
    (sheet["evidence"] as readonly { figure: string; standing: string }[]).map(
      ({ figure, standing }) => [figure, standing],
    ),
  );
  const figures = Object.keys(row).filter(
    (column) => column.includes(".") && !column.endsWith(" standing"),
  );

  test("gives each figure and its standing as sheet.json does, a range by its ends, empty where not stated", () => {
    expect(figures.length).toBeGreaterThan(10);
    for (const figure of figures) {
      const value = values.get(figure);
      expect(row[figure], figure).toBe(
        Array.isArray(value)
          ? value.join("..")
          : typeof value === "string" || typeof value === "number"
            ? String(value)
            : "",
      );
      expect(row[`${figure} standing`], figure).toBe(standings.get(figure) ?? "");
    }
  });

  test("gives name and revision", () => {
    expect([row["name"], row["revision"]]).toEqual([sheet["name"], sheet["revision"]]);
  });
});
