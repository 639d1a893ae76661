/** How steps of one kind are written down: each list of parts once, whoever read it and of whichever owner, and each value by itself. */
import { deserialize, serialize } from "node:v8";
import { bodiesIn, namedValues, withBodies, type NamedValues } from "./kept-bodies.ts";
import type { PartsOfOwner } from "./reads.ts";
import type { KeptStep } from "./step-book.ts";

/** Numbers are places in the lists above them. */
interface PackedSteps {
  readonly names: readonly string[];
  readonly owners: readonly string[];
  /** Of parts that were read together, each list as JSON. */
  readonly lists: readonly string[];
  readonly times: readonly string[];
  /** Of each owner that was read with each list, the two. */
  readonly pairs: Uint32Array;
  /** Which of these each step read, one step after another; and where each ends there. */
  readonly read: Uint32Array;
  readonly ends: Uint32Array;
  /** Of each step. */
  readonly taken: Uint32Array;
  readonly identities: readonly (string | undefined)[];
}

export function packedSteps(steps: Iterable<readonly [string, KeptStep]>): Uint8Array {
  const all = [...steps];
  const [owners, lists, times] = [places<string>(), places<string>(), places<string>()];
  const texts = new Map<readonly string[], string>();
  const textOf = (parts: readonly string[]): string => {
    const text = texts.get(parts) ?? JSON.stringify(parts);
    texts.set(parts, text);
    return text;
  };
  const pairs = places<string>();
  const read: number[] = [];
  const ends: number[] = [];
  const both: number[] = [];
  for (const [, { parts }] of all) {
    for (const { owner, parts: own } of parts) {
      const pair = [owners.of(owner), lists.of(textOf(own))];
      const place = pairs.of(pair.join(" "));
      if (2 * place === both.length) both.push(...pair);
      read.push(place);
    }
    ends.push(read.length);
  }
  const packed: PackedSteps = {
    names: all.map(([name]) => name),
    owners: owners.all(),
    lists: lists.all(),
    pairs: Uint32Array.from(both),
    read: Uint32Array.from(read),
    ends: Uint32Array.from(ends),
    taken: Uint32Array.from(all, ([, { time }]) => times.of(time)),
    times: times.all(),
    identities: all.map(([, { identity }]) => identity),
  };
  return withBodies(
    packed,
    all.map(([, { value }]) => serialize(value)),
  );
}

export function unpackedSteps(bytes: Uint8Array): NamedValues<KeptStep> {
  const { head, body } = bodiesIn<PackedSteps>(bytes);
  const { names, owners, lists, times, pairs, read, ends, taken, identities } = head;
  const ownLists = lists.map((text) => new PartList(text));
  const known: PartsOfOwner[] = [];
  const pairAt = (i: number): PartsOfOwner =>
    (known[i] ??= new PackedParts(
      of(owners, of(pairs, 2 * i)),
      of(ownLists, of(pairs, 2 * i + 1)),
    ));
  return namedValues(names, (i): KeptStep => {
    const identity = identities[i];
    let value: { readonly of: unknown } | undefined;
    return {
      parts: Array.from(read.subarray(ends[i - 1] ?? 0, ends[i]), pairAt),
      time: of(times, of(taken, i)),
      ...(identity !== undefined && { identity }),
      get value() {
        return (value ??= { of: deserialize(body(i)) as unknown }).of;
      },
    };
  });
}

/** Parts of an owner, whose names are taken apart when they are asked for: of an owner that is what it was nobody asks. */
class PackedParts implements PartsOfOwner {
  readonly owner: string;
  readonly #list: PartList;

  constructor(owner: string, list: PartList) {
    this.owner = owner;
    this.#list = list;
  }

  get parts(): readonly string[] {
    return this.#list.parts;
  }
}

class PartList {
  readonly #text: string;
  #parts: readonly string[] | undefined;

  constructor(text: string) {
    this.#text = text;
  }

  get parts(): readonly string[] {
    return (this.#parts ??= JSON.parse(this.#text) as readonly string[]);
  }
}

/** What is at a place, as it was written. */
function of<T>(list: ArrayLike<T>, place: number): T {
  return list[place] as T;
}

interface Places<T> {
  readonly of: (one: T) => number;
  readonly all: () => T[];
}

/** Each thing once, by the place in which it was first met. */
function places<T>(): Places<T> {
  const known = new Map<T, number>();
  return {
    of: (one) => {
      const place = known.get(one) ?? known.size;
      known.set(one, place);
      return place;
    },
    all: () => [...known.keys()],
  };
}
