import { SAID } from "../changes/published-state.ts";
import type { NamedSchema } from "../records/json-schemas.ts";
import { FORMER_KIND } from "./former-sheets.ts";
import { SCHEMA_VERSION } from "./schema-version.ts";
import { sheetSchema } from "./sheet-schema.ts";

const TEXT = { type: "string" } as const;
const DRAFT = { $schema: "https://json-schema.org/draft/2020-12/schema" } as const;

/** The schemas of the data that other programs read, published beside it. */
export function dataSchemas(): NamedSchema[] {
  return [
    { name: "sheet", schema: sheetSchema() },
    { name: "catalogue", schema: CATALOGUE },
    { name: "manifest", schema: MANIFEST },
    { name: "former-sheet", schema: FORMER_SHEET },
  ];
}

/** At the address of a colour's sheet.json once the colour is gone: addresses are those below the site's folder. */
const FORMER_SHEET = {
  ...DRAFT,
  title: "former-sheet",
  type: "object",
  additionalProperties: false,
  required: ["schemaVersion", "kind", "slug", "name"],
  properties: {
    schemaVersion: { const: SCHEMA_VERSION },
    kind: { const: FORMER_KIND },
    slug: TEXT,
    name: TEXT,
    gone: { type: "string", format: "date" },
    replacedBy: {
      type: "object",
      additionalProperties: false,
      required: ["name", "url"],
      properties: { name: TEXT, url: TEXT, sheet: TEXT },
    },
  },
};

/** What a sheet says in a sentence, or an answer in short. */
const SAID_TEXTS = {
  type: "object",
  additionalProperties: false,
  properties: Object.fromEntries(SAID.map((key) => [key, TEXT])),
} as const;

const CATALOGUE = {
  ...DRAFT,
  title: "catalogue",
  type: "object",
  additionalProperties: false,
  required: ["schemaVersion", "workshop", "colours"],
  properties: {
    schemaVersion: { const: SCHEMA_VERSION },
    workshop: {
      type: "object",
      required: ["name"],
      properties: { name: TEXT, siteAddress: TEXT, demonstration: { type: "boolean" } },
    },
    colours: {
      type: "array",
      items: {
        type: "object",
        additionalProperties: false,
        required: ["slug", "name", "url", "sheet"],
        properties: {
          slug: TEXT,
          name: TEXT,
          url: TEXT,
          sheet: TEXT,
          discontinued: TEXT,
          replacedBy: TEXT,
        },
      },
    },
  },
};

const MANIFEST = {
  ...DRAFT,
  title: "manifest",
  type: "object",
  additionalProperties: false,
  required: ["kind", "schemaVersion", "sheets", "cards", "withoutCard"],
  properties: {
    kind: { const: "mullstone-manifest" },
    schemaVersion: { const: SCHEMA_VERSION },
    date: TEXT,
    files: {
      description: "Every file that the build wrote; a later build deletes these and no others.",
      type: "array",
      items: TEXT,
    },
    hashes: {
      description: "A hash of each of these files but the manifest: what a publish goes by.",
      type: "object",
      additionalProperties: TEXT,
    },
    papers: {
      type: "array",
      items: {
        type: "object",
        additionalProperties: false,
        required: ["path", "key", "hash"],
        properties: {
          path: TEXT,
          key: { type: "string", pattern: "^[0-9a-f]{16}$" },
          hash: { type: "string", pattern: "^[0-9a-f]{16}$" },
        },
      },
    },
    cards: {
      type: "array",
      items: {
        type: "object",
        additionalProperties: false,
        required: ["slug", "name", "revision", "states"],
        properties: {
          slug: TEXT,
          name: TEXT,
          revision: { type: "string", pattern: "^[0-9a-f]{8}$" },
          states: { type: "object", additionalProperties: TEXT },
        },
      },
    },
    withoutCard: {
      type: "array",
      items: {
        type: "object",
        additionalProperties: false,
        required: ["slug", "name", "markets", "notClassified"],
        properties: {
          slug: TEXT,
          name: TEXT,
          markets: { type: "array", items: TEXT },
          notClassified: { type: "array", items: TEXT },
        },
      },
    },
    figures: {
      description: "Paths of the figures that `states` has of a sheet where they are known.",
      type: "array",
      items: TEXT,
    },
    sheets: {
      type: "array",
      items: {
        type: "object",
        additionalProperties: false,
        required: ["slug", "name", "revision", "states", "sizes", "cautions"],
        properties: {
          slug: TEXT,
          name: TEXT,
          revision: { type: "string", pattern: "^[0-9a-f]{8}$" },
          states: { type: "object", additionalProperties: TEXT },
          said: SAID_TEXTS,
          photographs: { type: "array", items: TEXT },
          sizes: { type: "array", items: TEXT },
          prices: {
            type: "object",
            additionalProperties: false,
            required: ["currency", "sizes"],
            properties: {
              currency: TEXT,
              sizes: {
                type: "array",
                items: {
                  type: "object",
                  additionalProperties: false,
                  required: ["ml", "price"],
                  properties: { ml: { type: "number" }, price: { type: "number" } },
                },
              },
            },
          },
          cautions: { type: "object" },
          discontinued: TEXT,
        },
      },
    },
    former: {
      description: "Colours that are gone, each with the one that took its place.",
      type: "array",
      items: {
        type: "object",
        additionalProperties: false,
        required: ["slug", "replacedBy"],
        properties: { slug: TEXT, replacedBy: TEXT },
      },
    },
    answers: {
      type: "array",
      items: {
        type: "object",
        additionalProperties: false,
        required: ["slug", "question", "revision"],
        properties: {
          slug: TEXT,
          question: TEXT,
          revision: { type: "string", pattern: "^[0-9a-f]{8}$" },
          said: SAID_TEXTS,
        },
      },
    },
    changes: {
      description: "What changed for customers, the newest first: what the feed tells.",
      type: "array",
      items: {
        type: "object",
        additionalProperties: false,
        required: ["date", "address", "title", "sentences"],
        properties: {
          date: { type: "string", format: "date" },
          address: TEXT,
          title: TEXT,
          sentences: { type: "array", items: TEXT },
        },
      },
    },
  },
};
