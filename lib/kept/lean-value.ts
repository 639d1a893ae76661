/** A value as V8 gives it back takes twice what it took when it was made: each text in it is one of its own, each number of a list a thing. */

/** Texts that many values say, as units, methods and names of records: one for all. Those of a range come soon; past so many none is added. */
const TEXTS = new Map<string, string>();
const MOST_TEXTS = 50_000;
/** Longer ones are sentences, hardly any of which is said twice. [characters] */
const LONGEST = 80;

/** The same value, which nobody else holds yet, taking less memory. */
export function lean<V>(value: V): V {
  return leaner(value, new Map()) as V;
}

/** @param known what came of each thing that was met: what is one thing stays one. */
function leaner(value: unknown, known: Map<object, unknown>): unknown {
  if (typeof value === "string") return oneText(value);
  if (typeof value !== "object" || value === null) return value;
  const before = known.get(value);
  if (before !== undefined) return before;
  if (Array.isArray(value)) {
    const list: unknown[] = isOfNumbers(value) ? packedNumbers(value) : value;
    known.set(value, list);
    if (list === value) for (const [i, one] of list.entries()) replace(list, i, one, known);
    return list;
  }
  known.set(value, value);
  const prototype: unknown = Object.getPrototypeOf(value);
  if (prototype !== Object.prototype) return value;
  const own = value as Record<string, unknown>;
  for (const key of Object.keys(own)) replace(own, key, own[key], known);
  return value;
}

function replace<K extends string | number>(
  where: { [Key in K]?: unknown },
  key: K,
  value: unknown,
  known: Map<object, unknown>,
): void {
  const made = leaner(value, known);
  if (made !== value || typeof value === "string") where[key] = made;
}

function isOfNumbers(list: readonly unknown[]): list is readonly number[] {
  return list.length > 0 && list.every((one) => typeof one === "number");
}

/** Put one after the other, numbers lie in the list itself. */
function packedNumbers(list: readonly number[]): number[] {
  const packed: number[] = [];
  for (const one of list) packed.push(one);
  return packed;
}

function oneText(text: string): string {
  if (text.length > LONGEST) return text;
  const known = TEXTS.get(text);
  if (known !== undefined) return known;
  if (TEXTS.size < MOST_TEXTS) TEXTS.set(text, text);
  return text;
}
