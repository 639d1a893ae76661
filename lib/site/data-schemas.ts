import { SAID } from "../changes/published-state.ts";
import type { NamedSchema } from "../records/json-schemas.ts";
import { FORMER_KIND } from "./former-sheets.ts";
import {
  closed,
  DATE,
  hexadecimal,
  listOf,
  mapOf,
  maybe,
  NUMBER,
  open,
  TEXT,
  TEXTS,
} from "../sheet/json-schema.ts";
import { SCHEMA_VERSION } from "./schema-version.ts";
import { sheetSchema } from "./sheet-schema.ts";

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
  ...closed({
    schemaVersion: { const: SCHEMA_VERSION },
    kind: { const: FORMER_KIND },
    slug: TEXT,
    name: TEXT,
    gone: maybe(DATE),
    replacedBy: maybe(closed({ name: TEXT, url: TEXT, sheet: maybe(TEXT) })),
  }),
};

/** What a sheet says in a sentence, or an answer in short. */
const SAID_TEXTS = {
  type: "object",
  additionalProperties: false,
  properties: Object.fromEntries(SAID.map((key) => [key, TEXT])),
} as const;

const REVISION = hexadecimal(8);

const CATALOGUE = {
  ...DRAFT,
  title: "catalogue",
  ...closed({
    schemaVersion: { const: SCHEMA_VERSION },
    workshop: open({
      name: TEXT,
      siteAddress: maybe(TEXT),
      demonstration: maybe({ type: "boolean" }),
    }),
    colours: listOf(
      closed({
        slug: TEXT,
        name: TEXT,
        url: TEXT,
        sheet: TEXT,
        discontinued: maybe(TEXT),
        replacedBy: maybe(TEXT),
      }),
    ),
  }),
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
      ...TEXTS,
    },
    hashes: {
      description: "A hash of each of these files but the manifest: what a publish goes by.",
      ...mapOf(TEXT),
    },
    papers: listOf(closed({ path: TEXT, key: hexadecimal(16), hash: hexadecimal(16) })),
    cards: listOf(closed({ slug: TEXT, name: TEXT, revision: REVISION, states: mapOf(TEXT) })),
    withoutCard: listOf(closed({ slug: TEXT, name: TEXT, markets: TEXTS, notClassified: TEXTS })),
    figures: {
      description: "Paths of the figures that `states` has of a sheet where they are known.",
      ...TEXTS,
    },
    sheets: listOf(
      closed({
        slug: TEXT,
        name: TEXT,
        revision: REVISION,
        states: mapOf(TEXT),
        said: maybe(SAID_TEXTS),
        photographs: maybe(TEXTS),
        sizes: TEXTS,
        prices: maybe(
          closed({ currency: TEXT, sizes: listOf(closed({ ml: NUMBER, price: NUMBER })) }),
        ),
        cautions: { type: "object" },
        discontinued: maybe(TEXT),
      }),
    ),
    former: {
      description: "Colours that are gone, each with the one that took its place.",
      ...listOf(closed({ slug: TEXT, replacedBy: TEXT })),
    },
    answers: listOf(
      closed({ slug: TEXT, question: TEXT, revision: REVISION, said: maybe(SAID_TEXTS) }),
    ),
    changes: {
      description: "What changed for customers, the newest first: what the feed tells.",
      ...listOf(closed({ date: DATE, address: TEXT, title: TEXT, sentences: TEXTS })),
    },
  },
};
