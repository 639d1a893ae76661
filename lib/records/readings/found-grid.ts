import { mostOf } from "../../quantities/most-of.ts";
import type { WavelengthGrid } from "../../quantities/spectrum.ts";
import type { FaultList, Spot } from "./fault-list.ts";
import type { WrittenCell } from "./reading-column.ts";
import { writtenNumber } from "./written-number.ts";

const NM_MIN = 100;
const NM_MAX = 4000;

export interface FoundGrid {
  readonly grid: WavelengthGrid;
  /** Some instruments scan from red to blue: the values then have to be turned round. */
  readonly falling: boolean;
}

/** A wavelength [nm] with its cell. */
interface Wavelength extends WrittenCell {
  readonly nm: number;
}

/** The wavelength that a cell says, with or without its unit: "400", "383.33", "400 nm". Complains and gives undefined otherwise. */
export function foundWavelength(cell: WrittenCell, faults: FaultList): number | undefined {
  const nm = wavelengthOf(cell.text);
  if (nm !== undefined) return nm;
  faults.error("wavelength", cell, {
    message:
      cell.text === ""
        ? "A wavelength is missing here"
        : `"${cell.text}" is no wavelength: that is a number of nm, ${NM_MIN} to ${NM_MAX}`,
    actual: cell.text === "" ? "nothing" : cell.text,
    expected: `a number of nm, ${NM_MIN} to ${NM_MAX}`,
  });
  return undefined;
}

/** What no number of nm is, and every wavelength of light in micrometres. */
function isInMicrometres({ text }: WrittenCell): boolean {
  const um = writtenNumber(text.replace(/\s*(?:um|\u00b5m|\u03bcm)$/i, ""));
  return um !== undefined && um >= NM_MIN / 1000 && um <= NM_MAX / 1000;
}

/** A wavelength [nm] within the reach of instruments that a text says, if it says one. */
export function wavelengthOf(text: string): number | undefined {
  const nm = writtenNumber(text.replace(/\s*nm$/i, ""));
  return nm !== undefined && nm >= NM_MIN && nm <= NM_MAX ? nm : undefined;
}

/**
 * The even grid that a list of wavelengths makes, rising or falling. Complains
 * of each wavelength that comes twice, out of order, after a gap or off the step.
 *
 * @param at where to complain when there are too few.
 * @param path column they belong to, "" when all columns share them.
 * @returns undefined as soon as one of them is at fault.
 */
export function foundGrid(
  cells: readonly WrittenCell[],
  at: Spot,
  path: string,
  faults: FaultList,
): FoundGrid | undefined {
  if (cells.length > 1 && cells.every(isInMicrometres)) {
    const [first] = cells;
    faults.error("wavelength", first ?? at, {
      path,
      message: `The wavelengths are in micrometres, from ${first?.text ?? ""} to ${cells.at(-1)?.text ?? ""}, and are read in nm`,
      actual: first?.text ?? "",
      expected: `a number of nm, ${NM_MIN} to ${NM_MAX}`,
      hint: "each times 1000",
    });
    return undefined;
  }
  if (
    cells.length > 1 &&
    cells.every(({ text }) => text !== "" && wavelengthOf(text) === undefined)
  ) {
    const [first] = cells;
    faults.error("wavelength", first ?? at, {
      path,
      message: `None of these ${cells.length} is a wavelength, from "${first?.text ?? ""}" to "${cells.at(-1)?.text ?? ""}": that is a number of nm, ${NM_MIN} to ${NM_MAX}`,
      actual: first?.text ?? "",
      expected: `a number of nm, ${NM_MIN} to ${NM_MAX}`,
      hint: "two columns exchanged, or their heads?",
    });
    return undefined;
  }
  const errorsBefore = faults.errorCount();
  const wavelengths: Wavelength[] = [];
  for (const cell of cells) {
    const nm = foundWavelength(cell, faults);
    if (nm !== undefined) wavelengths.push({ ...cell, nm });
    if (faults.isFull()) return undefined;
  }
  if (wavelengths.length < cells.length) return undefined;
  const falling = isFalling(wavelengths);
  const ordered = inOrder(wavelengths, falling, path, faults);
  const [first, second] = ordered;
  if (first === undefined || second === undefined) {
    faults.error("wavelength-count", at, {
      path,
      message: `${cells.length === 1 ? "One wavelength is" : `${cells.length} wavelengths are`} too few: a reading covers 400 to 700 nm in even steps of 1 to 20 nm`,
      actual: String(cells.length),
      expected: "400 to 700 nm in even steps of 1 to 20 nm",
    });
    return undefined;
  }
  const even = roundedGrid(ordered);
  if (even !== undefined) return { grid: even, falling };
  checkSteps(ordered, path, faults);
  if (faults.errorCount() > errorsBefore) return undefined;
  return {
    grid: { startNm: first.nm, stepNm: second.nm - first.nm, count: ordered.length },
    falling,
  };
}

