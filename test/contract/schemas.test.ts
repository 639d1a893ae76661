import { readdirSync, readFileSync } from "node:fs";
import { basename, dirname, extname, join } from "node:path";
import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import formats from "ajv-formats";
import { describe, expect, inject, test } from "vitest";
import { parse } from "yaml";
import { EDITOR_SCHEMAS, editorSchemas } from "../support/editor-schemas.ts";
import { published, publishedSheets, type Json } from "./published.ts";

const ajv = new Ajv2020({
  allErrors: true,
  strict: true,
  strictTypes: false,
  strictTuples: false,
  strictRequired: false,
});
formats.default(ajv);
/** Marks a key of a record that stays in the workshop; it restricts no value. */
ajv.addKeyword({ keyword: "private", schemaType: "boolean" });

/** What a schema says against a value, one line a fault. */
function faults(validate: ValidateFunction, value: unknown): string[] {
  return validate(value)
    ? []
    : (validate.errors ?? []).map(
        ({ instancePath, message, params }) =>
          `${instancePath} ${message ?? ""} ${JSON.stringify(params)}`,
      );
}

const schema = (name: string): ValidateFunction =>
  ajv.compile(published(`schema/${name}.schema.json`));

describe("the published data keeps to the schemas published beside it", () => {
  test.each(["catalogue", "manifest"])("%s.json", (name) => {
    expect(faults(schema(name), published(`${name}.json`))).toEqual([]);
  });

  const sheet = schema("sheet");
  test.each(publishedSheets())("colours/$slug/sheet.json", ({ sheet: value }) => {
    expect(faults(sheet, value)).toEqual([]);
  });
});

describe("the schemas are no empty promise: of a sound sheet they refuse", () => {
  const sheet = ajv.compile(published("schema/sheet.schema.json"));
  const sound = published("colours/bone-black/sheet.json");
  const oil = sound["oil"] as Json;
  test.each<[string, Json]>([
    ["a key that no table knows", { ...sound, extra: 1 }],
    ["a revision that is none", { ...sound, revision: "1" }],
    ["a figure that is text", { ...sound, oil: { ...oil, cpvc: "0.43" } }],
    ["a range of three", { ...sound, oil: { ...oil, cpvc: [0.4, 0.43, 0.5] } }],
    ["an unknown figure", { ...sound, oil: { ...oil, shine: 1 } }],
    [
      "a standing that is none",
      { ...sound, drying: { ...(sound["drying"] as Json), standing: "guessed" } },
    ],
    [
      "evidence without its method",
      {
        ...sound,
        evidence: [
          {
            figure: "oil.cpvc",
            value: 0.43,
            unit: "1",
            text: "43 %",
            standing: "derived",
            restsOn: "stated",
            inputs: [],
          },
        ],
      },
    ],
  ])("%s", (_, value) => {
    expect(faults(sheet, value)).not.toEqual([]);
  });

  test("its absence of a slug, and of every other part that is always there", () => {
    for (const key of [
      "schemaVersion",
      "slug",
      "name",
      "revision",
      "pigments",
      "notations",
      "tints",
      "optics",
      "oil",
      "drying",
      "permanence",
      "cautions",
      "evidence",
      "notStated",
    ]) {
      expect(
        faults(sheet, Object.fromEntries(Object.entries(sound).filter(([name]) => name !== key))),
        key,
      ).not.toEqual([]);
    }
  });
});

describe("the schemas of records", () => {
  const kept = editorSchemas();

  test("in assets/schema are those that records are checked by; `npm run schemas` writes them", () => {
    expect(readdirSync(EDITOR_SCHEMAS).sort()).toEqual(kept.map(({ file }) => file).sort());
    for (const { file, text } of kept)
      expect(readFileSync(join(EDITOR_SCHEMAS, file), "utf8"), file).toBe(text);
  });

  test.each(kept)("$file is published as it is", ({ file, text }) => {
    expect(readFileSync(join(inject("siteDir"), "schema", file), "utf8")).toBe(text);
  });
});

/** The folders of records, and the schema of each. */
const RECORDS = [
  ["colours", "colour"],
  ["pigments", "pigment"],
  ["vehicles", "vehicle"],
  ["sources", "source"],
] as const;
const FILES = [
  { file: "content/workshop.yaml", kind: "workshop" },
  ...RECORDS.flatMap(([folder, kind]) =>
    readdirSync(`content/${folder}`).map((name) => ({ file: `content/${folder}/${name}`, kind })),
  ),
];

describe("a record of the demonstration", () => {
  const validators = new Map(
    ["workshop", ...RECORDS.map(([, kind]) => kind)].map((kind) => [kind, schema(kind)]),
  );

  test.each(FILES)(
    "$file names its schema in the first line of its YAML and keeps to it",
    ({ file, kind }) => {
      const text = readFileSync(file, "utf8");
      const yaml =
        extname(file) === ".md" ? (/^---\n([\s\S]*?)\n---\n/.exec(text)?.[1] ?? "") : text;
      const named = /^# yaml-language-server: \$schema=(\S+)\n/.exec(yaml)?.[1] ?? "";
      expect(join(dirname(file), named)).toBe(`${EDITOR_SCHEMAS}/${kind}.schema.json`);
      const validate = validators.get(kind);
      if (validate === undefined)
        throw new Error(`Unexpected absence of a schema for ${basename(file)}`);
      expect(faults(validate, parse(yaml))).toEqual([]);
    },
  );
});
