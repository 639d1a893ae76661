import type { Declared, FigureKind, Schema } from "../sheet/declaration.ts";
import { STANDING } from "../sheet/notations/notation-figures.ts";
import { SHEET } from "../sheet/sheet.ts";
import { SCHEMA_VERSION } from "./schema-version.ts";

const TEXT = { type: "string" } as const;
const NUMBER = { type: "number" } as const;
const TEXTS = { type: "array", items: TEXT } as const;
const QUANTITY = {
  anyOf: [NUMBER, { type: "array", items: NUMBER, minItems: 2, maxItems: 2 }],
} as const;
const STANDINGS = schemaOf(STANDING);

/** What a figure looks like at its place, by kind. */
const FIGURE_SCHEMAS: Readonly<Record<FigureKind, Schema>> = {
  decimal: QUANTITY,
  significant: QUANTITY,
  share: QUANTITY,
  days: QUANTITY,
  word: TEXT,
  notation: { type: ["string", "null"] },
  series: { type: "array", items: NUMBER },
};

/** What is published beside the sections of a sheet. */
const BESIDE: Readonly<Record<string, Schema>> = {
  schemaVersion: { const: SCHEMA_VERSION },
  revision: { type: "string", pattern: "^[0-9a-f]{8}$" },
  neighbours: {
    type: "array",
    items: {
      type: "object",
      required: ["slug", "deltaE00"],
      properties: {
        slug: TEXT,
        deltaE00: NUMBER,
        samePigment: { type: "boolean" },
        metamerism: { type: "object" },
      },
    },
  },
  evidence: {
    type: "array",
    items: {
      type: "object",
      additionalProperties: false,
      required: ["figure", "value", "unit", "text", "standing", "restsOn", "method", "inputs"],
      properties: {
        figure: TEXT,
        value: {},
        unit: TEXT,
        text: TEXT,
        standing: STANDINGS,
        restsOn: STANDINGS,
        method: TEXT,
        inputs: TEXTS,
        source: TEXT,
        uncertainty: NUMBER,
        bound: { enum: ["at least", "at most"] },
        reaches: { type: "array", items: { type: "string" }, minItems: 2 },
      },
    },
  },
  notStated: {
    type: "array",
    items: {
      type: "object",
      additionalProperties: false,
      required: ["figure", "reason", "wanting"],
      properties: { figure: TEXT, reason: TEXT, wanting: TEXTS },
    },
  },
};
const ALWAYS_BESIDE = ["schemaVersion", "revision", "evidence", "notStated"];

/** The published schema of sheet.json: what the sections declare, and nothing else. */
export function sheetSchema(): object {
  const { required, properties, ...rest } = schemaOf(SHEET) as {
    readonly required: readonly string[];
    readonly properties: Readonly<Record<string, Schema>>;
  };
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    title: "sheet",
    ...rest,
    required: [...ALWAYS_BESIDE, ...required],
    properties: { ...properties, ...BESIDE },
  };
}

function schemaOf({ shape }: Declared): Schema {
  switch (shape.form) {
    case "figure":
      return FIGURE_SCHEMAS[shape.figure.kind];
    case "plain":
      return shape.schema;
    case "list":
      return { type: "array", items: schemaOf(shape.member) };
    case "map":
      return { type: "object", additionalProperties: schemaOf(shape.member) };
    case "members": {
      const members = Object.entries(shape.members).filter(([, { isPrivate }]) => !isPrivate);
      return {
        type: "object",
        additionalProperties: false,
        required: members.filter(([, { isAlwaysThere }]) => isAlwaysThere).map(([key]) => key),
        properties: Object.fromEntries(members.map(([key, part]) => [key, schemaOf(part)])),
      };
    }
  }
}
