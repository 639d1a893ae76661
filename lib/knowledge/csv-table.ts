import { CsvError, parse, type Info } from "csv-parse/sync";
import { tableFault, type Place, type WrittenRow, type WrittenTable } from "./written-table.ts";

interface ParsedLine {
  readonly record: readonly string[];
  readonly info: Info;
}

/**
 * The rows of a CSV text under its header. A row is one line, its cells parted by
 * commas; empty lines and lines that begin with # are passed over.
 * @param file as complaints name it.
 */
export function csvTable(file: string, text: string): WrittenTable {
  const lines = text.split(/\r?\n/);
  const placeOf = (line: number, cell: number, path: string): Place => ({
    file,
    line,
    column: cellStart(lines[line - 1] ?? "", cell) + 1,
    path,
  });
  let parsed: readonly ParsedLine[];
  try {
    parsed = parse(text, {
      comment: "#",
      comment_no_infix: true,
      skip_empty_lines: true,
      relax_column_count: true,
      trim: true,
      info: true,
    }) as unknown as readonly ParsedLine[];
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const line = typeof error["lines"] === "number" ? error["lines"] : 1;
    return broken(placeOf(line, 0, ""), "a broken row", "cells of one table, quotes in pairs");
  }
  const [header, ...body] = parsed;
  if (header === undefined)
    return broken(placeOf(1, 0, ""), "no header", "a first line that names the columns");
  const columns = header.record;
  const rows: WrittenRow[] = [];
  for (const { record, info } of body) {
    if (record.length !== columns.length)
      return broken(
        placeOf(info.lines, Math.min(record.length, columns.length) - 1, ""),
        `${record.length} cells`,
        `${columns.length} cells, one for each column`,
      );
    rows.push({
      cells: Object.fromEntries(
        columns.flatMap((column, i) => {
          const cell = record[i] ?? "";
          return cell === "" ? [] : [[column, cell.normalize("NFC")]];
        }),
      ),
      place: (column) =>
        placeOf(
          info.lines,
          column === undefined ? 0 : Math.max(columns.indexOf(column), 0),
          column ?? "",
        ),
    });
  }
  return { rows, diagnostics: [] };
}

function broken(place: Place, actual: string, expected: string): WrittenTable {
  return { rows: [], diagnostics: [tableFault(place, { subject: "row", actual, expected })] };
}

/** Offset in its line of the first character of a cell, blanks before it passed over. */
function cellStart(line: string, cell: number): number {
  let quoted = false;
  let passed = 0;
  let offset = 0;
  while (passed < cell && offset < line.length) {
    const character = line.charAt(offset++);
    if (character === '"') quoted = !quoted;
    else if (character === "," && !quoted) passed++;
  }
  while (line.charAt(offset) === " ") offset++;
  return offset;
}
