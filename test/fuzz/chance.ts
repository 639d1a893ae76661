/** Numbers from 0 to 1, the same for a seed: mulberry32, in the public domain. */
export type Chance = () => number;

export function chanceOf(seed: number): Chance {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** A whole number from 0 to under `count`. */
export function index(chance: Chance, count: number): number {
  return Math.floor(chance() * count);
}

export function chosen<T>(chance: Chance, among: readonly T[]): T {
  const one = among[index(chance, among.length)];
  if (one === undefined) throw new RangeError("Nothing to choose from");
  return one;
}
