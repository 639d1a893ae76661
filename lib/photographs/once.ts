/** What is made when it is first asked for. */
export function once<T>(made: () => T): () => T {
  let first: { readonly value: T } | undefined;
  return () => (first ??= { value: made() }).value;
}
