/** Names of what was read, put together by what they belong to. */
import { partName, type PartsOfOwner, type ReadNames } from "./reads.ts";

/** Members of which a step reads the same are named one by one up to so many, and up to half of all; past that it is said to read all. */
const MOST_NAMED = 12;
export const EVERY = "*";
/** Pages read much the same: of so many names it is remembered what they are of every member; of a colour there are some 600. */
const MOST_REMEMBERED = 600_000;
/** Names of which so many stand together are put together once for all who share them, from the second on: of a large range an index names every colour. */
const MANY = 64;

/** What was read: names of no member; and of each part of members the one name or the names, or that of more it was read than are named. */
interface Reach {
  readonly alone: Set<string>;
  readonly shared: Map<string, string | Set<string>>;
}

/**
 * What was read, each part once, by what it belongs to: a member of a list, every member of one
 * (`sheets/*`), or none (the empty name). Parts that are read of many members are those of every one.
 * @param withMembers names of what has members, of which one is read as another is. @param countOf how many members one of these has.
 */
export function namesByOwner(
  withMembers: readonly string[],
  countOf: (list: string) => number,
): (names: ReadNames) => PartsOfOwner[] {
  const beginnings = new Map<string, string[]>();
  for (const list of withMembers)
    beginnings.set(list.charAt(0), [...(beginnings.get(list.charAt(0)) ?? []), `${list}/`]);
  const known = new Map<string, string>();
  // Of many names what they are of every member is the same text.
  const texts = new Map<string, string>();
  /** The same part of every member; the empty name of what is none of a member. */
  const everyOf = (name: string): string => {
    const before = known.get(name);
    if (before !== undefined) return before;
    const owner = ownerOf(name, beginnings);
    const own = owner === "" ? "" : ofEvery(owner, name);
    const every = texts.get(own) ?? own;
    texts.set(every, every);
    if (known.size >= MOST_REMEMBERED) known.clear();
    known.set(name, every);
    return every;
  };
  const addMember = (shared: Reach["shared"], every: string, name: string): void => {
    const own = shared.get(every);
    if (own === EVERY || own === name) return;
    if (own === undefined) shared.set(every, name);
    else if (typeof own === "string") shared.set(every, new Set([own, name]));
    else if (own.add(name).size > MOST_NAMED && 2 * own.size > countOf(listOf(every)))
      shared.set(every, EVERY);
  };
  const reaches = new WeakMap<object, Reach>();
  const met = new WeakSet<object>();
  const begun = new Set<object>();
  const addTo = ({ alone, shared }: Reach, name: string): void => {
    const every = everyOf(name);
    if (every === "") alone.add(name);
    else addMember(shared, every, name);
  };
  const addOwned = (reach: Reach, { owner, parts }: PartsOfOwner): void => {
    for (const part of parts) addTo(reach, partName(owner, part));
  };
  const addReach = (reach: Reach, { alone, shared }: Reach): void => {
    for (const name of alone) reach.alone.add(name);
    for (const [every, own] of shared)
      if (own === EVERY) reach.shared.set(every, EVERY);
      else for (const name of namesOf(own)) addMember(reach.shared, every, name);
  };
  /** What was closed before it was shared stays as it is: so that which names much is walked through once. */
  const reachOf = (names: ReadNames): Reach => {
    const reach: Reach = { alone: new Set(), shared: new Map() };
    begun.add(names);
    const visited = new Set([names]);
    for (const one of visited) {
      if (one !== names && one.held > MANY && met.has(one) && !begun.has(one)) {
        const before = reaches.get(one) ?? reachOf(one);
        reaches.set(one, before);
        addReach(reach, before);
        continue;
      }
      met.add(one);
      for (const shared of one.shared) visited.add(shared);
      for (const name of one.own) addTo(reach, name);
      for (const parts of one.owned) addOwned(reach, parts);
    }
    begun.delete(names);
    return reach;
  };
  return (names) => {
    const { alone, shared } = reachOf(names);
    const owned = new Map<string, string[]>([["", [...alone]]]);
    for (const [every, own] of shared) {
      const list = listOf(every);
      const part = every.slice(`${list}/${EVERY}/`.length);
      for (const name of own === EVERY ? [every] : namesOf(own)) {
        const owner = memberIn(name, list);
        const others = owned.get(owner);
        if (others === undefined) owned.set(owner, [part]);
        else others.push(part);
      }
    }
    return [...owned].map(([owner, parts]) => ({ owner, parts: parts.sort() }));
  };
}

function namesOf(own: string | ReadonlySet<string>): readonly string[] {
  return typeof own === "string" ? [own] : [...own];
}

/** The member of a list that a name belongs to. */
function memberIn(name: string, list: string): string {
  const end = name.indexOf("/", list.length + 1);
  return end === -1 ? name : name.slice(0, end);
}

/** @param beginnings of names of members, by their first letter: of a large range more names are asked for than are remembered. */
function ownerOf(name: string, beginnings: ReadonlyMap<string, readonly string[]>): string {
  const list = beginnings.get(name.charAt(0))?.find((one) => name.startsWith(one));
  if (list === undefined) return "";
  const end = name.indexOf("/", list.length);
  const owner = end === -1 ? name : name.slice(0, end);
  return owner.endsWith("/#") || owner.endsWith("/?") ? "" : owner;
}

/** Of a name of {@link ofEvery}. */
function listOf(every: string): string {
  return every.slice(0, every.indexOf(`/${EVERY}/`));
}

function ofEvery(owner: string, name: string): string {
  return `${owner.slice(0, owner.lastIndexOf("/"))}/${EVERY}/${name.slice(owner.length + 1)}`;
}
