/** What owners of parts are known by from one build to the next, in two files: all of them, and those that have become others since. */
import { randomUUID } from "node:crypto";
import { bodiesIn, namedValues, withBodies, type NamedValues } from "./kept-bodies.ts";
import { keyOf, readValue, writeValue } from "./kept-result.ts";
import { areFewApart } from "./kept-since.ts";
import type { WorkCache } from "./work-cache.ts";

/** As it is kept, its parts as JSON: of most owners none is looked at. */
export interface KeptOwner {
  readonly identity: string;
  readonly since: number;
  readonly parts: Uint8Array;
}

/** All owners, and those that have become others since they were written down: only together they tell anything. */
interface KeptAll {
  readonly id: string;
  readonly owners: NamedValues<KeptOwner>;
}
interface KeptSince {
  readonly of: string;
  readonly owners: NamedValues<KeptOwner>;
  /** Names of times, and how many went before the first of them. */
  readonly times: readonly string[];
  readonly before: number;
}

/** A step of an older time is taken anew. Our own choice. */
const MOST_TIMES = 2000;

export interface KeptOwners extends Pick<KeptSince, "times" | "before"> {
  readonly of: (owner: string) => KeptOwner | undefined;
  /** @param isStill whether one that is not among these is worth being written again. */
  readonly keep: (
    others: ReadonlyMap<string, KeptOwner>,
    times: readonly string[],
    isStill: (owner: string) => boolean,
  ) => void;
}

const NONE: KeptAll = { id: "", owners: new Map() };

/** @param of what the parts are of, as the sheets in one language. */
export function keptOwners(cache: WorkCache, of: string): KeptOwners {
  const [keyOfAll, keyOfSince] = ["all", "since"].map((what) =>
    keyOf(cache, { modules: ["lib/kept/part-times.ts"], inputs: ["times of parts", of, what] }),
  );
  const read = (key: string | undefined): unknown =>
    key === undefined ? undefined : readValue(cache, key, unpacked);
  let all = (read(keyOfAll) ?? NONE) as KeptAll;
  let since = read(keyOfSince) as KeptSince | undefined;
  // What a build has left that was killed between the two counts for nothing.
  if (since?.of !== all.id)
    [all, since] = [NONE, { of: NONE.id, owners: new Map(), times: [], before: 0 }];
  const { times, before } = since;
  return {
    times,
    before,
    of: (owner) => since?.owners.get(owner) ?? all.owners.get(owner),
    keep: (others, named, isStill) => {
      if (keyOfAll === undefined || keyOfSince === undefined) return;
      const gone = Math.max(0, named.length - MOST_TIMES);
      const told = { times: named.slice(gone), before: before + gone };
      const apart = new Map([...(since?.owners ?? []), ...others]);
      if (all === NONE || !areFewApart(apart.size, all.owners.size)) {
        const whole = [...new Map([...all.owners, ...apart])];
        all = {
          id: randomUUID(),
          owners: new Map(whole.filter(([owner]) => others.has(owner) || isStill(owner))),
        };
        writeValue(cache, keyOfAll, all, packed);
        apart.clear();
      }
      since = { of: all.id, owners: apart, ...told };
      writeValue(cache, keyOfSince, since, packed);
    },
  };
}

/** What is written down beside the parts of each owner. */
interface PackedOwners {
  readonly beside: object;
  readonly names: readonly string[];
  readonly identities: readonly string[];
  readonly since: Float64Array;
}

function packed({ owners, ...beside }: KeptAll | KeptSince): Uint8Array {
  const all = [...owners];
  const head: PackedOwners = {
    beside,
    names: all.map(([name]) => name),
    identities: all.map(([, { identity }]) => identity),
    since: Float64Array.from(all, ([, { since }]) => since),
  };
  return withBodies(
    head,
    all.map(([, { parts }]) => parts),
  );
}

function unpacked(bytes: Uint8Array): unknown {
  const { head, body } = bodiesIn<PackedOwners>(bytes);
  const { beside, names, identities, since } = head;
  const owners = namedValues(names, (i): KeptOwner => ({
    identity: identities[i] ?? "",
    since: since[i] ?? 0,
    parts: body(i),
  }));
  return { ...beside, owners };
}
