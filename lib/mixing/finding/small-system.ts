import { at } from "../../quantities/at.ts";

/**
 * Solution of a few linear equations, by elimination with the largest pivot.
 * @param matrix square, at most a handful of rows.
 * @returns undefined where the equations do not tell.
 */
export function solved(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): number[] | undefined {
  const n = right.length;
  const rows = matrix.map((row, i) => [...row, at(right, i)]);
  for (let column = 0; column < n; column++) {
    let pivot = column;
    for (let row = column + 1; row < n; row++)
      if (Math.abs(rows[row]?.[column] ?? 0) > Math.abs(rows[pivot]?.[column] ?? 0)) pivot = row;
    const head = rows[pivot];
    const [swapped] = [rows[column]];
    if (head === undefined || swapped === undefined || !(Math.abs(head[column] ?? 0) > 1e-300))
      return undefined;
    rows[pivot] = swapped;
    rows[column] = head;
    for (let row = column + 1; row < n; row++) {
      const own = rows[row];
      if (own === undefined) continue;
      const factor = at(own, column) / at(head, column);
      for (let k = column; k <= n; k++) own[k] = at(own, k) - factor * at(head, k);
    }
  }
  const values = new Array<number>(n).fill(0);
  for (let row = n - 1; row >= 0; row--) {
    const own = rows[row] ?? [];
    let sum = at(own, n);
    for (let k = row + 1; k < n; k++) sum -= at(own, k) * at(values, k);
    values[row] = sum / at(own, row);
  }
  return values.every(Number.isFinite) ? values : undefined;
}
