import { certain } from "../quantities/at.ts";

/**
 * For each of a list the first, by some order, of those near it on a scale. Every entry is taken
 * up and dropped once: the cost grows with the list and not with its square.
 *
 * @param entries in rising order on the scale.
 * @param isNear of two on the scale; what lies between two that are near is near to both.
 */
export function firstInWindow<T>(
  entries: readonly T[],
  isNear: (one: T, other: T) => boolean,
  order: (one: T, other: T) => number,
): readonly T[] {
  /** From the first on those taken up that none taken up later comes before. */
  const waiting: T[] = [];
  let [first, next] = [0, 0];
  const lastComesAfter = (one: T): boolean => {
    const last = waiting.length > first ? waiting.at(-1) : undefined;
    return last !== undefined && order(one, last) < 0;
  };
  return entries.map((entry) => {
    for (let one = entries[next]; one !== undefined && isNear(entry, one); one = entries[++next]) {
      while (lastComesAfter(one)) waiting.pop();
      waiting.push(one);
    }
    let found = certain(waiting[first]);
    while (!isNear(entry, found)) found = certain(waiting[++first]);
    return found;
  });
}
