import { noteRead } from "./reads.ts";

/** How finely it is noted what was read of a value. */
export type Grain =
  /** As one part. */
  | "whole"
  /** The same for every piece of work: it belongs to the key of each, and is not noted. */
  | "always"
  | { readonly each: Grain }
  /** Of a list whose members bear a slug, or go by that of their white. */
  | { readonly members: Grain }
  | { readonly keys: Readonly<Record<string, Grain>> };

/** A value whose reading is noted, and what each part of it is now. */
export interface Followed<V> {
  readonly value: V;
  /** The part of a name that was noted; undefined where there is none. */
  readonly part: (name: string) => unknown;
}

/** The names of what is there, and whether a member is there, themselves parts: whoever lists or looks up members reads them. */
const NAMES = "#";
const IS_THERE = "?";

/**
 * A value that notes what is read of it.
 * @param root what names of its parts begin with.
 */
export function followed<V extends object>(value: V, grain: Grain, root: string): Followed<V> {
  return {
    value: following(value, grain, root) as V,
    part: (name) => partOf(value, name.slice(root.length).split("/").slice(1)),
  };
}

/** A list of which it is noted that it was read, wherever it is handed on; its members note by themselves what is read of them. */
export function followedList<V>(list: readonly V[], root: string): readonly V[] {
  return new Proxy(list, {
    get: (target, key) => {
      noteRead(`${root}/${NAMES}`);
      return Reflect.get(target, key) as unknown;
    },
  });
}

/**
 * The same of a value that is loaded when something of it is first asked for.
 * @param known of it without loading it; nobody notes that it was read.
 * @param sooner likewise, of which it is noted.
 */
export function followedWhenAsked<V extends object>(
  load: () => V,
  keys: Readonly<Record<string, Grain>>,
  root: string,
  known: Partial<V> = {},
  sooner: Readonly<Record<string, unknown>> = {},
): Followed<V> {
  return {
    value: followedKeys({ load, known, sooner }, keys, root) as V,
    part: (name) => {
      const [first = "", ...rest] = name.slice(root.length).split("/").slice(1);
      return partOf(Object.hasOwn(sooner, first) ? sooner : load(), [first, ...rest]);
    },
  };
}

function partOf(value: unknown, [first, ...rest]: readonly string[]): unknown {
  if (first === undefined) return value;
  if (first === IS_THERE) return value !== undefined;
  if (typeof value !== "object" || value === null) return undefined;
  if (first === NAMES) return namesIn(value);
  return partOf(memberOf(value, first), rest);
}

function namesIn(value: object): readonly unknown[] {
  if (value instanceof Map) return [...(value as Map<unknown, unknown>).keys()];
  return Array.isArray(value) ? value.map(slugOf) : Object.keys(value);
}

function memberOf(value: object, name: string): unknown {
  if (value instanceof Map) return (value as ReadonlyMap<string, unknown>).get(name);
  return Array.isArray(value)
    ? value.find((one) => slugOf(one) === name)
    : (value as Readonly<Record<string, unknown>>)[name];
}

function slugOf(member: unknown): string {
  const { slug, white } = member as { readonly slug?: string; readonly white?: { slug: string } };
  return slug ?? white?.slug ?? "";
}

function following(value: unknown, grain: Grain, name: string): unknown {
  if (grain === "always") return value;
  if (typeof value !== "object" || value === null || grain === "whole") {
    noteRead(name);
    return value;
  }
  if (value instanceof Map)
    return new FollowedMap(
      value as ReadonlyMap<string, unknown>,
      "each" in grain ? grain.each : "whole",
      name,
    );
  if ("members" in grain && Array.isArray(value))
    return value.map((one) => following(one, grain.members, `${name}/${slugOf(one)}`));
  return "keys" in grain ? followedKeys({ load: () => value }, grain.keys, name) : value;
}

