/** What can be wrong with a reading where a record names it. */
import { parseMunsell } from "../colorimetry/munsell-notation.ts";
import { nearestHint } from "../diagnostics/nearest-word.ts";
import type { Fault } from "./fault.ts";
import type { FileLab } from "./file-lab.ts";

/** So many columns of a file are named where none is near. */
const NAMED_MOST = 12;

export function missingReading(name: string, stem: string, stems: Iterable<string>): Fault {
  return {
    rule: "records/missing-reading",
    message: `There is no reading ${name} in readings/`,
    actual: name,
    expected: "the name of a file in readings/",
    hint: nearestHint(stem, stems),
  };
}

export function missingColumn(name: string, file: string, columns: readonly string[]): Fault {
  return {
    rule: "records/missing-column",
    message: `Column ${name} is not in ${file}`,
    actual: name,
    expected: `a column of ${file}`,
    hint: nearestHint(name, columns) ?? `it has: ${columns.slice(0, NAMED_MOST).join(", ")}`,
  };
}

export const NO_GEOMETRY: Fault = {
  rule: "records/geometry",
  message:
    "The geometry of the reading is missing: 45/0, d/8 included or d/8 excluded, here or under readings in workshop.yaml",
  actual: "nothing",
  expected: "45/0 | d/8 included | d/8 excluded, here or under readings in workshop.yaml",
};

export const NO_SCALE: Fault = {
  rule: "records/scale",
  message:
    "The scale of the reading is missing: factor or percent, here or under readings in workshop.yaml",
  actual: "nothing",
  expected: "factor | percent, here or under readings in workshop.yaml",
};

export const GRIDS_DIFFER: Fault = {
  rule: "records/grid",
  message: "Readings that are averaged have different wavelengths",
  actual: "differing",
  expected: "one grid for readings that are averaged",
};

/** Of columns that hold L*a*b* and no spectrum: that they, or the record, tell no one light and observer. */
export function viewingFault(
  found: readonly FileLab[],
  { reading }: { readonly reading: string },
): Fault | undefined {
  const odd = found.find((one) => !("lab" in one));
  const viewings = new Set(found.flatMap((one) => ("lab" in one ? [one.viewing] : [])));
  if (odd === undefined && viewings.size === 1) return undefined;
  return {
    rule: "records/viewing",
    message:
      odd !== undefined && "contradicts" in odd
        ? `The light and the observer of this L*a*b* differ: ${odd.contradicts}`
        : odd === undefined
          ? "Readings that are averaged hold L*a*b* under different lights or observers"
          : `${reading} holds L*a*b* and no spectrum, and does not say for which light and observer: give illuminant and observer here`,
    actual: "no one viewing",
    expected: "illuminant: A, C, D50 or D65, and observer: 2 or 10",
  };
}

export function noMunsell(written: string): Fault {
  return {
    rule: "records/munsell",
    message: `"${written}" is no Munsell notation, such as N 2/ or 5PB 3/1`,
    actual: written,
    expected: "N 2/ or 5PB 3/1",
    hint: munsellHint(written),
  };
}

/** A notation with its blanks as a book of chips has them, where that is all that is wrong. */
function munsellHint(found: string): string | undefined {
  const [, hue = "", rest = ""] =
    /^([\d.]*[A-Z]{1,2})([\d.]+\/[\d.]*)$/i.exec(found.replaceAll(/\s/g, "")) ?? [];
  const meant = `${hue} ${rest}`;
  return parseMunsell(meant) === undefined ? undefined : `written so: ${meant}`;
}
