import { isOneOf } from "../../quantities/members.ts";
import type { FaultList, ReadText, Spot } from "./fault-list.ts";
import { cgatsLines, type CgatsToken } from "./cgats-lines.ts";
import { MOST_CELLS } from "./size-limits.ts";

/** Keywords of a header that tell of the reading; all others are passed over. */
const KEPT_KEYWORDS = [
  "ORIGINATOR",
  "CREATED",
  "INSTRUMENTATION",
  "MEASUREMENT_GEOMETRY",
  "MEASUREMENT_SOURCE",
  "MEASUREMENT_CONDITION",
  "FILTER",
  "ILLUMINATION_NAME",
  "OBSERVER_ANGLE",
  "MEASUREMENT_APERTURE",
  "APERTURE",
] as const;
type CgatsKeyword = (typeof KEPT_KEYWORDS)[number];

/** One table: its header's words, its fields and one row of cells a set, as many as fields. */
export interface CgatsTable {
  readonly keywords: ReadonlyMap<CgatsKeyword, string>;
  readonly fields: readonly CgatsToken[];
  readonly sets: readonly (readonly CgatsToken[])[];
}

/** Keywords that can't stand among fields or values. */
const STRUCTURE = /^(?:(?:BEGIN|END)_DATA(?:_FORMAT)?|NUMBER_OF_(?:FIELDS|SETS))$/;

const MOST_TABLES = 100;

/** A table while it is read. */
interface OpenTable {
  part: "header" | "format" | "data";
  readonly fields: CgatsToken[];
  readonly sets: CgatsToken[][];
  /** Sets seen, faulty ones too. */
  seen: number;
  unfinished: CgatsToken[];
  readonly counts: Map<string, CgatsToken>;
}

/**
 * Tables of a CGATS.17 text, one after another; a later one keeps the keywords
 * of an earlier one that it does not give anew. A set begins on a line of its
 * own and may run over several. Counts that do not match, and parts that are
 * not closed, are complained of.
 */
export function cgatsTables(source: ReadText): CgatsTable[] {
  const { text, spot, faults } = source;
  const tables: CgatsTable[] = [];
  const keywords = new Map<CgatsKeyword, string>();
  let open = openTable();

  let hasIdentifier = false;
  let words = 0;
  for (const tokens of cgatsLines(source)) {
    if (!hasIdentifier) checkIdentifier(tokens, faults);
    hasIdentifier = true;
    let rest = tokens;
    while (rest.length > 0) rest = open.part === "header" ? takenAsHeader(rest) : takenAsBody(rest);
    if (faults.isFull()) return tables;
    words += tokens.length;
    if (words > MOST_CELLS || tables.length > MOST_TABLES) {
      faults.error("size", tokens[0] ?? spot(0), {
        message: `The file has ${tables.length} tables and ${words} words; ${MOST_TABLES} tables and ${MOST_CELLS} words at most are read`,
        actual: `${tables.length} tables, ${words} words`,
        expected: `at most ${MOST_TABLES} tables, ${MOST_CELLS} words`,
      });
      return tables;
    }
  }
  if (open.part !== "header")
    fault(
      spot(text.length),
      `The file ends before ${open.part === "format" ? "END_DATA_FORMAT" : "END_DATA"}`,
    );
  else if (open.fields.length > 0 || (tables.length === 0 && faults.errorCount() === 0))
    fault(
      spot(text.length),
      "The file ends without a table: BEGIN_DATA_FORMAT, BEGIN_DATA and their ends",
    );
  return tables;

  /** Takes fields or values up to the word that ends them, and gives back what is left of the line. */
  function takenAsBody(tokens: CgatsToken[]): CgatsToken[] {
    const stray = tokens.findIndex((token) => STRUCTURE.test(keyword(token)));
    const inside = stray < 0 ? tokens : tokens.slice(0, stray);
    if (open.part === "format") open.fields.push(...inside);
    else if (inside.length > 0) takeRow(inside, open, faults);
    const marker = tokens[stray];
    if (marker === undefined) return [];
    const closing = open.part === "format" ? "END_DATA_FORMAT" : "END_DATA";
    const closes = keyword(marker) === closing;
    if (!closes) fault(marker, `${marker.text} stands before ${closing}`);
    if (open.part === "data") finishTable();
    open.part = "header";
    return tokens.slice(closes ? stray + 1 : stray);
  }

  function takenAsHeader(tokens: CgatsToken[]): CgatsToken[] {
    const [first, ...others] = tokens;
    if (first === undefined) return [];
    const word = keyword(first);
    if (word === "BEGIN_DATA_FORMAT") {
      if (open.fields.length > 0) fault(first, "A table has a second BEGIN_DATA_FORMAT");
      open.part = "format";
      return others;
    }
    if (word === "BEGIN_DATA") {
      if (open.fields.length === 0)
        fault(first, "BEGIN_DATA comes before BEGIN_DATA_FORMAT and the table's fields");
      open.part = "data";
      return others;
    }
    if (word === "END_DATA" || word === "END_DATA_FORMAT")
      fault(first, `${first.text} has no ${word.replace("END", "BEGIN")} before it`);
    else if (word === "NUMBER_OF_FIELDS" || word === "NUMBER_OF_SETS")
      open.counts.set(word, others[0] ?? { ...first, text: "", quoted: false });
    else if (isKept(word)) keywords.set(word, textOf(others).slice(0, 200));
    return [];
  }

  function finishTable(): void {
    closeRow(open, faults);
    checkCount("NUMBER_OF_FIELDS", open.fields.length, "the fields of the table", open, faults);
    checkCount("NUMBER_OF_SETS", open.seen, "the sets of the table", open, faults);
    tables.push({ keywords: new Map(keywords), fields: open.fields, sets: open.sets });
    open = openTable();
  }

  function fault(place: Spot, message: string): void {
    faults.error("cgats-structure", place, { message });
  }
}