/** Names of parts are asked for again and again: each is one text for all who read it. */
function namesBelow(name: string, end = ""): (key: string) => string {
  const known = new Map<string, string>();
  return (key) => {
    const full = known.get(key) ?? `${name}/${key}${end}`;
    known.set(key, full);
    return full;
  };
}

interface Loading {
  readonly load: () => object;
  readonly known?: object;
  readonly sooner?: object;
}

function followedKeys(
  { load, known: unnoted = {}, sooner = {} }: Loading,
  keys: Readonly<Record<string, Grain>>,
  name: string,
): object {
  const known = new Map<string, unknown>();
  const nameOf = namesBelow(name);
  const isThere = namesBelow(name, `/${IS_THERE}`);
  return new Proxy(
    {},
    {
      get: (_, key) => {
        if (Object.hasOwn(unnoted, key)) return Reflect.get(unnoted, key) as unknown;
        const own: unknown = Reflect.get(Object.hasOwn(sooner, key) ? sooner : load(), key);
        if (typeof key !== "string") return own;
        const grain = keys[key] ?? "whole";
        if (typeof grain === "string" || typeof own !== "object" || own === null)
          return following(own, typeof grain === "string" ? grain : "whole", nameOf(key));
        noteRead(Array.isArray(own) ? `${nameOf(key)}/${NAMES}` : isThere(key));
        if (!known.has(key)) known.set(key, following(own, grain, nameOf(key)));
        return known.get(key);
      },
      has: (_, key) => {
        if (typeof key === "string") noteRead(isThere(key));
        return Reflect.has(load(), key);
      },
      ownKeys: () => {
        noteRead(`${name}/${NAMES}`);
        return Reflect.ownKeys(load());
      },
      getOwnPropertyDescriptor: (_, key) => {
        const own = Reflect.getOwnPropertyDescriptor(load(), key);
        return own && { ...own, configurable: true };
      },
    },
  );
}

/** Its members, made to note what is read of them when they are first asked for. */
class FollowedMap<V> extends Map<string, V> {
  readonly #all: ReadonlyMap<string, V>;
  readonly #grain: Grain;
  readonly #name: string;
  readonly #nameOf: (key: string) => string;
  readonly #isThere: (key: string) => string;
  readonly #known = new Map<string, V>();

  constructor(all: ReadonlyMap<string, V>, grain: Grain, name: string) {
    super();
    this.#all = all;
    this.#grain = grain;
    this.#name = name;
    this.#nameOf = namesBelow(name);
    this.#isThere = namesBelow(name, `/${IS_THERE}`);
  }

  #member(key: string): V {
    const own = this.#all.get(key);
    const name = this.#nameOf(key);
    if (typeof this.#grain === "string" || typeof own !== "object" || own === null)
      return following(own, typeof this.#grain === "string" ? this.#grain : "whole", name) as V;
    noteRead(this.#isThere(key));
    const known = this.#known.get(key) ?? (following(own, this.#grain, name) as V);
    this.#known.set(key, known);
    return known;
  }

  #names(): IterableIterator<string> {
    noteRead(`${this.#name}/${NAMES}`);
    return this.#all.keys();
  }

  override get size(): number {
    noteRead(`${this.#name}/${NAMES}`);
    return this.#all.size;
  }

  override get(key: string): V | undefined {
    return this.#member(key);
  }

  override has(key: string): boolean {
    noteRead(this.#isThere(key));
    return this.#all.has(key);
  }

  override keys(): MapIterator<string> {
    return this.#names() as MapIterator<string>;
  }

  override *values(): MapIterator<V> {
    for (const key of this.#names()) yield this.#member(key);
  }

  override *entries(): MapIterator<[string, V]> {
    for (const key of this.#names()) yield [key, this.#member(key)];
  }

  override [Symbol.iterator](): MapIterator<[string, V]> {
    return this.entries();
  }

  override forEach(told: (value: V, key: string, map: Map<string, V>) => void): void {
    for (const [key, value] of this.entries()) told(value, key, this);
  }
}
