import {
  isMap,
  isNode,
  isPair,
  isScalar,
  LineCounter,
  parseDocument,
  visit,
  type Document,
  type YAMLMap,
} from "yaml";
import { excerpt, type Diagnostic } from "../diagnostics/diagnostic.ts";
import { errorAt, warningAt } from "./fault.ts";
import { TOO_DEEP, yamlFaults } from "./yaml-sentences.ts";

export type RecordPath = readonly PropertyKey[];

/** A parsed YAML text that can still say on which line and column each of its values stands. */
export interface YamlRecord {
  readonly file: string;
  readonly data: unknown;
  /** The place of the value at a path, or of the nearest thing above it that is there. */
  readonly place: (path: RecordPath) => Diagnostic["place"];
  /** What is written at a path, where it is a plain value: 0071 of a number 71. */
  readonly written: (path: RecordPath) => string | undefined;
  /** The place of a key, for a key that should not be there. */
  readonly keyPlace: (path: RecordPath, key: string) => Diagnostic["place"];
  /** Keys and plain values of what stands at a path, as they are written and in that order. */
  readonly pairs: (path: RecordPath) => readonly WrittenPair[];
}

/** A key with its value, where either is plain: 050 of a number 50. */
interface WrittenPair {
  readonly key: string | undefined;
  readonly value: string | undefined;
}

/** More aliases than this in one record is an attack, not a notebook. */
const MOST_ALIASES = 50;

/** Lists and keys within each other: the deepest record has six. */
const DEEPEST = 40;

/** Of keys that stand twice the first ones tell. */
const MOST_FAULTS = 3;

/**
 * YAML that is held only for as long as its memory is not wanted, and in the go that parsed it in any
 * case: records are checked then, and what later asks for a place has it parsed again.
 * @param known as parsed by now.
 */
export function yamlWhenAsked(
  file: string,
  parsed: () => YamlRecord,
  known?: YamlRecord,
): YamlRecord {
  let held = known && new WeakRef(known);
  const yaml = (): YamlRecord => {
    const atHand = held?.deref();
    if (atHand !== undefined) return atHand;
    const again = parsed();
    held = new WeakRef(again);
    return again;
  };
  return {
    file,
    get data() {
      return yaml().data;
    },
    place: (path) => yaml().place(path),
    written: (path) => yaml().written(path),
    keyPlace: (path, key) => yaml().keyPlace(path, key),
    pairs: (path) => yaml().pairs(path),
  };
}

/**
 * YAML whose answers somebody keeps: it is asked itself what it was not asked before.
 * @param kept the answer to a question, else made now.
 */
export function yamlAsAnswered(
  yaml: YamlRecord,
  kept: <A>(question: string, made: () => A) => A,
): YamlRecord {
  const ask = <A>(what: keyof YamlRecord, path: RecordPath, made: () => A): A =>
    kept(JSON.stringify([what, ...path]), made);
  return {
    file: yaml.file,
    get data() {
      return yaml.data;
    },
    place: (path) => ask("place", path, () => yaml.place(path)),
    written: (path) => ask("written", path, () => yaml.written(path)),
    keyPlace: (path, key) => ask("keyPlace", [...path, key], () => yaml.keyPlace(path, key)),
    pairs: (path) => ask("pairs", path, () => yaml.pairs(path)),
  };
}

/**
 * Parse one YAML record. `firstLine` shifts the lines of front matter to where they stand in its file.
 * @returns the record, or the complaints why there is none.
 */
