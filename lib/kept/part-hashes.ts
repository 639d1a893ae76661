/**
 * What parts are now, each as a hash. Of what belongs to a member of a list the hash is remembered
 * from one build to the next for as long as the member is what it was, so that it need not be loaded.
 */
import { contentHash } from "./content-hash.ts";
import { readKept, writeKept } from "./kept-file.ts";
import { keptSince, type SincePart } from "./kept-since.ts";
import type { WorkCache } from "./work-cache.ts";

export interface PartHashes {
  /** Of a part by its name, or of the same part of every member: `sheets/EVERY/sheet/name`. */
  readonly of: (name: string) => string;
  /** Of a part of a member, remembered for as long as that is what it is now. */
  readonly ofMember: (owner: string, name: string) => string;
  /** Of all that belongs to a member, or to every member; undefined of what is not there. */
  readonly identityOf: (owner: string) => string | undefined;
  /** Whether a member is another than when hashes of its parts were last kept. */
  readonly isAnother: (owner: string) => boolean;
  /** How many members a list has. */
  readonly countOf: (list: string) => number;
  /** Keep those that are worth it for the next build. */
  readonly keep: () => void;
}

/** What there is now: parts, and what members are by where that is known sooner. */
export interface PartsNow {
  readonly part: (name: string) => unknown;
  readonly identity: (owner: string) => string | undefined;
}

/** What an owner was, and hashes of its parts by their names. */
type OwnHashes = readonly [identity: string, hashes: Readonly<Record<string, string>>];

const EVERY = "*";

/** @param of what the parts are of, as the sheets in one language. */
export function partHashes(
  cache: WorkCache,
  of: string,
  { part, identity: sooner }: PartsNow,
): PartHashes {
  const kept = keptSince(hashesIn(cache, `parts-${of}`), hashesIn(cache, `parts-${of}-since`));
  /** What members are now, each with the hashes of its parts that are known of that. */
  const now = new Map<string, OwnHashes>();
  const memberNow = (owner: string): OwnHashes | undefined => {
    const known = now.get(owner);
    const identity = known === undefined ? sooner(owner) : undefined;
    if (identity === undefined) return known;
    const earlier = kept.of(owner);
    const own = earlier?.[0] === identity ? earlier : ([identity, {}] as const);
    now.set(owner, own);
    return own;
  };
  // Members of which hashes were told since they were kept last.
  const told = new Map<string, Record<string, string>>();
  const known = new Map<string, string>();
  const membersOf = (list: string): readonly string[] =>
    (part(`${list}/#`) ?? []) as readonly string[];
  const counts = new Map<string, number>();
  const once = (name: string, made: () => string): string => {
    const hash = known.get(name) ?? made();
    known.set(name, hash);
    return hash;
  };
  const hashOf = (name: string): string =>
    once(name, () => {
      const [list, rest] = name.split(`/${EVERY}/`);
      if (list === undefined || rest === undefined) return partHash(part(name));
      return textHash(
        membersOf(list).flatMap((member) => [member, ofMember(`${list}/${member}`, rest)]),
      );
    });
  /** With what is remembered a member that has not changed is left alone. */
  const ofMember = (owner: string, rest: string): string => {
    const own = memberNow(owner);
    // A name is whatever was asked for, and of an object much more can be asked than it has.
    const known = own !== undefined && Object.hasOwn(own[1], rest) ? own[1][rest] : undefined;
    if (known !== undefined) return known;
    const hash = hashOf(rest === "" ? owner : `${owner}/${rest}`);
    if (own === undefined) return hash;
    const hashes = told.get(owner) ?? { ...own[1] };
    hashes[rest] = hash;
    if (!told.has(owner)) now.set(owner, [own[0], hashes]);
    told.set(owner, hashes);
    return hash;
  };
  const identityOf = (owner: string): string => memberNow(owner)?.[0] ?? hashOf(owner);
  return {
    of: hashOf,
    ofMember: (owner, name) =>
      owner.endsWith(`/${EVERY}`) ? hashOf(name) : ofMember(owner, name.slice(owner.length + 1)),
    identityOf: (owner) => {
      if (!owner.endsWith(`/${EVERY}`)) return identityOf(owner);
      const list = owner.slice(0, -EVERY.length - 1);
      return once(`${owner} `, () =>
        textHash(membersOf(list).flatMap((member) => [member, identityOf(`${list}/${member}`)])),
      );
    },
    isAnother: (owner) => kept.of(owner)?.[0] !== memberNow(owner)?.[0],
    countOf: (list) => {
      const count = counts.get(list) ?? membersOf(list).length;
      counts.set(list, count);
      return count;
    },
    keep: () => {
      if (!cache.keeps || told.size === 0) return;
      told.clear();
      kept.keep(now, (own, owner) =>
        now.has(owner) || sooner(owner) === own[0] ? own : undefined,
      );
    },
  };
}

