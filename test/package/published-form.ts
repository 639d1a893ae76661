import { contentHash } from "../../lib/kept/content-hash.ts";
import { FIGURE_TABLE } from "../../lib/sheet/figure-table.ts";
import { CATALOGUE_COLUMNS } from "../../lib/site/catalogue-csv.ts";
import { dataSchemas } from "../../lib/site/data-schemas.ts";
import { figuresCsv } from "../../lib/site/figures-csv.ts";
import { lowerFirst } from "../../lib/words/letter-case.ts";
import { ENGLISH } from "../../lib/words/english.ts";

/** What other programs read, as it was when CONTRACT.md was last written: a line a key or column. */
export const FORM_FILE = "test/package/published-form.txt";

const COLUMNS: Readonly<Record<string, readonly string[]>> = {
  "catalogue.csv": CATALOGUE_COLUMNS,
  "figures.csv": figuresCsv([]).trim().split(","),
};

/** Where each schema's data lies. */
const ADDRESSES: Readonly<Record<string, string>> = {
  sheet: "colours/NAME/sheet.json",
  "former-sheet": "colours/NAME/sheet.json of a colour that is gone",
};

/** The form of today: "colours/NAME/sheet.json | oil.cpvc | ...". */
export function publishedForm(): string[] {
  return [
    ...dataSchemas().flatMap(({ name, schema }) =>
      formLines(ADDRESSES[name] ?? `${name}.json`, schema),
    ),
    ...Object.entries(COLUMNS).flatMap(([file, columns]) =>
      columns.map((column) => line(file, column, "column")),
    ),
  ];
}

/** The state of schemas and columns by which an entry of CONTRACT.md is headed: 16 digits of a hash. */
export function contractState(): string {
  return contractHash(
    dataSchemas(),
    Object.values(COLUMNS).map((columns) => columns.join(",")),
  );
}

/** What programs go by: schemas without what they say to people, and the columns of the tables. */
export function contractHash(schemas: readonly object[], columns: readonly string[]): string {
  const withoutDescriptions = (key: string, value: unknown): unknown =>
    key === "description" && typeof value === "string" ? undefined : value;
  return contentHash([JSON.stringify([schemas, columns], withoutDescriptions)])
    .toString("hex")
    .slice(0, 16);
}

const BETWEEN = " | ";

function line(file: string, path: string, form: string): string {
  return [file, path, form].join(BETWEEN);
}

type Json = Readonly<Record<string, unknown>>;

/** Of a schema a line for each key: its path, a star for one of many alike, and what its value is. */
export function formLines(file: string, schema: object, path = "", isRequired = true): string[] {
  const {
    properties,
    required,
    items,
    additionalProperties,
    description: _,
    ...rest
  } = schema as Json;
  const members = isSchema(properties) ? Object.entries(properties) : [];
  const needed = Array.isArray(required) ? required : [];
  const isOpen = rest["type"] === "object" && (additionalProperties ?? true) === true;
  const form = JSON.stringify({
    ...rest,
    ...(isOpen ? { open: true } : {}),
    ...(isRequired ? {} : { optional: true }),
  });
  const within = (key: string, part: unknown, isKeyNeeded = true): string[] =>
    isSchema(part) ? formLines(file, part, path === "" ? key : `${path}.${key}`, isKeyNeeded) : [];
  return [
    ...(path === "" ? [] : [line(file, path, form)]),
    ...members.flatMap(([key, part]) => within(key, part, needed.includes(key))),
    ...within("*", items),
    ...within("*", additionalProperties),
  ];
}

function isSchema(part: unknown): part is Json {
  return typeof part === "object" && part !== null && !Array.isArray(part);
}

/** What came, went or is another between two forms; of a part that came or went whole its first line. */
export interface FormChanges {
  readonly come: readonly string[];
  readonly gone: readonly string[];
  readonly changed: readonly string[];
  /** Whether a program that goes by the earlier form may fail on the later one. */
  readonly breaks: boolean;
}

export function formChanges(before: readonly string[], now: readonly string[]): FormChanges {
  const key = (each: string): string => each.split(BETWEEN).slice(0, 2).join(BETWEEN);
  const [old, today] = [before, now].map(
    (lines) => new Map(lines.map((each) => [key(each), each])),
  );
  const only = (of: readonly string[], other: ReadonlyMap<string, string> = new Map()): string[] =>
    of.filter((each) => {
      const parent = key(each).replace(/\.[^.|]+$/, "");
      return !other.has(key(each)) && (parent === key(each) || other.has(parent));
    });
  const gone = only(before, today);
  const changed = now.filter(
    (each) => (old?.get(key(each)) ?? each) !== each && !key(each).endsWith("| schemaVersion"),
  );
  return {
    come: only(now, old),
    gone,
    changed,
    breaks: gone.length > 0 || changed.some((each) => !isWithin(old?.get(key(each)) ?? each, each)),
  };
}

/** Whether who can read the first form can read the other: a key that is always there now, a word more of a closed set. */
function isWithin(before: string, now: string): boolean {
  const [old, today] = [before, now].map(
    (each) => JSON.parse(each.split(BETWEEN)[2] ?? "{}") as Json,
  );
  const { enum: oldWords = [], optional: wasOptional = false, ...oldRest } = old ?? {};
  const { enum: words = [], optional = false, ...rest } = today ?? {};
  return (
    (wasOptional === true || optional === false) &&
    (oldWords as readonly unknown[]).every((word) =>
      (words as readonly unknown[]).includes(word),
    ) &&
    JSON.stringify(oldRest) === JSON.stringify(rest)
  );
}

/** The points of an entry: of each file what came, a figure with its name. */
export function entryPoints({ come, gone, changed }: FormChanges): string[] {
  const told = [
    ...come.map((each) => [each, ""] as const),
    ...gone.map((each) => [each, "is gone"] as const),
    ...changed.map((each) => [each, "is another"] as const),
  ];
  const files = new Map<string, string[]>();
  for (const [each, what] of told) {
    const [file = "", path = ""] = each.split(BETWEEN);
    const name = what === "" ? figureName(path) : what;
    files.set(file, [
      ...(files.get(file) ?? []),
      `\`${path}\`${name === undefined ? "" : `, ${name}`}`,
    ]);
  }
  return [...files].map(([file, parts]) => `- ${fileText(file)}: ${parts.join("; ")}.`);
}

function fileText(file: string): string {
  const [, address = file, whose = ""] = /^(\S+)( of .*)$/.exec(file) ?? [];
  return `\`${address}\`${whose}`;
}

function figureName(path: string): string | undefined {
  const row = FIGURE_TABLE.find(({ pattern }) => pattern === path);
  if (row === undefined) return undefined;
  const [name, gloss] = [ENGLISH.figures[row.word], ENGLISH.glosses[row.word]];
  return lowerFirst(gloss === undefined ? name : `${name} (${gloss})`);
}