function openTable(): OpenTable {
  return { part: "header", fields: [], sets: [], seen: 0, unfinished: [], counts: new Map() };
}

function checkIdentifier(tokens: readonly CgatsToken[], faults: FaultList): void {
  const [first] = tokens;
  if (first === undefined || (tokens.length === 1 && !/^(BEGIN|END)_DATA/.test(keyword(first))))
    return;
  const line = textOf(tokens);
  faults.warning("cgats-identifier", first, {
    message: `The first line is "${line}", and a file identifier such as CGATS.17 stands there alone`,
    actual: line,
    expected: "a file identifier alone, such as CGATS.17",
  });
}

/** A line of values: it goes on with the set that is unfinished, where it has room in it. */
function takeRow(tokens: readonly CgatsToken[], open: OpenTable, faults: FaultList): void {
  const wanted = open.fields.length;
  if (wanted === 0) return;
  if (open.unfinished.length + tokens.length > wanted) closeRow(open, faults);
  open.unfinished.push(...tokens);
  if (open.unfinished.length >= wanted) closeRow(open, faults);
}

/** Ends the set that is unfinished, if there is one. */
function closeRow(open: OpenTable, faults: FaultList): void {
  const row = open.unfinished;
  const [first] = row;
  if (first === undefined) return;
  open.unfinished = [];
  open.seen++;
  if (row.length === open.fields.length) {
    open.sets.push(row);
    return;
  }
  const empty = row.find((token) => token.emptyBefore)?.emptyBefore;
  if (empty && row.length < open.fields.length)
    faults.error("empty-cell", empty, {
      message: "A cell is empty between two tabs",
      actual: "nothing",
      expected: "a value between two tabs",
    });
  else
    faults.error("row-width", first, {
      message: `This set has ${row.length} values, and the table has ${open.fields.length} fields`,
      actual: String(row.length),
      expected: `${open.fields.length}, one a field`,
    });
}

/** Whether a table has as many fields or sets as its header says; @param word says it there. */
function checkCount(
  word: string,
  actual: number,
  what: string,
  { counts, fields: [place] }: OpenTable,
  faults: FaultList,
): void {
  const count = counts.get(word);
  const expected = `${actual}, ${what}`;
  if (count === undefined) {
    if (place)
      faults.warning("cgats-count", place, {
        message: `${word} is missing; the table has ${actual}`,
        actual: "nothing",
        expected,
        hint: "without it a cut file can't be told",
      });
    return;
  }
  const said = count.text === "" ? "nothing" : count.text;
  if (!/^\d{1,9}$/.test(count.text) || Number(count.text) !== actual)
    faults.error("cgats-count", count, {
      message: `${word} says ${said}, and the table has ${actual}`,
      actual: said,
      expected,
    });
}

function textOf(tokens: readonly CgatsToken[]): string {
  return tokens.map(({ text }) => text).join(" ");
}

function keyword(token: CgatsToken): string {
  return token.quoted ? "" : token.text.toUpperCase();
}

function isKept(word: string): word is CgatsKeyword {
  return isOneOf(KEPT_KEYWORDS, word);
}
