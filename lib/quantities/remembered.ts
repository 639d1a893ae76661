/**
 * A pure function that remembers what it gave: of the same thing, and equal words and numbers
 * beside it, it gives the same again. What nobody holds any more is forgotten with it.
 */
export function remembered<Of extends object, Beside extends readonly (string | number)[], V>(
  made: (of: Of, ...beside: Beside) => V,
): (of: Of, ...beside: Beside) => V {
  const known = new WeakMap<Of, Map<string, V>>();
  return (of, ...beside) => {
    const own = known.get(of) ?? new Map<string, V>();
    known.set(of, own);
    const key = beside.join("\n");
    const before = own.get(key);
    if (before !== undefined || own.has(key)) return before as V;
    const value = made(of, ...beside);
    own.set(key, value);
    return value;
  };
}

/** The same of two things. */
export function rememberedOfTwo<One extends object, Other extends object, V>(
  made: (one: One, other: Other) => V,
): (one: One, other: Other) => V {
  const by = remembered((one: One) => remembered((other: Other) => made(one, other)));
  return (one, other) => by(one)(other);
}
