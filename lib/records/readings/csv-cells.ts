import { CsvError, parse, type InfoField } from "csv-parse/sync";
import { TEXT_START, type ReadText } from "./fault-list.ts";
import type { WrittenCell } from "./reading-column.ts";
import { MOST_CELLS } from "./size-limits.ts";

/** Longest row, in characters: past it the quotes are broken. */
const LONGEST_ROW = 128_000;

/**
 * Rows of cells of a CSV text, blanks around them and quotes taken off, each
 * with its place. Cells are separated by whichever of comma, semicolon and tab
 * comes first in the header; empty lines and lines that begin with # are passed over.
 *
 * @returns undefined, with a complaint, when quotes are broken or there are too many cells.
 */
export function csvCells({ text, spot, faults }: ReadText): WrittenCell[][] | undefined {
  const delimiter = delimiterOf(text);
  if (countOf(text, [delimiter, "\n", "\r"]) > MOST_CELLS) {
    faults.error("size", TEXT_START, {
      message: `The file has more than ${MOST_CELLS} cells, and no more are read`,
      actual: `more than ${MOST_CELLS}`,
      expected: `at most ${MOST_CELLS}`,
    });
    return undefined;
  }
  const offsetOf = charOffsets(text);
  let lastEnd = -1;
  const cell = (value: string, { bytes, quoting }: InfoField): WrittenCell => {
    const end = offsetOf(bytes);
    lastEnd = end;
    return { text: value.trim().normalize("NFC"), ...spot(startOfCell(text, value, quoting, end)) };
  };
  try {
    return parse(text, {
      delimiter,
      record_delimiter: ["\r\n", "\n", "\r"],
      comment: "#",
      comment_no_infix: true,
      relax_quotes: true,
      relax_column_count: true,
      skip_empty_lines: true,
      trim: true,
      max_record_size: LONGEST_ROW,
      cast: cell,
    }) as unknown as WrittenCell[][];
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const rest = /\S/g;
    rest.lastIndex = lastEnd + 1;
    const at = rest.exec(text)?.index ?? text.length;
    faults.error("csv", spot(at), {
      message: `The rows of this CSV can't be told apart: ${CSV_FAULTS[error.code] ?? "a row is broken"}`,
      actual: CSV_FAULTS[error.code] ?? "broken row",
      expected: "cells of one table, quotes in pairs",
    });
    return undefined;
  }
}

const CSV_FAULTS: Readonly<Record<string, string>> = {
  CSV_QUOTE_NOT_CLOSED: "quote that is not closed",
  CSV_MAX_RECORD_SIZE: `row of more than ${LONGEST_ROW} characters`,
  CSV_NON_TRIMABLE_CHAR_AFTER_CLOSING_QUOTE: "text after a closing quote",
};

/** Of comma, semicolon and tab the one that ends the first cell of the header. */
/** What parts the cells of a CSV: whichever of comma, semicolon and tab comes first in its header. */
export function delimiterOf(text: string): string {
  const header = /(?:^|[\r\n])[^\S\r\n]*(?![#\s])([^\r\n]*)/.exec(text)?.[1] ?? "";
  return /[,;\t]/.exec(header)?.[0] ?? ",";
}

function countOf(text: string, characters: readonly string[]): number {
  let count = 0;
  for (const character of text) if (characters.includes(character)) count++;
  return count;
}

/** The parser says where a cell ends, after its quote and before blanks are cut: where it begins follows from its length. */
function startOfCell(text: string, value: string, quoted: boolean, end: number): number {
  if (value === "" && !quoted) return end;
  let last = end;
  while (last > 0 && /\s/.test(text.charAt(last - 1))) last--;
  return Math.max(last - value.length - (quoted ? 2 + value.split('"').length - 1 : 0), 0);
}

/** The parser counts bytes of UTF-8, in rising order: the offset in the text of each. */
function charOffsets(text: string): (bytes: number) => number {
  let bytes = 0;
  let offset = 0;
  return (target) => {
    while (bytes < target && offset < text.length) {
      const code = text.codePointAt(offset) ?? 0;
      bytes += code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
      offset += code < 0x10000 ? 1 : 2;
    }
    return offset;
  };
}
