import type { CgatsToken } from "./cgats-lines.ts";
import { cgatsFields, type CgatsFields } from "./cgats-fields.ts";
import { cgatsTables, type CgatsTable } from "./cgats-tables.ts";
import { TEXT_START, type FaultList, type ReadText } from "./fault-list.ts";
import { foundAperture } from "./found-aperture.ts";
import { foundGeometry, saysPolarised } from "./found-geometry.ts";
import { foundGrid, type FoundGrid } from "./found-grid.ts";
import { foundViewing } from "./found-observer.ts";
import {
  cellList,
  fileNotes,
  foundLab,
  foundXyz,
  type FoundViewing,
  type ReadingColumn,
  type ReadingFile,
  type ReadingNotes,
  type WrittenCell,
} from "./reading-column.ts";
import { readingNames } from "./reading-names.ts";
import { decimalMarkCheck, writtenNumber } from "./written-number.ts";

/**
 * Readings of a CGATS.17 / ISO 28178 text, one a set of data: by SAMPLE_NAME, or
 * by SAMPLE_ID where names are missing or repeat. When a later table has a sample
 * of the same name, that one is called `NAME (table 2)`.
 *
 * @returns undefined when a table has a fault; a cell that holds no number is
 *   none yet, as its sample may never be asked for.
 */
export function cgatsReading(source: ReadText): ReadingFile | undefined {
  const { faults } = source;
  const tables = cgatsTables(source);
  const columns = new Map<string, ReadingColumn>();
  const markCheck = decimalMarkCheck(faults);
  tables.forEach((table, index) => {
    const found = tableColumns(table, markCheck, faults);
    if (faults.errorCount() > 0) return;
    for (const column of found) {
      const name = columns.has(column.name) ? `${column.name} (table ${index + 1})` : column.name;
      if (columns.has(name))
        faults.error("duplicated-column", column.at, {
          message: `The sample ${name} comes twice`,
          actual: name,
          expected: "each sample once",
        });
      columns.set(name, { ...column, name });
    }
  });
  if (columns.size === 0 && faults.errorCount() === 0) {
    faults.error("no-reading", TEXT_START, {
      message:
        "The file holds no sample: one has fields SPECTRAL_NM400 and so on, LAB_L LAB_A LAB_B or XYZ_X XYZ_Y XYZ_Z",
      actual: "no sample",
      expected:
        "samples with fields SPECTRAL_NM400 and so on, LAB_L LAB_A LAB_B or XYZ_X XYZ_Y XYZ_Z",
    });
  }
  return faults.errorCount() > 0
    ? undefined
    : { format: "CGATS.17", columns, notes: notesOf(tables) };
}

function notesOf(tables: readonly CgatsTable[]): ReadingNotes {
  const keywords = tables[0]?.keywords;
  return fileNotes({
    originator: keywords?.get("ORIGINATOR"),
    instrument: keywords?.get("INSTRUMENTATION"),
    date: keywords?.get("CREATED"),
    geometry: keywords?.get("MEASUREMENT_GEOMETRY"),
    aperture: foundAperture([...(keywords ?? [])].map((pair) => pair.join(" ")).join("\n")),
  });
}

