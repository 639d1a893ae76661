import { TEXT_START, type FaultList, type ReadText } from "./fault-list.ts";
import { csvCells } from "./csv-cells.ts";
import { foundGrid, type FoundGrid } from "./found-grid.ts";
import { foundAperture } from "./found-aperture.ts";
import { preambleGeometry, type FoundGeometry } from "./found-geometry.ts";
import {
  cellList,
  fileNotes,
  type ReadingColumn,
  type ReadingFile,
  type WrittenCell,
} from "./reading-column.ts";
import {
  headerOf,
  isTurned,
  ofWavelengths,
  preambleLines,
  turned,
  WAVELENGTH_HEAD,
  withoutPreamble,
} from "./csv-header.ts";
import { decimalMarkCheck, writtenNumber } from "./written-number.ts";

/**
 * Readings of a CSV: a header row, `nm` its first cell and then one name a column, and one row a
 * wavelength; or one row a sample under a header of wavelengths. Lines before the header, and a
 * `sep=;`, are passed over but for the geometry that they tell. Percent is told from factor only where each cell of a reading has its %.
 *
 * @returns undefined when the table has a fault; a cell that holds no number is
 *   none yet, as its column may never be asked for.
 */
export function csvReading(source: ReadText): ReadingFile | undefined {
  const { text, faults } = source;
  const cells = csvCells({ ...source, text: withoutPreamble(text) });
  if (cells === undefined) return undefined;
  const table = cells.filter((row) => row.some((cell) => cell.text !== ""));
  const [header, ...lines] = isTurned(table)
    ? turned(table)
    : headerOf(text)?.form === "column a sample"
      ? ofWavelengths(table)
      : table;
  const wavelengthHead = header?.[0];
  if (header === undefined || wavelengthHead === undefined) {
    faults.error("header", TEXT_START, {
      message: "The header row is missing: nm, then a name for each column",
      actual: "nothing",
      expected: "nm, then a name for each column",
    });
    return undefined;
  }
  if (!WAVELENGTH_HEAD.test(wavelengthHead.text)) {
    faults.error("header", wavelengthHead, {
      message: `The header row begins with "${wavelengthHead.text}", and begins with nm in a reading`,
      actual: wavelengthHead.text,
      expected: "nm",
      hint: header.some(({ text: head }) => /^(?:CIE\s*)?L\s*\*?(?:\s*\(.*\))?$/i.test(head))
        ? "L*a*b* alone stands in the record itself, lab: [L, a, b], with its illuminant"
        : undefined,
    });
    return undefined;
  }
  checkMarks(lines, faults);
  checkWidths(header, lines, faults);
  checkRepeats(lines, faults);
  const found = foundGrid(
    lines.map((row) => cellAt(row, 0)),
    wavelengthHead,
    "",
    faults,
  );
  const geometry = preambleGeometry(preambleLines(text));
  const columns = namedColumns(header, lines, found && { ...found, geometry }, faults);
  const notes = fileNotes({ aperture: foundAperture(preambleLines(text).join("\n")) });
  return faults.errorCount() > 0 ? undefined : { format: "CSV", columns, notes };
}

/** What holds for every column of a table. */
interface FoundInTable extends FoundGrid {
  readonly geometry: FoundGeometry | undefined;
}

function namedColumns(
  header: readonly WrittenCell[],
  lines: readonly WrittenCell[][],
  found: FoundInTable | undefined,
  faults: FaultList,
): Map<string, ReadingColumn> {
  const columns = new Map<string, ReadingColumn>();
  const names = new Map<string, WrittenCell>();
  header.forEach((head, index) => {
    const cells = index === 0 ? [] : lines.map((row) => cellAt(row, index));
    const twin = names.get(head.text);
    if (twin) {
      faults.error("duplicated-column", head, {
        message: `The column ${head.text} comes twice: first at column ${twin.column} of the header row`,
        actual: head.text,
        expected: `\`${head.text}\` once, as at column ${twin.column} of the header row`,
      });
    } else if (head.text !== "") {
      names.set(head.text, head);
      if (index > 0 && found) columns.set(head.text, csvColumn(head, cells, found));
    } else if (cells.some((cell) => cell.text !== "")) {
      faults.error("column-name", head, {
        message: "A column of values has no name above it",
        actual: "nothing",
        expected: "a name above each column",
      });
    }
  });
  if (names.size < 2) {
    faults.error("header", header[0] ?? TEXT_START, {
      message: "The header row has nm alone: each column needs a name",
      actual: "nm alone",
      expected: "nm, then a name for each column",
    });
  }
  return columns;
}

