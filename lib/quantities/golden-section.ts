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
  // Of a stretch that is narrow enough nothing more is asked.
  const asked = (x: number): number => (b - a > within ? of(x) : NaN);
  let [left, right] = [b - GOLDEN * (b - a), a + GOLDEN * (b - a)];
  let [atLeft, atRight] = [asked(left), asked(right)];
  while (b - a > within) {
    if (atLeft < atRight) {
      [b, right, atRight] = [right, left, atLeft];
      left = b - GOLDEN * (b - a);
      atLeft = asked(left);
    } else {
      [a, left, atLeft] = [left, right, atRight];
      right = a + GOLDEN * (b - a);
      atRight = asked(right);
    }
  }
  return (a + b) / 2;
}
