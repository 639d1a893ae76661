/**
 * Things by name from one run of the same process to the next. Whoever makes one that says what it
 * said before is given that one again: what is known of it, as its hash, stays known.
 */
export function sameAsBefore(): <V>(name: string, value: V) => V {
  const before = new Map<string, unknown>();
  return <V>(name: string, value: V): V => {
    const earlier = before.get(name);
    if (saySame(earlier, value)) return earlier as V;
    before.set(name, value);
    return value;
  };
}

/** Whether two things are plain data that says the same; a function is the same as itself alone. */
function saySame(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== "object" || typeof other !== "object" || one === null || other === null)
    return false;
  if (Array.isArray(one) && Array.isArray(other))
    return one.length === other.length && one.every((own, i) => saySame(own, other[i]));
  if (!isPlain(one) || !isPlain(other)) return false;
  const names = Object.keys(one);
  return (
    names.length === Object.keys(other).length &&
    names.every((name) => Object.hasOwn(other, name) && saySame(one[name], other[name]))
  );
}

function isPlain(value: object): value is Readonly<Record<string, unknown>> {
  return Object.getPrototypeOf(value) === Object.prototype;
}
