/**
 * What a piece of work reads, noted while it reads. Whoever hands out a part of what is given
 * notes its name here; a piece of work that is kept between builds is made again when one of the
 * parts that it read has changed. Only what happens in one go is followed: nothing that waits.
 */

/** So few names are copied to whoever shares them, since to hold them apart would take more. */
const FEW = 8;
const NONE: ReadonlySet<never> = new Set<never>();

/** Parts of one owner that something read: what the owner is called, a member of a list or none (the empty name), and each part below that. */
export interface PartsOfOwner {
  readonly owner: string;
  readonly parts: readonly string[];
}

/** The name of a part of an owner; the empty part is the owner as a whole. */
export function partName(owner: string, part: string): string {
  return owner === "" ? part : part === "" ? owner : `${owner}/${part}`;
}

/**
 * Names of what was read. Those of a value that many pieces of work share stand in it once and are
 * not copied into each of them: of a large range that would grow with its square.
 */
export class ReadNames implements Iterable<string> {
  readonly own = new Set<string>();
  // There are many of these, and few of them have any of what follows.
  #owned: Set<PartsOfOwner> | undefined;
  #shared: Set<ReadNames> | undefined;

  get owned(): ReadonlySet<PartsOfOwner> {
    return this.#owned ?? NONE;
  }

  get shared(): ReadonlySet<ReadNames> {
    return this.#shared ?? NONE;
  }

  add(name: string): void {
    this.own.add(name);
  }

  addOwned(parts: PartsOfOwner): void {
    (this.#owned ??= new Set()).add(parts);
  }

  addAll(names: ReadNames): void {
    if (names.held <= FEW && names.held === names.own.size)
      for (const name of names.own) this.own.add(name);
    else (this.#shared ??= new Set()).add(names);
  }

  /** How many names are held here and nowhere else. */
  get held(): number {
    return this.own.size + this.owned.size + this.shared.size;
  }

  /** Each name once. */
  *[Symbol.iterator](): Generator<string> {
    const told = new Set<string>();
    const visited = new Set<ReadNames>([this]);
    for (const names of visited) {
      for (const shared of names.shared) visited.add(shared);
      for (const some of [names.own, ...[...names.owned].map(namesIn)])
        for (const name of some) {
          if (told.has(name)) continue;
          told.add(name);
          yield name;
        }
    }
  }
}

function namesIn({ owner, parts }: PartsOfOwner): readonly string[] {
  return parts.map((part) => partName(owner, part));
}

let reader: ReadNames | undefined;

/** A value with the names of all that was read to make it. */
export interface Read<V> {
  readonly value: V;
  readonly names: ReadNames;
}

export function noteRead(name: string): void {
  reader?.add(name);
}

/** Parts that were read before to make what is taken now. */
export function noteReadAgain(read: readonly PartsOfOwner[]): void {
  for (const parts of read) reader?.addOwned(parts);
}

/** Makes a value and tells what was read meanwhile, which whoever asked for it has read by that, too. */
export function readBy<V>(made: () => V): Read<V> {
  const outer = reader;
  const names = new ReadNames();
  reader = names;
  try {
    return { value: made(), names };
  } finally {
    reader = outer;
    outer?.addAll(names);
  }
}

/** A value made before: whoever takes it has read what it was made from. */
export function readAgain<V>({ value, names }: Read<V>): V {
  reader?.addAll(names);
  return value;
}

/** What is remembered of some things, each value by a name of its own. */
export type RememberedReads<Of extends object, V> = WeakMap<Of, Map<string, Read<V>>>;

/**
 * A value that several pieces of work share: made by the first of them, and read by each.
 * @param known where it is remembered, by what it is of and a name.
 */
export function readOnce<Of extends object, V>(
  known: RememberedReads<Of, V>,
  of: Of,
  name: string,
  made: () => V,
): V {
  const own = known.get(of) ?? new Map<string, Read<V>>();
  known.set(of, own);
  const before = own.get(name);
  if (before !== undefined) return readAgain(before);
  const read = readBy(made);
  own.set(name, read);
  return read.value;
}

/** A value made when it is first asked for; whoever asks has read what it was made from. */
export function readWhenAsked<V>(made: () => V): () => V {
  let read: Read<V> | undefined;
  return () => {
    if (read !== undefined) return readAgain(read);
    read = readBy(made);
    return read.value;
  };
}

/** Makes a value of which nobody notes what it was made from: whoever hands out its parts notes those. */
export function madeAside<V>(made: () => V): V {
  const outer = reader;
  reader = undefined;
  try {
    return made();
  } finally {
    reader = outer;
  }
}

/** The same, made when it is first asked for. */
export function readAside<V>(made: () => V): () => V {
  let known: { readonly value: V } | undefined;
  return () => (known ??= { value: madeAside(made) }).value;
}

/** A value that is a part by itself: whoever asks for it has read what it is, and not what it was made from. */
export function readAsPart<V>(name: string, made: () => V): () => V {
  const value = readAside(made);
  return () => {
    noteRead(name);
    return value();
  };
}
