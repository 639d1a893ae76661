/**
 * When parts became others. A step is kept with the time when it was taken, and of each part that any
 * step has read it is kept since when it has been what it is: a step stands while all that it read has
 * been so since before it was taken. Of a member that is what it was no part is looked at.
 */
import { randomUUID } from "node:crypto";
import { keptOwners, type KeptOwner } from "./kept-owners.ts";
import { EVERY } from "./names-by-owner.ts";
import { partHash } from "./part-hashes.ts";
import { partName, type PartsOfOwner } from "./reads.ts";
import type { WorkCache } from "./work-cache.ts";

/** What there is now: parts, and what members are by where that is known sooner. */
export interface PartsNow {
  readonly part: (name: string) => unknown;
  readonly identity: (owner: string) => string | undefined;
}

export interface PartTimes {
  /** By which a step that is taken now is told: no earlier build knows of it, and no later one unless what parts are by now is kept. */
  readonly now: () => string;
  /** Whether all these parts are what they were at a time. */
  readonly areSince: (then: string, read: readonly PartsOfOwner[]) => boolean;
  /** Note what parts are that a step has read now. */
  readonly note: (read: readonly PartsOfOwner[]) => void;
  /** Whether a member is another than when its parts were last kept by a build before this one. */
  readonly isAnother: (owner: string) => boolean;
  /** How many members a list has. */
  readonly countOf: (list: string) => number;
  /** Keep for the next build what parts are by now. */
  readonly keep: () => void;
}

/** A part: its hash, since when it has been that, and when that was last seen. Times are counted. */
type PartSince = readonly [hash: string, since: number, seen: number];
type Parts = Map<string, PartSince>;

/** A member, every member of a list, or what has no owner: what tells it, since when, and those parts of it that steps have read. */
interface Owner {
  readonly identity: string;
  readonly since: number;
  readonly parts: () => Parts;
}

/** The time that a build began with, in each history: what is worked out ahead keeps a time of its own before the build is over. */
const beginnings = new WeakMap<WorkCache, Map<string, number>>();

function begunWith(cache: WorkCache, of: string, time: number): number {
  const own = beginnings.get(cache) ?? new Map<string, number>();
  beginnings.set(cache, own);
  const begun = own.get(of) ?? time;
  own.set(of, begun);
  return begun;
}

