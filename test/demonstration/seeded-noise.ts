/** Normal deviates, mean 0 and standard deviation 1, the same for the same key on every run. */
export type Deviates = () => number;

/**
 * A source of its own for each drawdown, so that a new colour leaves the readings of the others as they are.
 * Generator: mulberry32 on a 32-bit FNV-1a hash of the key; normal by the sum of twelve uniforms, which
 * needs no logarithm and can't give a wild outlier.
 */
export function deviates(key: string): Deviates {
  let state = 0x811c9dc5;
  for (const character of key)
    state = Math.imul(state ^ (character.codePointAt(0) ?? 0), 0x01000193);
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  return () => Array.from({ length: 12 }, uniform).reduce((total, u) => total + u, -6);
}