function hashesIn(cache: WorkCache, name: string): SincePart<OwnHashes> {
  const file = `${name}.json`;
  return {
    read: () => {
      const kept = readKept(cache.folder, file, cache.held) ?? {};
      return new Map(Object.entries(kept as Readonly<Record<string, OwnHashes>>));
    },
    write: (hashes) => writeKept(cache.folder, file, Object.fromEntries(hashes), cache.held),
  };
}

/** Of a hash as it is kept: 144 bits, which are letters without a rest. A text cut out of a longer one would hold that. */
const HASH_BYTES = 18;

export function textHash(parts: Iterable<string>): string {
  return contentHash(parts).subarray(0, HASH_BYTES).toString("base64url");
}

/** Of things that are the same ones in the next build of the same process, as records whose files were left alone. */
const knownHashes = new WeakMap<object, string>();

/** Of a part as it is now. */
export function partHash(part: unknown): string {
  if (typeof part !== "object" || part === null) return textHash([partText(part)]);
  const hash = knownHashes.get(part) ?? textHash([partText(part)]);
  knownHashes.set(part, hash);
  return hash;
}

/** Any part as text, the same of what was made now and of what was kept. Of a function nothing is told: what it goes by is a part of its own. */
export function partText(part: unknown): string {
  return part === undefined ? "not there" : JSON.stringify(asJson(part));
}

/** What JSON tells nothing of, or at length, as something that it does: of bytes their hash. What it tells all of is itself, and not copied. */
function asJson(part: unknown): unknown {
  if (typeof part === "function") return { "a function": part.length };
  if (typeof part === "number" && !Number.isFinite(part)) return { "no number": String(part) };
  if (typeof part !== "object" || part === null) return part;
  if (Array.isArray(part)) return listAsJson(part);
  if (part instanceof Uint8Array) return { bytes: contentHash([part]).toString("hex") };
  if (ArrayBuffer.isView(part)) return { numbers: [...(part as Float64Array)] };
  if (part instanceof Map) return { "a map": asJson([...(part as ReadonlyMap<unknown, unknown>)]) };
  if (part instanceof Set) return { "a set": asJson([...(part as ReadonlySet<unknown>)]) };
  return membersAsJson(part as Readonly<Record<string, unknown>>);
}

function listAsJson(list: readonly unknown[]): readonly unknown[] {
  let told: unknown[] | undefined;
  for (let i = 0; i < list.length; i++) {
    const own = asJson(list[i]);
    if (own !== list[i]) (told ??= [...list])[i] = own;
  }
  return told ?? list;
}

function membersAsJson(thing: Readonly<Record<string, unknown>>): object {
  let told: Record<string, unknown> | undefined;
  for (const key of Object.keys(thing)) {
    const own = asJson(thing[key]);
    if (own !== thing[key]) (told ??= { ...thing })[key] = own;
  }
  return told ?? thing;
}

/** Whether JSON tells all of it, and quickly. */
export function isJson(part: unknown): boolean {
  if (typeof part === "number") return Number.isFinite(part);
  if (typeof part === "function") return false;
  if (typeof part !== "object" || part === null) return true;
  if (Array.isArray(part)) return part.every(isJson);
  if (part instanceof Map || part instanceof Set || ArrayBuffer.isView(part)) return false;
  return Object.values(part).every(isJson);
}
