/** Values that can be made again: of all that are asked for by name so many are held at a time, those that were asked for last. */
export function heldFew<V>(most: number): (name: string, made: () => V) => V {
  const held = new Map<string, V>();
  let last: { readonly name: string; readonly value: V } | undefined;
  return (name, made) => {
    // Asked for again and again before another is.
    if (last?.name === name) return last.value;
    const value = held.has(name) ? (held.get(name) as V) : made();
    held.delete(name);
    held.set(name, value);
    for (const oldest of held.keys()) {
      if (held.size <= most) break;
      held.delete(oldest);
    }
    last = { name, value };
    return value;
  };
}