/** @param of what the parts are of, as the sheets in one language. */
export function partTimes(cache: WorkCache, of: string, now: PartsNow): PartTimes {
  const kept = keptOwners(cache, of);
  let { times } = kept;
  const next = kept.before + times.length;
  const begun = begunWith(cache, of, next);
  const numbers = new Map(times.map((time, i) => [time, kept.before + i]));
  /** The time that it is, and its name; the next begins when this one is kept. */
  let [time, name] = [next, timeName()];
  numbers.set(name, time);
  let isTold = false;
  const owners = new Map<string, Owner>();
  const touched = new Set<string>();

  const partNow = (owner: string, part: string): string =>
    partHash(now.part(partName(owner, part)));
  const identityNow = (owner: string): string => now.identity(owner) ?? partNow(owner, "");
  const ownerNow = (owner: string): Owner => {
    const known = owners.get(owner);
    if (known !== undefined) return known;
    const before = kept.of(owner);
    const isOne = owner !== "" && !owner.endsWith(`/${EVERY}`);
    const identity = isOne ? identityNow(owner) : "";
    // What has no owner is looked at in every build.
    const isSame = before !== undefined && before.identity === identity && owner !== "";
    let parts: Parts | undefined;
    const own: Owner = {
      identity,
      since: isSame ? before.since : time,
      parts: () => (parts ??= partsIn(before?.parts)),
    };
    owners.set(owner, own);
    if (!isSame && isOne) touched.add(owner);
    return own;
  };
  const sincePart = (owner: string, part: string): number => {
    const own = ownerNow(owner);
    const known = own.parts().get(part);
    if (known !== undefined && known[2] >= own.since) return known[1];
    const hash = partNow(owner, part);
    const since = known?.[0] === hash ? known[1] : time;
    own.parts().set(part, [hash, since, time]);
    if (owner !== "" || since === time) touched.add(owner);
    return since;
  };
  const lists = new Map<string, readonly string[]>();
  const namesIn = (list: string): readonly string[] => {
    const known = lists.get(list) ?? ((now.part(`${list}/#`) ?? []) as readonly string[]);
    lists.set(list, known);
    return known;
  };
  /** Members of a list that became others after a time. */
  const othersSince = remembering((list: string, then: number) =>
    namesIn(list)
      .map((member) => `${list}/${member}`)
      .filter((member) => ownerNow(member).since > then),
  );
  const isPartSince = (then: number, read: PartsOfOwner): boolean => {
    const { owner } = read;
    if (!owner.endsWith(`/${EVERY}`))
      return (
        (owner !== "" && ownerNow(owner).since <= then) ||
        read.parts.every((part) => sincePart(owner, part) <= then)
      );
    const list = listOf(owner);
    return (
      sincePart("", `${list}/#`) <= then &&
      othersSince(list, then).every((member) =>
        read.parts.every((part) => sincePart(member, part) <= then),
      )
    );
  };
  // Steps of one kind share what they read, and many of them the time.
  const told = new Map<number, Map<PartsOfOwner, boolean>>();
  const areAllSince = (then: number, read: readonly PartsOfOwner[]): boolean => {
    const known = told.get(then) ?? new Map<PartsOfOwner, boolean>();
    told.set(then, known);
    return read.every((one) => {
      const before = known.get(one);
      if (before !== undefined) return before;
      const is = isPartSince(then, one);
      known.set(one, is);
      return is;
    });
  };
  /** Of every member: those have been noted that are what they were when this was noted last. */
  const noteEvery = (owner: string, part: string): void => {
    const list = listOf(owner);
    const parts = ownerNow(owner).parts();
    const seen = parts.get(part)?.[2] ?? -1;
    if (seen === time) return;
    sincePart("", `${list}/#`);
    const others = othersSince(list, seen);
    for (const member of others) sincePart(member, part);
    if (others.length === 0 && seen !== -1) return;
    parts.set(part, ["", time, time]);
    touched.add(owner);
  };
  return {
    now: () => {
      isTold = true;
      return name;
    },
    areSince: (then, read) => {
      const number = numbers.get(then);
      return number !== undefined && areAllSince(number, read);
    },
    note: (read) => {
      for (const { owner, parts } of read)
        for (const part of parts)
          if (owner.endsWith(`/${EVERY}`)) noteEvery(owner, part);
          else sincePart(owner, part);
    },
    isAnother: (owner) => ownerNow(owner).since >= begun,
    countOf: (list) => namesIn(list).length,
    keep: () => {
      if (!cache.keeps || (!isTold && touched.size === 0)) return;
      times = [...times, name];
      kept.keep(
        new Map([...touched].map((owner) => [owner, asKept(ownerNow(owner))])),
        times,
        (owner) => owners.has(owner) || now.identity(owner) !== undefined,
      );
      [time, name, isTold] = [time + 1, timeName(), false];
      numbers.set(name, time);
      touched.clear();
    },
  };
}

function asKept({ identity, since, parts }: Owner): KeptOwner {
  return { identity, since, parts: Buffer.from(JSON.stringify([...parts()])) };
}

function partsIn(parts: Uint8Array | undefined): Parts {
  return new Map(
    parts === undefined
      ? []
      : (JSON.parse(Buffer.from(parts).toString()) as readonly (readonly [string, PartSince])[]),
  );
}

function timeName(): string {
  return randomUUID().slice(0, 13);
}

function listOf(owner: string): string {
  return owner.slice(0, -EVERY.length - 1);
}

function remembering<V>(
  made: (list: string, then: number) => V,
): (list: string, then: number) => V {
  const known = new Map<string, V>();
  return (list, then) => {
    const name = `${then} ${list}`;
    const value = known.get(name) ?? made(list, then);
    known.set(name, value);
    return value;
  };
}
