import type { z } from "zod";
import { excerpt, type Diagnostic } from "../diagnostics/diagnostic.ts";
import { nearestWord } from "../diagnostics/nearest-word.ts";
import { errorAt } from "./fault.ts";
import { formHint } from "./form-hints.ts";
import { knownKeys } from "./known-keys.ts";
import { reachHint } from "./schema/reach.ts";
import { scaleHint } from "./scale-hint.ts";
import { printedPath, type RecordPath, type YamlRecord } from "./yaml-record.ts";

type Issue = z.core.$ZodIssue;

/** Hold a record against its schema: the checked value, or every fault with its place. */
export function checkedAgainst<S extends z.ZodType>(
  schema: S,
  record: YamlRecord,
): { value?: z.output<S>; diagnostics: Diagnostic[] } {
  const result = schema.safeParse(record.data, { reportInput: true });
  if (result.success) return { value: result.data, diagnostics: [] };
  const { issues } = result.error;
  const told = issues.slice(0, MOST_TOLD).flatMap((issue) => faults(issue, [], schema, record));
  const untold = issues.length - MOST_TOLD;
  return { diagnostics: untold > 0 ? [...told, andMore(untold, "fault", record, [])] : told };
}

/** Of faults of one kind in one record; who has more of them reads the first and knows the rest. */
const MOST_TOLD = 20;

function andMore(count: number, noun: string, record: YamlRecord, path: RecordPath): Diagnostic {
  return errorAt(record.place(path), "records/schema", {
    message: `And ${count.toLocaleString("en-GB")} more ${noun}${count === 1 ? "" : "s"} of this kind in the record`,
  });
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
    const kinds = discriminators(issue.errors);
    if (kinds !== undefined) return faults(kinds, path, schema, record);
    const lacking = lackedKeys(issue.errors);
    if (lacking.length > 1) return [lacksOneKey(lacking, path, record)];
    const branch = closestBranch(issue.errors);
    if (branch) return branch.flatMap((inner) => faults(inner, path, schema, record));
  }
  if (issue.code === "unrecognized_keys") return unknownKeys(issue.keys, path, schema, record);

  const named = path.length === 0 ? "The record" : printedPath(path);
  const found = valueAt(record.data, path);
  const allowed = issue.code === "invalid_value" ? issue.values.map(String) : [];
  const near = typeof found === "string" ? nearestWord(found, allowed) : undefined;
  const hint =
    scaleHint(path, found) ??
    reachHint(path, found) ??
    formHint(issue, path, found, record.written(path)) ??
    (near === undefined ? undefined : `nearest: ${near}`);
  return [
    errorAt(record.place(path), "records/schema", {
      message: sentence(named, issue, found),
      actual: printedValue(found),
      expected: expectation(issue),
      ...(hint !== undefined && { hint }),
    }),
  ];
}

/** Keys of which any one would make a form of a union whole: of each form that lacks nothing else. */
function lackedKeys(branches: readonly (readonly Issue[])[]): readonly string[] {
  return branches.flatMap(([only, ...more]) =>
    only?.path.length === 1 && only.input === undefined && more.length === 0
      ? [String(only.path[0])]
      : [],
  );
}

function lacksOneKey(keys: readonly string[], path: RecordPath, record: YamlRecord): Diagnostic {
  return errorAt(record.place(path), "records/schema", {
    message: `${printedPath(path)} says nothing yet: it takes one more key, ${alternatives(keys)}`,
    actual: "none of them",
    expected: alternatives(keys),
  });
}

/** What is wrong with a value, in one sentence. */
function sentence(named: string, issue: Issue, found: unknown): string {
  const isMissing = found === undefined || found === null;
  const wanted = expectation(issue);
  if (isMissing) return `${named} is missing: it takes ${wanted}`;
  const written = printedValue(found);
  const isSized = (issue.code === "too_small" || issue.code === "too_big") && issue;
  if (isSized && (isSized.origin === "array" || isSized.origin === "string"))
    return `${named} is too ${issue.code === "too_small" ? "short" : "long"}: it takes ${wanted}`;
  if (isSized) return `${named} is ${written}, and takes ${wanted}`;
  return `${named} can't be ${typeof found === "string" ? `"${written}"` : written}: it takes ${wanted}`;
}

/** More keys than this are a hint and no expectation. */
const MOST_EXPECTED = 14;

function unknownKeys(
  keys: readonly string[],
  path: RecordPath,
  schema: z.ZodType,
  record: YamlRecord,
): Diagnostic[] {
  const told = keys.slice(0, MOST_TOLD).map((key) => unknownKey(key, path, schema, record));
  const untold = keys.length - MOST_TOLD;
  return untold > 0 ? [...told, andMore(untold, "unknown key", record, path)] : told;
}

