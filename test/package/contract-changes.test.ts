import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { dataSchemas } from "../../lib/site/data-schemas.ts";
import { SCHEMA_VERSION } from "../../lib/site/schema-version.ts";
import { withEntry } from "./contract-entry.ts";
import {
  contractHash,
  contractState,
  entryPoints,
  FORM_FILE,
  formChanges,
  formLines,
  publishedForm,
} from "./published-form.ts";

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

describe("CONTRACT.md", () => {
  const [newest, ...older] = entries();

  test("has an entry for the schemas and columns of today, the newest first", () => {
    const changed = "What other programs read has changed: `npm run contract` writes what";
    expect(newest?.state, changed).toBe(contractState());
    expect(readFileSync(FORM_FILE, "utf8"), changed).toBe(`${publishedForm().join("\n")}\n`);
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

describe("an entry that is written", () => {
  const form = (properties: object, required: readonly string[] = []): string[] =>
    formLines("colours/NAME/sheet.json", {
      type: "object",
      additionalProperties: false,
      required,
      properties,
    });
  const number = { type: "number" };
  const oil = (properties: object): object => ({
    type: "object",
    additionalProperties: false,
    properties,
  });

  test("names what came, once where a part came whole, and a figure as the sheet does", () => {
    const before = form({ oil: oil({ pvc: number }) });
    const now = form({
      oil: oil({ pvc: number, cpvc: { ...number, description: "A." } }),
      sizes: { type: "array", items: oil({ ml: number }) },
    });
    expect(entryPoints(formChanges(before, now))).toEqual([
      `- \`colours/NAME/sheet.json\`: \`oil.cpvc\`, CPVC (the share of pigment in the dry film at which the oil just fills the gaps); \`sizes\`.`,
    ]);
    expect(entryPoints(formChanges(now, now))).toEqual([]);
  });

  test("stands first under its version; a new version has a part of its own", () => {
    const contract = "# A\n\n## Version 1\n\n### 1\n\n- B.\n";
    const entry = { version: 1, state: "2", points: ["- C."], breaks: false };
    expect(withEntry(contract, entry)).toBe(
      "# A\n\n## Version 1\n\n### 2\n\n- C.\n\n### 1\n\n- B.\n",
    );
    expect(withEntry(contract, { ...entry, version: 2, breaks: true })).toBe(
      "# A\n\n## Version 2\n\n### 2\n\n- C.\n\n## Version 1\n\n### 1\n\n- B.\n",
    );
    expect(withEntry(contract, { ...entry, points: [] })).toBe(contract);
  });

  test.each([
    ["a key that went", form({ pvc: number }), form({})],
    ["a key of another kind", form({ pvc: number }), form({ pvc: { type: "string" } })],
    ["a key that may be missing now", form({ pvc: number }, ["pvc"]), form({ pvc: number })],
  ])("%s is refused under the version that had it", (_, before, now) => {
    const changes = formChanges(before, now);
    const entry = { version: 1, state: "2", points: entryPoints(changes), breaks: changes.breaks };
    expect(() => withEntry("# A\n\n## Version 1\n", entry)).toThrow("count SCHEMA_VERSION up");
  });

  test.each([
    ["a key more", form({}), form({ pvc: number })],
    ["a key that is always there now", form({ pvc: number }), form({ pvc: number }, ["pvc"])],
    ["a word more", form({ a: { enum: ["b"] } }), form({ a: { enum: ["b", "c"] } })],
  ])("%s is not", (_, before, now) => {
    const { breaks, come, changed } = formChanges(before, now);
    expect(breaks).toBe(false);
    expect([...come, ...changed]).toHaveLength(1);
  });
});