export function yamlRecord(
  file: string,
  text: string,
  firstLine = 1,
): { record?: YamlRecord; diagnostics: Diagnostic[] } {
  const lines = new LineCounter();
  const refused = (message: string): { diagnostics: Diagnostic[] } => ({
    diagnostics: [
      errorAt({ file, line: firstLine, column: 1, path: "" }, "records/yaml", { message }),
    ],
  });
  let document: Document.Parsed;
  try {
    document = parseDocument(text, {
      lineCounter: lines,
      prettyErrors: false,
      strict: true,
      // The parser would compare each key with all before it; `repeatedKeys` looks each up.
      uniqueKeys: false,
    });
  } catch (error) {
    // The parser goes down with its stack on what stands too deep.
    if (!(error instanceof RangeError)) throw error;
    return refused(TOO_DEEP);
  }
  const at = (offset: number, path: string): Diagnostic["place"] => {
    const { line, col } = lines.linePos(offset);
    return { file, line: Math.max(line, 1) + firstLine - 1, column: Math.max(col, 1), path };
  };

  const faults = yamlFaults(document, text).map(({ offset, message }): Diagnostic =>
    errorAt(at(offset, ""), "records/yaml", { message }),
  );
  if (faults.length > 0) return { diagnostics: faults };

  let data: unknown;
  try {
    data = document.toJS({ maxAliasCount: MOST_ALIASES });
  } catch (error) {
    return refused(
      /^Unresolved alias/.test((error as Error).message)
        ? "A text that begins with an asterisk stands in quotes, and one here does not"
        : `The record uses more than ${MOST_ALIASES} YAML aliases`,
    );
  }
  const shape = shapeFault(data, 0, new Set(), new Map());
  if (shape !== undefined) return refused(shape);
  const repeated = repeatedKeys(document);
  if (repeated.length > 0)
    return {
      diagnostics: repeated.slice(0, MOST_FAULTS).map(({ key, offset }) =>
        errorAt(at(offset, ""), "records/yaml", {
          message: `The key ${excerpt(key)} stands twice here, and may stand once`,
        }),
      ),
    };
  return {
    diagnostics: cutTexts(document).map(({ text, comment, offset }) =>
      warningAt(at(offset, ""), "records/yaml", {
        message: `A comment begins at #${excerpt(comment)}, so the text ends before it; if that belongs to it, it stands in quotes: "${excerpt(`${text} #${comment}`)}"`,
      }),
    ),
    record: {
      file,
      data,
      place: (path) => at(offsetOf(document, path), printedPath(path)),
      written: (path) => sourceOf(document.getIn(path, true)),
      keyPlace: (path, key) => at(keyOffset(document, path, key), printedPath([...path, key])),
      pairs: (path) => {
        const map = mapAt(document, path);
        return (map?.items ?? []).map(({ key, value }) => ({
          key: sourceOf(key),
          value: sourceOf(value),
        }));
      },
    },
  };
}

/** Keys that stand twice in one map, as text: of a number and the same in quotes one value would be lost too. */
function repeatedKeys(document: Document): readonly { key: string; offset: number }[] {
  const found: { key: string; offset: number }[] = [];
  visit(document, {
    Map: (_, { items }) => {
      const seen = new Set<string>();
      for (const { key } of items) {
        if (!isScalar(key)) continue;
        const text = String(key.value);
        if (seen.has(text)) found.push({ key: text, offset: key.range?.[0] ?? 0 });
        seen.add(text);
      }
    },
  });
  return found;
}

/** Texts that go on behind a number sign, as in Orange #62: a comment has a blank after its sign. */
function cutTexts(
  document: Document,
): readonly { text: string; comment: string; offset: number }[] {
  const found: { text: string; comment: string; offset: number }[] = [];
  visit(document, {
    Scalar: (_, { type, value, comment, range }) => {
      if (type === "PLAIN" && typeof value === "string" && /^[^\s#]/.test(comment ?? ""))
        found.push({ text: value, comment: comment ?? "", offset: range?.[1] ?? 0 });
    },
  });
  return found;
}

function offsetOf(document: Document, path: RecordPath): number {
  for (let depth = path.length; depth > 0; depth--) {
    const node: unknown = document.getIn(path.slice(0, depth), true);
    if (isNode(node) && node.range) return node.range[0];
  }
  return document.contents?.range?.[0] ?? 0;
}

function keyOffset(document: Document, path: RecordPath, key: string): number {
  const pair = mapAt(document, path)?.items.find(
    (item) => isPair(item) && isScalar(item.key) && String(item.key.value) === key,
  );
  return pair && isScalar(pair.key) && pair.key.range
    ? pair.key.range[0]
    : offsetOf(document, path);
}

function mapAt(document: Document, path: RecordPath): YAMLMap | undefined {
  const map: unknown = path.length === 0 ? document.contents : document.getIn(path, true);
  return isMap(map) ? map : undefined;
}

function sourceOf(node: unknown): string | undefined {
  return isScalar(node) ? node.source : undefined;
}

/** `tints[0].massRatio`, as a record's author would write it. */
export function printedPath(path: RecordPath): string {
  return path.reduce<string>(
    (printed, key) =>
      typeof key === "number"
        ? `${printed}[${key}]`
        : printed === ""
          ? String(key)
          : `${printed}.${String(key)}`,
    "",
  );
}

/** What no record needs: an alias of what it stands in, or lists in lists past all reading. */
function shapeFault(
  value: unknown,
  depth: number,
  above: Set<unknown>,
  seen: Map<unknown, number>,
): string | undefined {
  if (typeof value !== "object" || value === null) return undefined;
  if (above.has(value)) return "A YAML alias stands inside what it repeats";
  if (depth > DEEPEST) return TOO_DEEP;
  if ((seen.get(value) ?? -1) >= depth) return undefined;
  seen.set(value, depth);
  above.add(value);
  for (const entry of Object.values(value)) {
    const fault = shapeFault(entry, depth + 1, above, seen);
    if (fault !== undefined) return fault;
  }
  above.delete(value);
  return undefined;
}
