import type { Declared, FigureKind } from "../sheet/declaration.ts";
import {
  closed,
  hexadecimal,
  listOf,
  mapOf,
  maybe,
  NUMBER,
  open,
  TEXT,
  TEXTS,
  type Schema,
} from "../sheet/json-schema.ts";
import { STANDING } from "../sheet/notations/notation-figures.ts";
import { SHEET } from "../sheet/sheet.ts";
import { SCHEMA_VERSION } from "./schema-version.ts";

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
  series: listOf(NUMBER),
};

/** What is published beside the sections of a sheet. */
const BESIDE: Readonly<Record<string, Schema>> = {
  schemaVersion: { const: SCHEMA_VERSION },
  revision: hexadecimal(8),
  neighbours: listOf(
    open({
      slug: TEXT,
      deltaE00: NUMBER,
      samePigment: maybe({ type: "boolean" }),
      metamerism: maybe({ type: "object" }),
    }),
  ),
  evidence: listOf(
    closed({
      figure: TEXT,
      value: {},
      unit: TEXT,
      text: TEXT,
      standing: STANDINGS,
      restsOn: STANDINGS,
      method: TEXT,
      inputs: TEXTS,
      source: maybe(TEXT),
      uncertainty: maybe(NUMBER),
      bound: maybe({ enum: ["at least", "at most"] }),
      reaches: maybe({ ...TEXTS, minItems: 2 }),
    }),
  ),
  notStated: listOf(closed({ figure: TEXT, reason: TEXT, wanting: TEXTS })),
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
      return listOf(schemaOf(shape.member));
    case "map":
      return mapOf(schemaOf(shape.member));
    case "members": {
      const members = Object.entries(shape.members).filter(([, { isPrivate }]) => !isPrivate);
      return closed(
        Object.fromEntries(
          members.map(([key, part]) => {
            const schema = schemaOf(part);
            return [key, part.isAlwaysThere ? schema : maybe(schema)];
          }),
        ),
      );
    }
  }
}
