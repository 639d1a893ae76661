import { domainError } from "../diagnostics/diagnostic.ts";
import { at } from "../quantities/at.ts";

/**
 * Natural cubic spline through evenly spaced points: value and first two
 * derivatives continuous, second derivative zero at both ends. One of the
 * interpolations that CIE 15 allows between tabulated wavelengths.
 *
 * @param start abscissa of the first point.
 * @param step spacing, > 0, in the unit of `start`.
 * @param values ordinates, shape (n), n >= 2.
 * @returns the spline as a function on [start, start + (n - 1) step]; beyond, its end value.
 * @throws RangeError when the step is not positive or there are fewer than two points.
 * @source cie-15-2018
 */
export function naturalSpline(
  start: number,
  step: number,
  values: readonly number[],
): (x: number) => number {
  if (!(step > 0)) throw domainError("spacing of a spline", step, "spacing > 0");
  if (!(values.length >= 2))
    throw domainError("count of points of a spline", values.length, "count >= 2");
  const curvatures = secondDifferences(values);
  const last = values.length - 1;
  return (x) => {
    const position = Math.min(Math.max((x - start) / step, 0), last);
    const left = Math.min(Math.floor(position), last - 1);
    const t = position - left;
    const s = 1 - t;
    return (
      s * at(values, left) +
      t * at(values, left + 1) +
      ((s ** 3 - s) * at(curvatures, left) + (t ** 3 - t) * at(curvatures, left + 1)) / 6
    );
  };
}

/** Second derivatives at the points times step^2: the tridiagonal system 1 4 1, solved by elimination. */
function secondDifferences(values: readonly number[]): number[] {
  const last = values.length - 1;
  const pivots: number[] = [];
  const sides: number[] = [];
  for (let i = 1; i < last; i++) {
    const bend = 6 * (at(values, i - 1) - 2 * at(values, i) + at(values, i + 1));
    const above = i === 1 ? 0 : 1 / at(pivots, i - 2);
    pivots.push(4 - above);
    sides.push(i === 1 ? bend : bend - above * at(sides, i - 2));
  }
  const curvatures = new Array<number>(values.length).fill(0);
  for (let i = last - 1; i >= 1; i--) {
    curvatures[i] = (at(sides, i - 1) - at(curvatures, i + 1)) / at(pivots, i - 1);
  }
  return curvatures;
}
