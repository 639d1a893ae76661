import { wavelengthOf } from "./found-grid.ts";
import type { WrittenCell } from "./reading-column.ts";

/** The first cell names the unit, with or without the word: "nm", "wavelength nm", "Wavelength (nm)". */
export const WAVELENGTH_HEAD = /^(?:wavelength[\s_]*)?[([]?nm[)\]]?$/i;

/** A table of samples has at least so many wavelengths in its header: 400 to 700 nm in steps of 20. */
const FEWEST_WAVELENGTHS = 16;

/** A header is looked for among so many lines; what stands before it is an instrument's preamble. */
const LONGEST_PREAMBLE = 100;

/** Where the header row of a CSV begins and how it lies; undefined where no line of the first hundred is one. */
export function headerOf(
  text: string,
): { readonly offset: number; readonly form: "row a wavelength" | "row a sample" } | undefined {
  let lines = 0;
  for (const line of text.matchAll(/[^\r\n]+/g)) {
    if (++lines > LONGEST_PREAMBLE) return undefined;
    const cells = line[0].split(/[,;\t]/, 2000).map((cell) => cell.trim().replace(/^"|"$/g, ""));
    if (cells.length > 1 && WAVELENGTH_HEAD.test(cells[0] ?? "") && !isOfSamples(cells))
      return { offset: line.index, form: "row a wavelength" };
    if (isOfSamples(cells)) return { offset: line.index, form: "row a sample" };
  }
  return undefined;
}

/** A text of which all that stands before the header is blank: every letter keeps its place. */
export function withoutPreamble(text: string): string {
  const header = headerOf(text);
  return header === undefined
    ? text
    : text.slice(0, header.offset).replace(/[^\r\n]/g, " ") + text.slice(header.offset);
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
    ...(row.at(-1) ?? { line: 1, column: 1 }),
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

/** Wavelength [nm] that a head says: "400", "400 nm", "R400", "R 400nm"; 300 to 1100, which reflectances in percent are not. */
function headNm(text: string): number | undefined {
  const nm = wavelengthOf(text.replace(/^(?:r|refl|nm|spectral)[\s_]*(?=\d)/i, ""));
  return nm !== undefined && nm >= 300 && nm <= 1100 ? nm : undefined;
}
