/** Steps of one kind that are taken of many things, such as every colour: kept in one file, each by what it read. */
import { contentHash } from "./content-hash.ts";
import { readValue, writeValue } from "./kept-result.ts";
import type { NamedValues } from "./kept-bodies.ts";
import { keptSince, type SincePart } from "./kept-since.ts";
import { packedSteps, unpackedSteps } from "./packed-steps.ts";
import { partText, textHash } from "./part-hashes.ts";
import { noteReadAgain, readBy, type PartsOfOwner, type ReadNames } from "./reads.ts";
import type { WorkCache } from "./work-cache.ts";

/** What a step has read, and when it was taken. */
export interface TakenStep {
  readonly parts: readonly PartsOfOwner[];
  /** A time of `part-times.ts`; none is kept of what is kept whatever it read. */
  readonly time: string;
}

export interface KeptStep extends TakenStep {
  /** The value; of one that is kept by itself what is known of it sooner. */
  readonly value?: unknown;
  /** Of a value that is kept by itself, or is told by what it came out as. */
  readonly identity?: string;
}

/** A value, and what tells it from every other. */
export interface Told<V> {
  readonly value: V;
  /** Undefined where nothing is kept. */
  readonly identity: string | undefined;
}

export interface StepBook {
  /** What was kept of a thing, else made now; whoever asks has read what it was made from. */
  readonly made: <V>(of: string, made: () => V) => V;
  /** The same, told by what it came out as. */
  readonly told: <V>(of: string, made: () => V) => Told<V>;
  /** What was kept of a thing, where all that it read is as it was. */
  readonly found: (of: string) => KeptStep | undefined;
  readonly put: (of: string, kept: KeptStep) => void;
  /** Write it down for the next build, where it says something else than before. */
  readonly keep: () => void;
}

/** How steps are told. */
export interface StepTimes {
  readonly taken: (names: ReadNames) => TakenStep;
  /** Whether a step would come out the same now. */
  readonly stands: (step: TakenStep) => boolean;
  readonly now: () => string;
}

/** @param place where it is kept; undefined keeps nothing. */
export function stepBook(
  place: { readonly cache: WorkCache; readonly key: string } | undefined,
  times: StepTimes,
): StepBook {
  const now = new Map<string, KeptStep>();
  const before = keptSince(bookPart(place, "all"), bookPart(place, "since"));
  const found = (of: string): KeptStep | undefined => {
    const known = now.get(of);
    if (known !== undefined) return known;
    const kept = before.of(of);
    if (kept === undefined || !times.stands(kept)) return undefined;
    now.set(of, kept);
    return kept;
  };
  const taken = (of: string, made: () => unknown, tells: (value: unknown) => object): KeptStep => {
    const known = found(of);
    if (known !== undefined) {
      noteReadAgain(known.parts);
      return known;
    }
    const { value, names } = readBy(made);
    const own = { ...times.taken(names), value, ...tells(value) };
    now.set(of, own);
    return own;
  };
  return {
    found,
    put: (of, kept) => now.set(of, kept),
    made: <V>(of: string, made: () => V) => taken(of, made, () => ({})).value as V,
    told: <V>(of: string, made: () => V) =>
      taken(of, made, (value) => ({ identity: textHash([partText(value)]) })) as Told<V>,
    keep: () => {
      if (place?.cache.keeps !== true) return;
      // What nobody asked for this time stays for as long as it would be right.
      before.keep(now, (kept) => (times.stands(kept) ? { ...kept, time: times.now() } : undefined));
    },
  };
}

function bookPart(
  place: { readonly cache: WorkCache; readonly key: string } | undefined,
  part: "all" | "since",
): SincePart<KeptStep> {
  if (place === undefined) return { read: () => new Map(), write: () => undefined };
  const { cache } = place;
  const key = part === "all" ? place.key : contentHash([place.key, part]).toString("hex");
  return {
    read: () =>
      (readValue(cache, key, unpackedSteps) as NamedValues<KeptStep> | undefined) ?? new Map(),
    write: (steps) => writeValue(cache, key, steps, packedSteps),
  };
}
