/** Values by their keys, keys and values in the order in which they were met. */
export function grouped<K, V>(entries: Iterable<readonly [K, V]>): Map<K, V[]> {
  const groups = new Map<K, V[]>();
  for (const [key, value] of entries) {
    const own = groups.get(key);
    if (own === undefined) groups.set(key, [value]);
    else own.push(value);
  }
  return groups;
}
