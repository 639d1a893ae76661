import type { WavelengthGrid } from "../../quantities/spectrum.ts";
import type { Scale } from "../schema/terms.ts";
import type { Spot } from "./fault-list.ts";
import type { FoundGeometry } from "./found-geometry.ts";

export type ReadingFormat = "CSV" | "CGATS.17" | "CxF3";

/** A cell as written, "" for one that is empty or missing, and where it stands. */
export interface WrittenCell extends Spot {
  readonly text: string;
}

/** Cells one after the other, what they say and where they stand in lists of their own: of a range there are tens of thousands. */
export interface CellList {
  readonly texts: readonly string[];
  readonly lines: readonly number[];
  readonly columns: readonly number[];
}

export function cellList(cells: readonly WrittenCell[]): CellList {
  return {
    texts: cells.map(({ text }) => text),
    lines: cells.map(({ line }) => line),
    columns: cells.map(({ column }) => column),
  };
}

/** The cell at an index; undefined past the end, and before the first. */
export function cellIn(
  { texts, lines, columns }: CellList,
  index: number,
): WrittenCell | undefined {
  const [text, line, column] = [texts[index], lines[index], columns[index]];
  return text === undefined || line === undefined || column === undefined
    ? undefined
    : { text, line, column };
}

/** Viewing conditions of a colour that the instrument worked out itself, as far as the file tells. */
export interface FoundViewing {
  /** As written: "D50". */
  readonly illuminant?: string;
  readonly observer?: 2 | 10;
}

interface FoundLab extends FoundViewing {
  readonly L: number;
  readonly a: number;
  readonly b: number;
}
/** Tristimulus values in the file's own scale, as a rule Y = 100 for the perfect diffuser. */
interface FoundXyz extends FoundViewing {
  readonly X: number;
  readonly Y: number;
  readonly Z: number;
}

type Triple = readonly [number, number, number];

/** L*a*b* of a file as what a column holds. */
export function foundLab([L, a, b]: Triple, viewing: FoundViewing = {}): { lab: FoundLab } {
  return { lab: { L, a, b, ...viewing } };
}

/** XYZ of a file as what a column holds. */
export function foundXyz([X, Y, Z]: Triple, viewing: FoundViewing = {}): { xyz: FoundXyz } {
  return { xyz: { X, Y, Z, ...viewing } };
}

/**
 * One reading of one specimen as its file gives it, not yet held against the
 * limits: a reading that no colour asks for may have faults in its cells.
 */
export interface ReadingColumn {
  /** Column of a CSV, sample of a CGATS table, object of a CxF collection. */
  readonly name: string;
  /** Where the name stands. */
  readonly at: Spot;
  /** Absent when the file gives no spectrum, only Lab or XYZ. */
  readonly grid?: WavelengthGrid;
  /** Shape (grid.count), in the file's scale, by rising wavelength; NaN where the cell holds no number. */
  readonly values: readonly number[];
  /** The cell of each value. */
  readonly places: CellList;
  /** Only where the format itself tells: CxF3 always, CGATS by SPECTRAL_PCT or SPECTRAL_DEC, CSV never. */
  readonly declaredScale?: Scale;
  readonly geometry?: FoundGeometry;
  /** Read between crossed polarisers (M3): the surface's light is shut out whole. */
  readonly isPolarised?: true;
  readonly lab?: FoundLab;
  readonly xyz?: FoundXyz;
}

/** What a file says of itself, as found. */
export interface ReadingNotes {
  readonly originator?: string;
  readonly instrument?: string;
  readonly date?: string;
  readonly geometry?: string;
  /** Diameter of the spot that was read: "8 mm". */
  readonly aperture?: string;
}

/** Notes as far as a file's words tell them; "" and undefined are no words. */
export function fileNotes(
  words: Readonly<Partial<Record<keyof ReadingNotes, string | undefined>>>,
): ReadingNotes {
  return Object.fromEntries(
    Object.entries(words).flatMap(([note, said = ""]) =>
      said === "" ? [] : [[note, said.slice(0, 200)]],
    ),
  );
}

export interface ReadingFile {
  readonly format: ReadingFormat;
  /** By name, in the file's order. */
  readonly columns: ReadonlyMap<string, ReadingColumn>;
  readonly notes: ReadingNotes;
}
