import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { contentHash } from "../../lib/kept/content-hash.ts";
import { CATALOGUE_COLUMNS } from "../../lib/site/catalogue-csv.ts";
import { dataSchemas } from "../../lib/site/data-schemas.ts";
import { figuresCsv } from "../../lib/site/figures-csv.ts";
import { SCHEMA_VERSION } from "../../lib/site/schema-version.ts";

/** What programs go by: schemas without what they say to people, and the columns of the tables. */
function contractHash(schemas: readonly object[], columns: readonly string[]): string {
  const withoutDescriptions = (key: string, value: unknown): unknown =>
    key === "description" && typeof value === "string" ? undefined : value;
  return contentHash([JSON.stringify([schemas, columns], withoutDescriptions)])
    .toString("hex")
    .slice(0, 16);
}

interface Entry {
  readonly version: string;
  readonly state: string;
  readonly points: number;
}

/** The entries of CONTRACT.md as they stand. */
function entries(): Entry[] {
  const text = readFileSync("CONTRACT.md", "utf8");
  return text
    .split(/^## Version /m)
    .slice(1)
    .flatMap((part) => {
      const [version = "", ...each] = part.split(/^### /m);
      return each.map((entry) => ({
        version: version.trim(),
        state: entry.split("\n")[0]?.trim() ?? "",
        points: entry.match(/^- \S/gm)?.length ?? 0,
      }));
    });
}

const COLUMNS = [CATALOGUE_COLUMNS.join(","), figuresCsv([]).split("\n")[0] ?? ""];

describe("CONTRACT.md", () => {
  const [newest, ...older] = entries();

  test("has an entry for the schemas and columns of today, the newest first", () => {
    const today = contractHash(dataSchemas(), COLUMNS);
    expect(
      newest?.state,
      `What other programs read has changed: say what at the head of CONTRACT.md, under "### ${today}"`,
    ).toBe(today);
  });

  test("counts the version that the data says", () => {
    expect(newest?.version).toBe(String(SCHEMA_VERSION));
    for (const { properties } of dataSchemas().map(
      ({ schema }) => schema as { readonly properties: Readonly<Record<string, unknown>> },
    ))
      expect(properties["schemaVersion"]).toEqual({ const: SCHEMA_VERSION });
  });

  test("says something in every entry, and of no state twice", () => {
    const all = [newest, ...older].flatMap((entry) => entry ?? []);
    for (const { points, state } of all) expect(points, state).toBeGreaterThan(0);
    expect(new Set(all.map(({ state }) => state)).size).toBe(all.length);
  });

  test("asks for an entry after a column or a key more, and not after another description", () => {
    const schemas = [{ type: "object", description: "A.", properties: { description: {} } }];
    const first = contractHash(schemas, ["a"]);
    expect(contractHash([{ ...schemas[0], description: "B." }], ["a"])).toBe(first);
    expect(contractHash(schemas, ["a", "b"])).not.toBe(first);
    expect(contractHash([{ ...schemas[0], properties: {} }], ["a"])).not.toBe(first);
  });
});