/** A reading of which each cell says percent is in percent; where only some do, those are no numbers. */
function csvColumn(
  head: WrittenCell,
  cells: readonly WrittenCell[],
  { grid, falling, geometry }: FoundInTable,
): ReadingColumn {
  const rising = falling ? cells.toReversed() : cells;
  const inPercent = rising.length > 0 && rising.every(({ text }) => PERCENT.test(text));
  return {
    name: head.text,
    at: { line: head.line, column: head.column },
    grid,
    values: rising.map(
      ({ text }) => writtenNumber(inPercent ? text.replace(PERCENT, "") : text) ?? NaN,
    ),
    places: cellList(rising),
    ...(inPercent ? { declaredScale: "percent" } : {}),
    ...(geometry !== undefined && { geometry }),
  };
}

const PERCENT = /\s*%$/;

/** The cell of a row, or an empty one just past its end. */
function cellAt(row: readonly WrittenCell[], index: number): WrittenCell {
  const cell = row[index];
  if (cell) return cell;
  const last = row.at(-1);
  return {
    text: "",
    line: last?.line ?? 1,
    column: (last?.column ?? 1) + (last?.text.length ?? 0),
  };
}

function checkMarks(lines: readonly WrittenCell[][], faults: FaultList): void {
  const check = decimalMarkCheck(faults);
  for (const row of lines)
    for (const cell of row) check({ ...cell, text: cell.text.replace(/\s*(?:%|nm)$/i, "") });
}

/** So many columns that change from row to row do not all stand still together. */
const LEAST_CHANGING = 3;

/** A row that was copied from the one above it, its wavelength alone changed. */
function checkRepeats(lines: readonly WrittenCell[][], faults: FaultList): void {
  const columns = Array.from({ length: lines[0]?.length ?? 0 }, (_, i) => i).slice(1);
  const changing = columns.filter((i) => new Set(lines.map((row) => row[i]?.text)).size > 2);
  if (changing.length < LEAST_CHANGING) return;
  for (const [i, row] of lines.entries()) {
    const above = lines[i - 1];
    const [nm] = row;
    if (above === undefined || nm === undefined) continue;
    if (!changing.every((column) => row[column]?.text === above[column]?.text)) continue;
    faults.warning("repeated-row", nm, {
      message: `Every value at ${nm.text} nm is that at ${above[0]?.text} nm once more`,
      actual: `the row of ${above[0]?.text} nm twice`,
      expected: "a row of its own for each wavelength",
      hint: "a row that was copied; the rows below it may stand one too low",
    });
  }
}

/** Every row of a file with decimal commas between commas is too wide: one complaint says it. */
function checkWidths(
  header: readonly WrittenCell[],
  lines: readonly WrittenCell[][],
  faults: FaultList,
): void {
  const extras = lines.flatMap(
    (row) => row.slice(header.length).find((cell) => cell.text !== "") ?? [],
  );
  const [extra] = extras;
  if (extra === undefined) return;
  const more = extras.length === 1 ? "" : `, and on ${extras.length - 1} more rows`;
  faults.error("row-width", extra, {
    message: `The cell "${extra.text}" lies past the last column: the header row has ${header.length}`,
    actual: extra.text,
    expected: `${header.length} cells, as in the header row`,
    hint: `decimal commas need semicolons or tabs between the cells${more}`,
  });
}