function tableColumns(
  table: CgatsTable,
  markCheck: (cell: WrittenCell) => void,
  faults: FaultList,
): ReadingColumn[] {
  const fields = cgatsFields(table.fields, faults);
  const { spectral, pairs, lab, xyz } = fields;
  if (spectral.length === 0 && pairs.length === 0 && !lab && !xyz) return [];
  const shared =
    spectral.length > 0
      ? foundGrid(
          spectral.map(({ wavelength }) => wavelength),
          spectral[0]?.wavelength ?? TEXT_START,
          "",
          faults,
        )
      : undefined;
  const names = readingNames(
    table.sets.map((set) => ({
      name: textAt(set, fields.name),
      id: textAt(set, fields.id),
      at: nameCell(set, fields),
    })),
    faults,
  );
  const geometry = foundGeometry(table.keywords.get("MEASUREMENT_GEOMETRY") ?? "");
  const isPolarised = (["MEASUREMENT_SOURCE", "MEASUREMENT_CONDITION", "FILTER"] as const).some(
    (keyword) => saysPolarised(table.keywords.get(keyword) ?? ""),
  );
  const viewing = foundViewing(
    table.keywords.get("ILLUMINATION_NAME"),
    table.keywords.get("OBSERVER_ANGLE"),
  );

  return table.sets.map((set, row) => {
    const name = names[row] ?? "";
    const { line, column } = nameCell(set, fields);
    const numbers = triples(set, fields, viewing, name, markCheck, faults);
    return {
      name,
      at: { line, column },
      ...spectrumOf(set, fields, shared, name, markCheck, faults),
      ...numbers,
      ...(geometry !== undefined && { geometry }),
      ...(isPolarised && { isPolarised }),
    };
  });
}

function spectrumOf(
  set: readonly CgatsToken[],
  fields: CgatsFields,
  shared: FoundGrid | undefined,
  name: string,
  markCheck: (cell: WrittenCell) => void,
  faults: FaultList,
): Pick<ReadingColumn, "grid" | "values" | "places" | "declaredScale"> {
  const isPaired = fields.pairs.length > 0;
  const cells = (isPaired ? fields.pairs : fields.spectral).map(({ index }) => cellOf(set[index]));
  const wavelengths = fields.pairs.map(({ wavelengthIndex }) => cellOf(set[wavelengthIndex]));
  for (const cell of [...wavelengths, ...cells]) markCheck(cell);
  const found = isPaired
    ? foundGrid(wavelengths, wavelengths[0] ?? TEXT_START, name, faults)
    : shared;
  if (found === undefined) return { values: [], places: cellList([]) };
  const rising = found.falling ? cells.toReversed() : cells;
  return {
    grid: found.grid,
    places: cellList(rising),
    values: rising.map(({ text }) => writtenNumber(text) ?? NaN),
    ...(fields.pairScale !== undefined && { declaredScale: fields.pairScale }),
  };
}

/** Lab and XYZ of a set. A cell of theirs that is no number makes a warning, as the spectrum may be what is asked for. */
function triples(
  set: readonly CgatsToken[],
  fields: CgatsFields,
  viewing: FoundViewing,
  name: string,
  markCheck: (cell: WrittenCell) => void,
  faults: FaultList,
): Pick<ReadingColumn, "lab" | "xyz"> {
  const numbers = (
    indices: readonly [number, number, number],
  ): readonly [number, number, number] | undefined => {
    const [one, two, three] = indices.map((index) => {
      const cell = cellOf(set[index]);
      markCheck(cell);
      const number = writtenNumber(cell.text);
      if (number === undefined)
        faults.warning("not-a-number", cell, {
          path: name,
          message: `The L*a*b* or XYZ value "${cell.text}" of ${name} is no number`,
          actual: cell.text,
          expected: "a number",
        });
      return number;
    });
    return one === undefined || two === undefined || three === undefined
      ? undefined
      : [one, two, three];
  };
  const lab = fields.lab && numbers(fields.lab);
  const xyz = fields.xyz && numbers(fields.xyz);
  return {
    ...(lab && foundLab(lab, viewing)),
    ...(xyz && foundXyz(xyz, viewing)),
  };
}

function nameCell(set: readonly CgatsToken[], fields: CgatsFields): WrittenCell {
  return cellOf(set[fields.name ?? fields.id ?? 0]);
}

function textAt(set: readonly CgatsToken[], index: number | undefined): string {
  return index === undefined ? "" : (set[index]?.text ?? "");
}

function cellOf(token: CgatsToken | undefined): WrittenCell {
  return token
    ? { text: token.text, line: token.line, column: token.column }
    : { text: "", ...TEXT_START };
}