function unknownKey(
  key: string,
  path: RecordPath,
  schema: z.ZodType,
  record: YamlRecord,
): Diagnostic {
  const cut = cutNumber(key, path, record);
  if (cut !== undefined) return cut;
  const known = knownKeys(schema, path);
  if (known.includes(key)) return keyOfAnotherForm(key, path, record);
  const near = nearestWord(key, known);
  const [, begun, mark] = /^([\w-]+)(:| )\s*\S/.exec(key) ?? [];
  const hint = /^\d+$/.test(key)
    ? "a decimal comma? a number has a decimal point"
    : /^\d/.test(key)
      ? "a comma in the value before it? between braces a value that holds one stands in quotes, and a number has a decimal point"
      : begun !== undefined && known.includes(begun)
        ? `a ${mark === ":" ? "blank" : "colon"} is missing after ${begun}`
        : near !== undefined
          ? `nearest: ${near}`
          : `known: ${known.join(", ")}`;
  return errorAt(record.keyPlace(path, key), "records/unknown-key", {
    message: `There is no key ${excerpt(key)} ${path.length === 0 ? "in this record" : `under ${printedPath(path)}`}`,
    actual: key,
    expected: known.length > MOST_EXPECTED ? "a key of this record" : known.join(", "),
    hint,
  });
}

/** Where one thing is written in one of several forms, a key of a second of them. */
function keyOfAnotherForm(key: string, path: RecordPath, record: YamlRecord): Diagnostic {
  return errorAt(record.keyPlace(path, key), "records/unknown-key", {
    message: `The key ${key} does not go with the others ${path.length === 0 ? "of this record" : `under ${printedPath(path)}`}, which are those of another form`,
    actual: key,
    expected: "the keys of one form",
    hint: `without ${key}, or with ${key} in their place`,
  });
}

/** A number that YAML cut in two at its decimal comma, since a comma parts what stands between braces. */
function cutNumber(key: string, path: RecordPath, record: YamlRecord): Diagnostic | undefined {
  const pairs = record.pairs(path);
  const at = pairs.findIndex((pair) => pair.key !== undefined && sameNumber(pair.key, key));
  const [before, decimals] = [pairs[at - 1], pairs[at]];
  if (before?.key === undefined || !/^\d+(?:\.\d{3})*$/.test(before.value ?? "")) return undefined;
  const [whole, parts] = [before.value?.replaceAll(".", ""), decimals?.key];
  const own = [...path, before.key];
  return errorAt(record.place(own), "records/schema", {
    message: `${printedPath(own)} can't be ${before.value},${parts}: it takes a number`,
    actual: `${before.value},${parts}`,
    expected: "a number",
    hint: `with a decimal point: ${whole}.${parts}`,
  });
}

/** Whether a key is digits, written as another tells them: 05 of a key 5. */
function sameNumber(written: string, key: string): boolean {
  return /^\d+$/.test(written) && String(Number(written)) === key;
}

/** Of a union's complaints, those of the form that the author most likely meant: the fewest, and no wrong type at its root. */
/** Where every branch wants another word at one key, as kind: all of these words, at that key. */
function discriminators(branches: readonly (readonly Issue[])[]): Issue | undefined {
  const wanted = branches.map((branch) =>
    branch.find((issue) => issue.code === "invalid_value" && issue.path.length === 1),
  );
  const [first] = wanted;
  if (first?.code !== "invalid_value" || wanted.length < 2) return undefined;
  const values = wanted.flatMap((issue) =>
    issue?.code === "invalid_value" && issue.path[0] === first.path[0] ? [issue.values] : [],
  );
  return values.length === branches.length && values.every((one) => one.length === 1)
    ? { ...first, values: values.flat() }
    : undefined;
}

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
  int: "a whole number",
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
      return alternatives(issue.values.map(String));
    case "too_small":
      // The least of a reach is there for the arithmetic; nought and below have a plainer reason.
      if (Number(issue.input) <= 0 && isLeast(Number(issue.minimum)) && issue.origin === "number")
        return "more than 0";
      return bounded(issue.origin, Number(issue.minimum), [
        issue.inclusive === false ? "more than" : "at least",
        issue.inclusive === false ? "more than" : "or more",
      ]);
    case "too_big":
      return bounded(issue.origin, Number(issue.maximum), [
        issue.inclusive === false ? "less than" : "at most",
        issue.inclusive === false ? "less than" : "or less",
      ]);
    case "invalid_format":
      // What a schema says by itself comes before what the checker says of every such text.
      return issue.message.startsWith("Invalid ")
        ? (FORMAT_WORDS[issue.format] ?? issue.message)
        : issue.message;
    case "invalid_union":
      return "one of the known forms";
    default:
      return issue.message;
  }
}

/** Whether a bound only keeps nought out. */
function isLeast(minimum: number): boolean {
  return minimum > 0 && minimum <= 0.01;
}

/** "at least 2 entries" of a list or text, "1 or more" and "more than 0" of a number. */
function bounded(
  origin: string,
  limit: number,
  [before, after]: readonly [string, string],
): string {
  if (origin === "string") return `${before} ${limit} ${limit === 1 ? "character" : "characters"}`;
  if (origin === "array") return `${before} ${limit} ${limit === 1 ? "entry" : "entries"}`;
  return after.startsWith("or") ? `${limit} ${after}` : `${after} ${limit}`;
}

function alternatives(words: readonly string[]): string {
  const last = words.at(-1) ?? "";
  return words.length < 2 ? last : `${words.slice(0, -1).join(", ")} or ${last}`;
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
