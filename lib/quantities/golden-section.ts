const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * Where a function of one valley is least, by golden section: each step keeps 0.618 of the stretch and asks once.
 *
 * @param from where the stretch begins. @param to where it ends, >= `from`.
 * @param within how narrow the stretch has to be, in its unit, > 0.
 * @returns its middle then.
 * @throws RangeError unless `within` is above 0: below that no stretch is ever narrow enough.
 */
export function leastAt(
  of: (x: number) => number,
  from: number,
  to: number,
  within: number,
): number {
  if (!(within > 0)) throw new RangeError(`A stretch is never narrower than ${within}`);
  let [a, b] = [from, to];
  let [c, d] = [b - GOLDEN * (b - a), a + GOLDEN * (b - a)];
  let [ofC, ofD] = [of(c), of(d)];
  while (b - a > within) {
    if (ofC < ofD) {
      [b, d, ofD] = [d, c, ofC];
      c = b - GOLDEN * (b - a);
      ofC = of(c);
    } else {
      [a, c, ofC] = [c, d, ofD];
      d = a + GOLDEN * (b - a);
      ofD = of(d);
    }
  }
  return (a + b) / 2;
}
