/**
 * Steps of the work kept by what they read. A step is no function of a few things that one could
 * list: it is followed while it reads, and kept with the names of the parts that it asked for and
 * the time when it was taken; while these are what they were by then, it would come out the same.
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
import { partText, textHash } from "./part-hashes.ts";
import type { PartTimes } from "./part-times.ts";
import { noteReadAgain, readBy, type PartsOfOwner, type ReadNames } from "./reads.ts";
import {
  stepBook,
  type KeptStep,
  type StepBook,
  type StepTimes,
  type TakenStep,
  type Told,
} from "./step-book.ts";
import type { WorkCache } from "./work-cache.ts";

/** This module, by whose imports it goes how steps are written down. */
const KEPT_BY = "lib/kept/kept-steps.ts";

/** A step by its name, and the modules that take it. */
export interface Step extends Pick<Origin, "modules"> {
  readonly name: string;
  /** What it is taken of, where it is taken of many: those of one name are kept in one file. */
  readonly of?: string;
}

/** A step that is taken of many things. */
export type StepOfMany = Step & { readonly of: string };

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
  /** Whether a member is another than when something of it was last kept by a build before this one. */
  readonly isAnother: (owner: string) => boolean;
  /** Keep what was taken for the next build. */
  readonly keepBooks: () => void;
  /** The same of one kind of step that is taken of many, and of those of one, for whoever takes them before this build is over. */
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
 * @param times of what is there now.
 * @param withMembers names of what has members, of which one is read as another is.
 */
export function keptSteps(
  cache: WorkCache,
  always: unknown,
  times: PartTimes,
  withMembers: readonly string[],
): KeptSteps {
  const alike = textHash([partText(always)]);
  const byOwner = namesByOwner(withMembers, times.countOf);
  const shared = sharedParts();
  const ofSteps: StepTimes = {
    taken: (names) => {
      const parts = byOwner(names).map(shared);
      times.note(parts);
      return { parts, time: times.now() };
    },
    // One of which nothing was noted would stand for ever.
    stands: ({ parts, time }) =>
      parts.some(({ parts: own }) => own.length > 0) && times.areSince(time, parts),
    now: times.now,
  };
  const keyOfStep = ({ modules, name }: Step): string | undefined =>
    keyOf(cache, { modules: [...modules, KEPT_BY], inputs: ["a step", name, alike] });
  const write = (step: Step, kept: KeptStep): void => {
    const key = keyOfStep(step);
    if (key !== undefined) writeValue(cache, key, kept);
  };
  const lastOf = (step: Step): KeptStep | undefined => {
    const key = keyOfStep(step);
    return key === undefined ? undefined : (readValue(cache, key) as KeptStep | undefined);
  };
  const stillLast = (step: Step): KeptStep | undefined => {
    const kept = lastOf(step);
    return kept !== undefined && ofSteps.stands(kept) ? kept : undefined;
  };
  const books = new Map<string, StepBook>();
  const bookOf = (step: Step): StepBook => {
    const known = books.get(step.name);
    if (known !== undefined) return known;
    const key = keyOfStep(step);
    const book = stepBook(key === undefined ? undefined : { cache, key }, ofSteps);
    books.set(step.name, book);
    return book;
  };
  return {
    isAnother: times.isAnother,
    last: (step) => lastOf(step)?.value,
    keepLast: (step, value) => write(step, { ...OF_NO_TIME, value }),
    keep: (step, names, identity, value, sooner) => {
      writeResult(cache, valueKey(identity), serialize(value()));
      const kept: KeptStep = { ...ofSteps.taken(names), identity, value: sooner };
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
    keepBook: ({ name }) => {
      books.get(name)?.keep();
      times.keep();
    },
    keepBooks: () => {
      for (const book of books.values()) book.keep();
      times.keep();
    },
    told: (step, made) => bookOf(step).told(step.of, made),
    made: <V>(step: Step, made: () => V): V => {
      if (step.of !== undefined) return bookOf(step).made(step.of, made);
      const kept = stillLast(step);
      if (kept !== undefined) {
        noteReadAgain(kept.parts);
        return kept.value as V;
      }
      const { value, names } = readBy(made);
      write(step, { ...ofSteps.taken(names), value });
      return value;
    },
  };
}

const OF_NO_TIME: TakenStep = { parts: [], time: "" };

/** Many steps read the same of one owner, and the same parts of many owners: each list is held once, and written once in a book. */
function sharedParts(): (parts: PartsOfOwner) => PartsOfOwner {
  const lists = new Map<string, readonly string[]>();
  const ofOwners = new WeakMap<readonly string[], Map<string, PartsOfOwner>>();
  return ({ owner, parts: own }) => {
    const text = textHash(own);
    const parts = lists.get(text) ?? own;
    lists.set(text, parts);
    const owners = ofOwners.get(parts) ?? new Map<string, PartsOfOwner>();
    ofOwners.set(parts, owners);
    const shared = owners.get(owner) ?? { owner, parts };
    owners.set(owner, shared);
    return shared;
  };
}

function valueKey(identity: string): string {
  return contentHash(["a value", identity]).toString("hex");
}
