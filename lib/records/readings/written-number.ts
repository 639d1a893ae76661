import type { FaultList } from "./fault-list.ts";
import type { WrittenCell } from "./reading-column.ts";

const WRITTEN_NUMBER = /^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][+-]?\d{1,3})?$/;
const LONGEST_NUMBER = 40;

/**
 * The number that a cell says, with decimal point or comma; no unit, no
 * thousands separator.
 *
 * @returns undefined for anything that is not a finite number.
 * @example writtenNumber("4,25") // 4.25
 */
export function writtenNumber(text: string): number | undefined {
  if (text.length > LONGEST_NUMBER || !WRITTEN_NUMBER.test(text)) return undefined;
  const number = Number(text.replace(",", "."));
  return Number.isFinite(number) ? number : undefined;
}

/**
 * Complains when a file writes some numbers with a decimal point and some with a
 * comma: one of the two is then a thousands separator or a slip, and 1,234 has
 * two meanings. Feed it the cells of one file in their order.
 */
export function decimalMarkCheck(faults: FaultList): (cell: WrittenCell) => void {
  let first: string | undefined;
  return (cell) => {
    const mark = /[.,]/.exec(cell.text)?.[0];
    if (mark === undefined || mark === first || writtenNumber(cell.text) === undefined) return;
    first ??= mark;
    if (mark !== first) {
      faults.error("decimal-mark", cell, {
        message: `"${cell.text}" has another decimal mark than the numbers before it, which have "${first}"`,
        actual: cell.text,
        expected: `\`${first}\` as in the file's numbers before`,
      });
    }
  };
}

/** A percentage as a factor, its digits unchanged: 3.7 -> 0.037, where 3.7 / 100 would print 0.037000000000000005. */
export function percentToFactor(percent: number): number {
  const [digits = "", exponent = "0"] = String(percent).split("e");
  return Number(`${digits}e${Number(exponent) - 2}`);
}
