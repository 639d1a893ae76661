import type { z } from "zod";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { nearestWord } from "../diagnostics/nearest-word.ts";
import { knownKeys } from "./known-keys.ts";
import { scaleHint } from "./scale-hint.ts";
import type { RecordPath, YamlRecord } from "./yaml-record.ts";

type Issue = z.core.$ZodIssue;

/** Hold a record against its schema: the checked value, or every fault with its place. */
export function checkedAgainst<S extends z.ZodType>(
  schema: S,
  record: YamlRecord,
): { value?: z.output<S>; diagnostics: Diagnostic[] } {
  const result = schema.safeParse(record.data, { reportInput: true });
  if (result.success) return { value: result.data, diagnostics: [] };
  return { diagnostics: result.error.issues.flatMap((issue) => faults(issue, [], schema, record)) };
}

function faults(
  issue: Issue,
  above: RecordPath,
  schema: z.ZodType,
  record: YamlRecord,
): Diagnostic[] {
  const path = [...above, ...issue.path];
  if (issue.code === "invalid_union") {
    const words = issue.errors.map(([only, ...more]) =>
      only?.code === "invalid_value" && more.length === 0 ? only.values : undefined,
    );
    if (words.every((values) => values !== undefined))
      return faults(
        { ...issue, code: "invalid_value", values: words.flat() },
        above,
        schema,
        record,
      );
    const branch = closestBranch(issue.errors);
    if (branch) return branch.flatMap((inner) => faults(inner, path, schema, record));
  }
  if (issue.code === "unrecognized_keys")
    return issue.keys.map((key) => unknownKey(key, path, schema, record));

  const subject = [...path].reverse().find((key) => typeof key === "string") ?? "record";
  const found = valueAt(record.data, path);
  const allowed = issue.code === "invalid_value" ? issue.values.map(String) : [];
  const near = typeof found === "string" ? nearestWord(found, allowed) : undefined;
  const hint =
    scaleHint(path, found) ??
    formHint(issue, found) ??
    (near === undefined ? undefined : `nearest known word \`${near}\``);
  return [
    {
      severity: "error",
      rule: "records/schema",
      place: record.place(path),
      subject,
      actual: printedValue(found),
      expected: expectation(issue),
      ...(hint === undefined ? {} : { hint }),
    },
  ];
}

/** How the same thing is written right, where only its form is wrong. */
function formHint(issue: Issue, found: unknown): string | undefined {
  if (issue.code !== "invalid_type") return undefined;
  if (issue.expected === "string" && typeof found === "number") return `in quotes: "${found}"`;
  const isPair =
    Array.isArray(found) && found.length === 2 && found.every((end) => typeof end === "number");
  return isPair && issue.expected === "number"
    ? `a range is { value: [${found.join(", ")}] }`
    : undefined;
}

/** More keys than this are a hint and no expectation. */
const MOST_EXPECTED = 14;

function unknownKey(
  key: string,
  path: RecordPath,
  schema: z.ZodType,
  record: YamlRecord,
): Diagnostic {
  const known = knownKeys(schema, path);
  const near = nearestWord(key, known);
  const hint =
    near !== undefined
      ? `nearest known key \`${near}\``
      : known.length > MOST_EXPECTED
        ? `known keys: ${known.join(", ")}`
        : undefined;
  return {
    severity: "error",
    rule: "records/unknown-key",
    place: record.keyPlace(path, key),
    subject: "key",
    actual: key,
    expected: known.length > MOST_EXPECTED ? "a key of this record" : known.join(", "),
    ...(hint === undefined ? {} : { hint }),
  };
}

/** Of a union's complaints, those of the form that the author most likely meant: the fewest, and no wrong type at its root. */
function closestBranch(branches: readonly (readonly Issue[])[]): readonly Issue[] | undefined {
  const cost = (branch: readonly Issue[]): number =>
    branch.reduce((sum, issue) => {
      const atRoot = issue.path.length === 0;
      if (issue.code === "unrecognized_keys") return sum + 3 * issue.keys.length;
      return (
        sum +
        (atRoot && issue.code === "invalid_type"
          ? 100
          : issue.code === "invalid_type" && issue.input === undefined
            ? 2
            : 1)
      );
    }, 0);
  return [...branches].sort((one, other) => cost(one) - cost(other))[0];
}

const TYPE_WORDS: Readonly<Record<string, string>> = {
  string: "text",
  number: "a number",
  boolean: "true or false",
  array: "a list",
  object: "keys and values",
  null: "nothing",
  tuple: "a list",
};
const FORMAT_WORDS: Readonly<Record<string, string>> = {
  date: "a date, YYYY-MM-DD",
  url: "a web address, http or https",
};

function expectation(issue: Issue): string {
  switch (issue.code) {
    case "invalid_type":
      return TYPE_WORDS[issue.expected] ?? issue.expected;
    case "invalid_value":
      return issue.values.map(String).join(" | ");
    case "too_small":
      return sizeWords(issue.origin, issue.inclusive === false ? ">" : ">=", Number(issue.minimum));
    case "too_big":
      return sizeWords(issue.origin, issue.inclusive === false ? "<" : "<=", Number(issue.maximum));
    case "invalid_format":
      return FORMAT_WORDS[issue.format] ?? issue.message;
    case "invalid_union":
      return "one of the known forms";
    default:
      return issue.message;
  }
}

function sizeWords(origin: string, sign: string, limit: number): string {
  if (origin === "string") return `${sign} ${limit} characters`;
  if (origin === "array") return `${sign} ${limit} entries`;
  return `${sign} ${limit}`;
}

function valueAt(data: unknown, path: RecordPath): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      typeof value === "object" && value !== null
        ? (value as Record<PropertyKey, unknown>)[key]
        : undefined,
    data,
  );
}

function printedValue(value: unknown): string {
  if (value === undefined || value === null) return "nothing";
  const printed =
    typeof value === "string"
      ? value
      : typeof value === "number"
        ? String(value)
        : JSON.stringify(value);
  return printed.length > 80 ? `${printed.slice(0, 77)}...` : printed;
}
