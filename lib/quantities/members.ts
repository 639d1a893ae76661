/** Whether something is one of a closed list. */
export function isOneOf<T>(list: readonly T[], one: unknown): one is T {
  return (list as readonly unknown[]).includes(one);
}

/** The keys of an object that was written with no others. */
export function keysOf<K extends string>(closed: Readonly<Partial<Record<K, unknown>>>): K[] {
  return Object.keys(closed) as K[];
}
