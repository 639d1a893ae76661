/**
 * An object whose properties are worked out when they are first read, each once: of what follows
 * from one thing most readers want little.
 */
export function whenRead<T extends object>(parts: {
  readonly [Name in keyof T]: () => T[Name];
}): T {
  const read = {};
  for (const [name, part] of Object.entries<() => unknown>(parts))
    Object.defineProperty(read, name, {
      enumerable: true,
      configurable: true,
      get: () => {
        const value = part();
        Object.defineProperty(read, name, { enumerable: true, value });
        return value;
      },
    });
  return read as T;
}
