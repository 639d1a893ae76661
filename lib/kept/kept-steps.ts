/**
 * Steps of the work kept by what they read. A step is no function of a few things that one could
 * list: it is followed while it reads, and kept with the names of the parts that it asked for and
 * the hash of each; while these are as they were, it would come out the same.
 */
import { deserialize, serialize } from "node:v8";
import { contentHash } from "./content-hash.ts";
import { keyOf, readResult, writeResult, type Origin } from "./kept-result.ts";
import { noteRead, readBy } from "./reads.ts";
import type { WorkCache } from "./work-cache.ts";

/** A step by its name, and the modules that take it. */
export interface Step extends Pick<Origin, "modules"> {
  readonly name: string;
}

export interface KeptSteps {
  /** What was kept of a step, where each part that it read is still as it was. */
  readonly found: (step: Step) => unknown;
  /** @param names of all parts that it read. @param value that can be cloned. */
  readonly keep: (step: Step, names: ReadonlySet<string>, value: unknown) => void;
  /** What was kept of a step, else made now and kept; whoever asks has read what it was made from. */
  readonly made: <V>(step: Step, made: () => V) => V;
  /** Names with those put together that many members have: `sheets/EVERY/sheet/name`. */
  readonly widened: (names: ReadonlySet<string>) => string[];
  /** The hash of what parts of such names are now, and of what every step may read. */
  readonly partsOf: (names: readonly string[]) => string;
}

/** A step out of what is kept, where anything is. */
export function madeStep<V>(steps: KeptSteps | undefined, step: Step, made: () => V): V {
  return steps === undefined ? made() : steps.made(step, made);
}

interface KeptStep {
  readonly names: readonly string[];
  readonly parts: string;
  readonly value: unknown;
}

/** Members of which a step reads the same are named one by one up to so many; past that it is said to read all. */
const MOST_NAMED = 12;
const EVERY = "*";

/**
 * @param always what every step may read without noting it.
 * @param part what is there now by the name of a part.
 * @param lists names of what has members, of which one is read as another is.
 */
export function keptSteps(
  cache: WorkCache,
  always: unknown,
  part: (name: string) => unknown,
  lists: readonly string[],
): KeptSteps {
  const alike = contentHash([partText(always)]).toString("hex");
  const hashes = new Map<string, Buffer>();
  const hashOf = (name: string): Buffer => {
    const hash = hashes.get(name) ?? contentHash([...textsOf(name)]);
    hashes.set(name, hash);
    return hash;
  };
  function* textsOf(name: string): Generator<string | Uint8Array> {
    const [list, rest] = name.split(`/${EVERY}/`);
    if (list === undefined || rest === undefined) yield partText(part(name));
    else for (const member of membersOf(list)) yield* [member, hashOf(joined(list, member, rest))];
  }
  const membersOf = (list: string): readonly string[] =>
    (part(`${list}/#`) ?? []) as readonly string[];
  const known = new Map<string, string>();
  const partsOf = (names: readonly string[]): string => {
    const list = names.join("\n");
    const hash =
      known.get(list) ??
      contentHash([alike, ...names.flatMap((name) => [name, hashOf(name)])]).toString("hex");
    known.set(list, hash);
    return hash;
  };
  const widened = (names: ReadonlySet<string>): string[] => {
    const alone: string[] = [];
    const shared = new Map<string, string[]>();
    for (const name of names) {
      const every = everyMember(name, lists);
      if (every === undefined) alone.push(name);
      else shared.set(every, [...(shared.get(every) ?? []), name]);
    }
    const put = [...shared].flatMap(([every, own]) => (own.length > MOST_NAMED ? [every] : own));
    return [...alone, ...put].sort();
  };
  const keyOfStep = ({ modules, name }: Step): string | undefined =>
    keyOf(cache, { modules, inputs: ["a step", name, alike] });
  const found = (step: Step): KeptStep | undefined => {
    const key = keyOfStep(step);
    const bytes = key === undefined ? undefined : readResult(cache, key);
    if (bytes === undefined) return undefined;
    const kept = deserialize(bytes) as KeptStep;
    return partsOf(kept.names) === kept.parts ? kept : undefined;
  };
  const keep = (step: Step, read: ReadonlySet<string>, value: unknown): void => {
    const key = keyOfStep(step);
    if (key === undefined) return;
    const names = widened(read);
    writeResult(cache, key, serialize({ names, parts: partsOf(names), value } satisfies KeptStep));
  };
  return {
    widened,
    partsOf,
    keep,
    found: (step) => found(step)?.value,
    made: <V>(step: Step, made: () => V): V => {
      const kept = found(step);
      if (kept !== undefined) {
        kept.names.forEach(noteRead);
        return kept.value as V;
      }
      const { value, names } = readBy(made);
      keep(step, names, value);
      return value;
    },
  };
}

function joined(list: string, member: string, rest: string): string {
  return rest === "" ? `${list}/${member}` : `${list}/${member}/${rest}`;
}

/** The name of the same of every member; undefined for what is none of a member. */
function everyMember(name: string, lists: readonly string[]): string | undefined {
  const list = lists.find((one) => name.startsWith(`${one}/`));
  if (list === undefined) return undefined;
  const [member, ...rest] = name.slice(list.length + 1).split("/");
  return member === "#" ? undefined : `${list}/${EVERY}/${rest.join("/")}`;
}

/** Any part as text, the same of what was made now and of what was kept. Of a function nothing is told: what it goes by is a part of its own. */
function partText(part: unknown): string {
  if (part === undefined) return "not there";
  return isJson(part)
    ? JSON.stringify(part)
    : JSON.stringify(part, function (this: Readonly<Record<string, unknown>>, key, value: unknown) {
        const own = this[key];
        if (own instanceof Uint8Array) return { bytes: contentHash([own]).toString("hex") };
        if (ArrayBuffer.isView(own)) return { numbers: [...(own as Float64Array)] };
        if (typeof own === "function") return { "a function": own.length };
        if (own instanceof Map) return { "a map": [...(own as ReadonlyMap<unknown, unknown>)] };
        if (own instanceof Set) return { "a set": [...(own as ReadonlySet<unknown>)] };
        if (typeof own === "number" && !Number.isFinite(own)) return { "no number": String(own) };
        return value;
      });
}

/** Whether JSON tells all of it, and quickly. */
function isJson(part: unknown): boolean {
  if (typeof part === "number") return Number.isFinite(part);
  if (typeof part === "function") return false;
  if (typeof part !== "object" || part === null) return true;
  if (Array.isArray(part)) return part.every(isJson);
  if (part instanceof Map || part instanceof Set || ArrayBuffer.isView(part)) return false;
  return Object.values(part).every(isJson);
}