/** Farther than this [nm] no wavelength is printed from where it lies: 383 for 383.33. */
const ROUNDED_WITHIN_NM = 0.5;
/** In finer steps [nm] one that is missing looks like rounding. */
const ROUNDED_FROM_NM = 2;

/** Even steps that are no whole numbers, as printed with or without their decimals; undefined of a grid in whole steps. */
function roundedGrid(ordered: readonly Wavelength[]): WavelengthGrid | undefined {
  const [first, last] = [ordered[0]?.nm, ordered.at(-1)?.nm];
  if (first === undefined || last === undefined) return undefined;
  const count = ordered.length;
  const stepNm = (last - first) / (count - 1);
  const isEven =
    stepNm > ROUNDED_FROM_NM &&
    !Number.isInteger(stepNm) &&
    ordered.every(({ nm }, i) => Math.abs(nm - (first + i * stepNm)) <= ROUNDED_WITHIN_NM);
  return isEven && count > 10 ? { startNm: first, stepNm, count } : undefined;
}

function isFalling(wavelengths: readonly Wavelength[]): boolean {
  const rises = wavelengths.reduce(
    (sum, { nm }, i) => sum + Math.sign(nm - (wavelengths[i - 1]?.nm ?? nm)),
    0,
  );
  return rises < 0;
}

/** Wavelengths by size, each once; complains of one that comes twice or out of order. */
function inOrder(
  wavelengths: readonly Wavelength[],
  falling: boolean,
  path: string,
  faults: FaultList,
): Wavelength[] {
  const seen = new Map<number, Wavelength>();
  let last: Wavelength | undefined;
  for (const wavelength of wavelengths) {
    const { nm, text } = wavelength;
    const twin = seen.get(nm);
    if (twin) {
      faults.error("duplicated-wavelength", wavelength, {
        path,
        message: `The wavelength ${text} comes twice: first on line ${twin.line}`,
        actual: text,
        expected: `${twin.text} once, as on line ${twin.line}`,
      });
      continue;
    }
    seen.set(nm, wavelength);
    if (last && (falling ? nm > last.nm : nm < last.nm)) {
      faults.error("wavelength-order", wavelength, {
        path,
        message: `The wavelength ${text} is out of order: it follows ${last.text}, in a ${falling ? "falling" : "rising"} row`,
        actual: text,
        expected: `one ${falling ? "below" : "above"} ${last.text}`,
      });
    } else last = wavelength;
  }
  return [...seen.values()].sort((one, other) => one.nm - other.nm);
}

function checkSteps(ordered: readonly Wavelength[], path: string, faults: FaultList): void {
  const steps = ordered.slice(1).map(({ nm }, i) => nm - (ordered[i]?.nm ?? nm));
  // Of steps that are kept equally often it is the smallest.
  const stepNm = mostOf(steps.toSorted((one, other) => one - other));
  if (stepNm === undefined) return;
  steps.forEach((step, i) => {
    const wavelength = ordered[i + 1];
    const before = ordered[i];
    if (step === stepNm || !wavelength || !before) return;
    const isGap = step > stepNm && step % stepNm === 0;
    faults.error(isGap ? "wavelength-gap" : "wavelength-step", wavelength, {
      path,
      message: isGap
        ? `Wavelengths are missing between ${before.nm} and ${wavelength.text} nm: the step is ${stepNm} nm`
        : `${wavelength.text} nm follows ${before.nm} nm off the step of ${stepNm} nm: ${before.nm + stepNm} is next`,
      actual: wavelength.text,
      expected: `${before.nm + stepNm} after ${before.nm} nm, in steps of ${stepNm} nm`,
    });
  });
}
