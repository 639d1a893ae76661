import { TEXT_START } from "./fault-list.ts";
import { wavelengthOf } from "./found-grid.ts";
import type { WrittenCell } from "./reading-column.ts";

/** The first cell names the unit, with or without the word: "nm", "wavelength nm", "Wavelength (nm)". */
export const WAVELENGTH_HEAD = /^(?:wavelength[\s_]*)?[([]?nm[)\]]?$/i;

/** A table of samples has at least so many wavelengths in its header: 400 to 700 nm in steps of 20. */
const FEWEST_WAVELENGTHS = 16;

/** A header is looked for among so many lines; what stands before it is an instrument's preamble. */
const LONGEST_PREAMBLE = 100;

/** Where the header row of a CSV begins and how it lies; undefined where no line of the first hundred is one. */
export function headerOf(text: string): FoundHeader | undefined {
  const lines = [...text.matchAll(/[^\r\n]+/g)].slice(0, LONGEST_PREAMBLE + FEWEST_WAVELENGTHS);
  const table = lines.map((line) =>
    line[0].split(separatorIn(line[0]), 2000).map((cell) => cell.trim().replace(/^"|"$/g, "")),
  );
  for (const [i, cells] of table.entries()) {
    const offset = lines[i]?.index;
    if (offset === undefined || i >= LONGEST_PREAMBLE) return undefined;
    if (cells.length > 1 && WAVELENGTH_HEAD.test(cells[0] ?? "") && !isOfSamples(cells))
      return { offset, form: "row a wavelength" };
    if (isOfSamples(cells)) return { offset, form: "row a sample" };
    if (beginsWavelengths(table, i)) {
      const names = namesAbove(table, i);
      const at = names === undefined ? undefined : lines[names]?.index;
      return at === undefined ? undefined : { offset: at, form: "column a sample" };
    }
  }
  return undefined;
}

interface FoundHeader {
  readonly offset: number;
  /** Of `column a sample` the first cell says nothing of wavelengths, and rows of L*a*b* and the like may stand among the others. */
  readonly form: "row a wavelength" | "row a sample" | "column a sample";
}

/** A line with semicolons or tabs may have decimal commas. */
function separatorIn(line: string): string {
  return [";", "\t"].find((mark) => line.includes(mark)) ?? ",";
}

/** Whether a row is the first of a run of rows that each begin with a wavelength. */
function beginsWavelengths(table: readonly (readonly string[])[], from: number): boolean {
  const run = table.slice(from, from + FEWEST_WAVELENGTHS);
  return (
    run.length === FEWEST_WAVELENGTHS &&
    run.every((cells) => cells.length > 1 && headNm(cells[0] ?? "") !== undefined)
  );
}

/** The row of names above the wavelengths: the nearest that says so, else the nearest of as many cells that are no numbers. */
function namesAbove(table: readonly (readonly string[])[], first: number): number | undefined {
  const width = table[first]?.length ?? 0;
  const above = Array.from({ length: first }, (_, i) => first - 1 - i).filter(
    (i) => table[i]?.length === width,
  );
  return (
    above.find((i) => SAMPLE_HEAD.test(table[i]?.[0] ?? "")) ??
    above.find((i) =>
      table[i]?.slice(1).every((cell) => cell !== "" && !/^[-+\d.,%\s]+$/.test(cell)),
    )
  );
}

/** How a row or column of names calls itself. */
const SAMPLE_HEAD = /^(?:sample[\s_]*)?name$|^samples?$|^(?:sample[\s_]*)?id$/i;

/** A text of which all that stands before the header is blank: every letter keeps its place. */
export function withoutPreamble(text: string): string {
  const header = headerOf(text);
  return header === undefined
    ? text
    : text.slice(0, header.offset).replace(/[^\r\n]/g, " ") + text.slice(header.offset);
}

/** What stands before the header, a line each: what an instrument tells of itself, and remarks. */
export function preambleLines(text: string): string[] {
  const header = headerOf(text);
  return header === undefined
    ? []
    : text
        .slice(0, header.offset)
        .split(/[\r\n]+/)
        .filter((line) => line.trim() !== "");
}

/** Whether a table has a row a sample: wavelengths in its header, and none down its first column. */
export function isTurned([header = [], first = []]: readonly (readonly WrittenCell[])[]): boolean {
  return (
    isOfSamples(header.map(({ text }) => text)) && wavelengthOf(first[0]?.text ?? "") === undefined
  );
}

/**
 * A table of a row a sample as one of a row a wavelength. A sample goes by its first cell, or by the one
 * under a head that says name or sample; other columns, L*a*b* and the like, are passed over.
 */
export function turned(table: readonly (readonly WrittenCell[])[]): WrittenCell[][] {
  const [header = [], ...samples] = table;
  const names = header.findIndex(({ text }) => /^(?:sample[\s_]*)?name$|^sample$/i.test(text));
  const nameAt = names < 0 ? 0 : names;
  const empty = (row: readonly WrittenCell[]): WrittenCell => ({
    ...(row.at(-1) ?? TEXT_START),
    text: "",
  });
  const head: WrittenCell = { ...(header[nameAt] ?? empty(header)), text: "nm" };
  return [
    [head, ...samples.map((row) => row[nameAt] ?? empty(row))],
    ...header.flatMap((cell, index) => {
      const nm = headNm(cell.text);
      return nm === undefined || index === nameAt
        ? []
        : [[{ ...cell, text: String(nm) }, ...samples.map((row) => row[index] ?? empty(row))]];
    }),
  ];
}

function isOfSamples(cells: readonly string[]): boolean {
  return cells.filter((cell) => headNm(cell) !== undefined).length >= FEWEST_WAVELENGTHS;
}

const HEAD_MARK = /^(?:spectral[\s_]*(?:nm)?|spec|refl(?:ectance)?|r|nm|wl)[\s_]*[[(]?(?=\d)/i;

/** Wavelength [nm] that a head says: "400", "400 nm", "R400", "R[400nm]", "SPECTRAL_NM400"; 300 to 1100, which reflectances in percent are not. */
function headNm(text: string): number | undefined {
  const nm = wavelengthOf(text.replace(HEAD_MARK, "").replace(/[\])]$/, ""));
  return nm !== undefined && nm >= 300 && nm <= 1100 ? nm : undefined;
}

/** A table of a column a sample as one that begins with nm and holds wavelengths alone. */
export function ofWavelengths(table: readonly (readonly WrittenCell[])[]): WrittenCell[][] {
  const [header = [], ...rows] = table;
  const [first = { text: "", ...TEXT_START }, ...names] = header;
  return [
    [{ ...first, text: "nm" }, ...names],
    ...rows.flatMap(([head, ...cells]) => {
      const nm = head === undefined ? undefined : headNm(head.text);
      return head === undefined || nm === undefined
        ? []
        : [[{ ...head, text: String(nm) }, ...cells]];
    }),
  ];
}
