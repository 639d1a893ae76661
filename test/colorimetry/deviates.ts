/** Normal deviates from a fixed seed (a linear congruential generator, Box-Muller). */
export function deviates(seed: number): () => number {
  let state = seed;
  const uniform = (): number => {
    state = (state * 1664525 + 1013904223) % 2 ** 32;
    return (state + 0.5) / 2 ** 32;
  };
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}
