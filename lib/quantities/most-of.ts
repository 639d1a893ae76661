/** The value that most of them are, the first of those that are as many; undefined of none. */
export function mostOf<T>(values: readonly T[]): T | undefined {
  const counts = new Map<T, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  const most = Math.max(...counts.values());
  return [...counts].find(([, count]) => count === most)?.[0];
}
