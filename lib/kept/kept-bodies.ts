/**
 * Values behind one another in the bytes of one file: a head, which is read at once, and bodies, each
 * of which is read when it is asked for. Of most that is kept nothing is asked from one build to the next.
 */
import { deserialize, serialize } from "node:v8";

export interface KeptBodies<H> {
  readonly head: H;
  /** @param i counted from 0. */
  readonly body: (i: number) => Uint8Array;
}

/** Of the length [bytes] of what tells where each body ends, which stands before it. */
const LENGTH_BYTES = 4;

/** @param head a value that can be cloned. */
export function withBodies(head: unknown, bodies: readonly Uint8Array[]): Uint8Array {
  const ends = new Float64Array(bodies.length);
  let end = 0;
  for (const [i, { length }] of bodies.entries()) ends[i] = end += length;
  const front = serialize([head, ends]);
  const length = Buffer.alloc(LENGTH_BYTES);
  length.writeUInt32LE(front.length);
  return Buffer.concat([length, front, ...bodies]);
}

/** @param bytes of {@link withBodies}, which its bodies are stretches of. */
export function bodiesIn<H>(bytes: Uint8Array): KeptBodies<H> {
  const all = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length);
  const begin = LENGTH_BYTES + all.readUInt32LE();
  const [head, ends] = deserialize(all.subarray(LENGTH_BYTES, begin)) as [H, Float64Array];
  return {
    head,
    body: (i) => all.subarray(begin + (ends[i - 1] ?? 0), begin + (ends[i] ?? 0)),
  };
}

/** Some values by name, each made when it is first asked for. */
export interface NamedValues<V> extends Iterable<readonly [name: string, value: V]> {
  readonly size: number;
  readonly get: (name: string) => V | undefined;
}

/** @param made of the name that stands at a place. */
export function namedValues<V extends object>(
  names: readonly string[],
  made: (i: number) => V,
): NamedValues<V> {
  const places = new Map(names.map((name, i) => [name, i]));
  const known: V[] = [];
  const at = (i: number): V => (known[i] ??= made(i));
  return {
    size: names.length,
    get: (name) => {
      const i = places.get(name);
      return i === undefined ? undefined : at(i);
    },
    *[Symbol.iterator]() {
      for (const [i, name] of names.entries()) yield [name, at(i)] as const;
    },
  };
}
