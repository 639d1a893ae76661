import { readOnce, type RememberedReads } from "../kept/reads.ts";

/**
 * A pure function that remembers what it gave: of the same thing, and equal words and numbers
 * beside it, it gives the same again. What nobody holds any more is forgotten with it. Whoever is
 * given what was remembered has read what it was made from.
 */
export function remembered<
  Of extends object,
  Beside extends readonly (string | number | undefined)[],
  V,
>(made: (of: Of, ...beside: Beside) => V): (of: Of, ...beside: Beside) => V {
  const known: RememberedReads<Of, V> = new WeakMap();
  return (of, ...beside) => readOnce(known, of, beside.join("\n"), () => made(of, ...beside));
}

/** The same of two things. */
export function rememberedOfTwo<One extends object, Other extends object, V>(
  made: (one: One, other: Other) => V,
): (one: One, other: Other) => V {
  const by = remembered((one: One) => remembered((other: Other) => made(one, other)));
  return (one, other) => by(one)(other);
}
