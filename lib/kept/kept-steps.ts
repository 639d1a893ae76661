/**
 * Steps of the work kept by what they read. A step is no function of a few things that one could
 * list: it is followed while it reads, and kept with the names of the parts that it asked for and
 * the hash of each; while these are as they were, it would come out the same.
 */
import { deserialize, serialize } from "node:v8";
import { contentHash } from "./content-hash.ts";
import {
  keyOf,
  readResult,
  readValue,
  writeResult,
  writeValue,
  type Origin,
} from "./kept-result.ts";
import { lean } from "./lean-value.ts";
import { namesByOwner } from "./names-by-owner.ts";
import { partText, textHash, type PartHashes } from "./part-hashes.ts";
import { noteReadAgain, readBy, type ReadNames } from "./reads.ts";
import { hasRead, stepBook, type KeptStep, type StepBook, type Told } from "./step-book.ts";
import type { WorkCache } from "./work-cache.ts";

/** A step by its name, and the modules that take it. */
export interface Step extends Pick<Origin, "modules"> {
  readonly name: string;
  /** What it is taken of, where it is taken of many: those of one name are kept in one file. */
  readonly of?: string;
}

/** A step that is taken of many things. */
export type StepOfMany = Step & { readonly of: string };

/** Parts that a step read, by what they belong to: a member of a list, every member of one (`sheets/*`), or none (the empty name). */
export type PartsRead = readonly (readonly [
  owner: string,
  /** What the owner was by then, where that is known sooner than its parts. */
  identity: string,
  /** Of the parts. */
  hash: string,
  names: readonly string[],
])[];

/** A large value that was kept: what tells it from every other, and itself where it is still there. */
export interface FoundStep {
  readonly identity: string;
  /** What was kept beside it, to be known without reading it. */
  readonly sooner: unknown;
  readonly value: () => unknown;
}

export interface KeptSteps {
  /** What was kept of a step, else made now and kept; whoever asks has read what it was made from. */
  readonly made: <V>(step: Step, made: () => V) => V;
  /** The same of one that is taken of many, with what tells what it came out as: known without going through it where it was kept. */
  readonly told: <V>(step: StepOfMany, made: () => V) => Told<V>;
  /** A large value that was kept, where each part that it read is still as it was; it is read when it is asked for, which whoever asks has to note. */
  readonly found: (step: Step) => FoundStep | undefined;
  /** @param names of all parts that it read. @param identity tells the value from every other; the value can be cloned. @param sooner of the value, to be known without reading it. */
  readonly keep: (
    step: Step,
    names: ReadNames,
    identity: string,
    value: () => unknown,
    sooner?: unknown,
  ) => void;
  /** What was kept last in the place of a step, whatever that read: of use to whoever keeps in it what each part of it was made from. */
  readonly last: (step: Step) => unknown;
  readonly keepLast: (step: Step, value: unknown) => void;
  /** What parts of such names are now. @param before of an earlier time: of owners that are as they were then it is known. */
  readonly partsOf: (names: ReadNames, before?: PartsRead) => PartsRead;
  /** The same with what their owners are now, where all of them, and what every step may read, are as they were. */
  readonly stillAs: (parts: PartsRead) => PartsRead | undefined;
  /** Whether a member is another than when something of it was last kept. */
  readonly isAnother: (owner: string) => boolean;
  /** Keep what was taken of many for the next build. */
  readonly keepBooks: () => void;
  /** The same of one kind of step, for whoever takes it before this build is over. */
  readonly keepBook: (step: Pick<Step, "name">) => void;
}

/** A step out of what is kept, where anything is. */
export function madeStep<V>(steps: KeptSteps | undefined, step: Step, made: () => V): V {
  return steps === undefined ? made() : steps.made(step, made);
}

/** The same of many, each with what tells it. */
export function toldStep<V>(
  steps: KeptSteps | undefined,
  step: StepOfMany,
  made: () => V,
): Told<V> {
  return steps === undefined ? { value: made(), identity: undefined } : steps.told(step, made);
}

/**
 * @param always what every step may read without noting it.
 * @param hashes of what is there now by the name of a part.
 * @param withMembers names of what has members, of which one is read as another is.
 */
export function keptSteps(
  cache: WorkCache,
  always: unknown,
  hashes: PartHashes,
  withMembers: readonly string[],
): KeptSteps {
  const alike = textHash([partText(always)]);
  const known = new Map<string, string>();
  const lists = nameLists();
  const hashOf = (names: readonly string[], partOf = hashes.of): string => {
    // Held by its hash: of a large range the lists themselves would be more than what they tell of.
    const list = lists.hashOf(names);
    const hash = known.get(list) ?? textHash(names.flatMap((name) => [name, partOf(name)]));
    known.set(list, hash);
    return hash;
  };
  const byOwner = namesByOwner(withMembers, hashes.countOf);
  const partOf = (
    owner: string,
    names: readonly string[],
    earlier: PartsRead[number] | undefined,
  ): PartsRead[number] => {
    if (owner === "") return [owner, "", textHash([alike, hashOf(names)]), names];
    const identity = hashes.identityOf(owner) ?? "";
    return identity !== "" && earlier?.[1] === identity && areSame(earlier[3], names)
      ? earlier
      : [owner, identity, hashOf(names), names];
  };
  // Many steps read the same of one owner: of a large range what tells of that would be more than all that they make.
  const parts = new WeakMap<readonly string[], Map<string, PartsRead[number]>>();
  const partsOf = (read: ReadNames, before: PartsRead = []): PartsRead => {
    const earlier = new Map(before.map((part) => [part[0], part]));
    return [...byOwner(read)].map(([owner, own]) => {
      const names = lists.once(own);
      const known = parts.get(names) ?? new Map<string, PartsRead[number]>();
      parts.set(names, known);
      const part = known.get(owner) ?? partOf(owner, names, earlier.get(owner));
      // An owner that is not told yet may be told later.
      if (owner === "" || part[1] !== "") known.set(owner, part);
      return part;
    });
  };
  const stillOf = (part: PartsRead[number]): PartsRead[number] | undefined => {
    const [owner, identity, hash, names] = part;
    if (owner === "") return textHash([alike, hashOf(names)]) === hash ? part : undefined;
    const own = hashes.identityOf(owner) ?? "";
    if (own !== "" && own === identity) return part;
    // The owner is another since; remembered is what that is of which it is asked again and again.
    return hashOf(names, (name) => hashes.ofMember(owner, name)) === hash
      ? [owner, own, hash, names]
      : undefined;
  };
  const stillAs = (parts: PartsRead): PartsRead | undefined => {
    const now: PartsRead[number][] = [];
    for (const part of parts) {
      const still = stillOf(part);
      if (still === undefined) return undefined;
      now.push(still);
    }
    return now.every((part, i) => part === parts[i]) ? parts : now;
  };
  const keyOfStep = ({ modules, name }: Step): string | undefined =>
    keyOf(cache, { modules, inputs: ["a step", name, alike] });
  const write = (step: Step, kept: KeptStep): void => {
    const key = keyOfStep(step);
    if (key !== undefined) writeValue(cache, key, kept);
  };
  const lastOf = (step: Step): KeptStep | undefined => {
    const key = keyOfStep(step);
    return key === undefined ? undefined : (readValue(cache, key) as KeptStep | undefined);
  };
  const isStill = (kept: KeptStep): boolean => stillAs(kept.parts) !== undefined;
  const stillLast = (step: Step): KeptStep | undefined => {
    const kept = lastOf(step);
    return kept !== undefined && isStill(kept) ? kept : undefined;
  };
  const books = new Map<string, StepBook>();
  const bookOf = (step: Step): StepBook => {
    const known = books.get(step.name);
    if (known !== undefined) return known;
    const key = keyOfStep(step);
    const book = stepBook(key === undefined ? undefined : { cache, key }, { partsOf, stillAs });
    books.set(step.name, book);
    return book;
  };
  return {
    partsOf,
    stillAs,
    isAnother: hashes.isAnother,
    last: (step) => lastOf(step)?.value,
    keepLast: (step, value) => write(step, { parts: [], value }),
    keep: (step, names, identity, value, sooner) => {
      writeResult(cache, valueKey(identity), serialize(value()));
      const kept: KeptStep = { parts: partsOf(names), identity, value: sooner };
      if (step.of === undefined) write(step, kept);
      else bookOf(step).put(step.of, kept);
    },
    found: (step) => {
      const kept = step.of === undefined ? stillLast(step) : bookOf(step).found(step.of);
      if (kept?.identity === undefined) return undefined;
      const { identity, value: sooner } = kept;
      return {
        identity,
        sooner,
        value: () => {
          const bytes = readResult(cache, valueKey(identity));
          return bytes === undefined ? undefined : lean(deserialize(bytes) as unknown);
        },
      };
    },
    keepBook: ({ name }) => books.get(name)?.keep(),
    keepBooks: () => {
      for (const book of books.values()) book.keep();
    },
    told: (step, made) => bookOf(step).told(step.of, made),
    made: <V>(step: Step, made: () => V): V => {
      if (step.of !== undefined) return bookOf(step).made(step.of, made);
      const kept = lastOf(step);
      if (kept !== undefined && hasRead(kept.parts) && isStill(kept)) {
        for (const [, , , names] of kept.parts) noteReadAgain(names);
        return kept.value as V;
      }
      const { value, names } = readBy(made);
      write(step, { parts: partsOf(names, kept?.parts), value });
      return value;
    },
  };
}

/** Lists of names, much the same for many steps: each is held once, and hashed once. */
function nameLists(): {
  /** The list that says the same and was there first. */
  readonly once: (names: readonly string[]) => readonly string[];
  readonly hashOf: (names: readonly string[]) => string;
} {
  const hashes = new WeakMap<readonly string[], string>();
  const byHash = new Map<string, readonly string[]>();
  const hashOf = (names: readonly string[]): string => {
    const hash = hashes.get(names) ?? textHash([names.join("\n")]);
    hashes.set(names, hash);
    return hash;
  };
  return {
    hashOf,
    once: (names) => {
      const hash = hashOf(names);
      const first = byHash.get(hash) ?? names;
      byHash.set(hash, first);
      return first;
    },
  };
}

function areSame(one: readonly string[], other: readonly string[]): boolean {
  return one.length === other.length && one.every((name, i) => name === other[i]);
}

function valueKey(identity: string): string {
  return contentHash(["a value", identity]).toString("hex");
}
