/** Steps of one kind that are taken of many things, such as every colour: kept in one file, each by what it read. */
import type { KeptSteps, PartsRead } from "./kept-steps.ts";
import { contentHash } from "./content-hash.ts";
import { readValue, writeValue } from "./kept-result.ts";
import { keptSince, type SincePart } from "./kept-since.ts";
import { partText, textHash } from "./part-hashes.ts";
import { noteReadAgain, readBy } from "./reads.ts";
import type { WorkCache } from "./work-cache.ts";

export interface KeptStep {
  readonly parts: PartsRead;
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

/** @param place where it is kept; undefined keeps nothing. */
export function stepBook(
  place: { readonly cache: WorkCache; readonly key: string } | undefined,
  { partsOf, stillAs }: Pick<KeptSteps, "partsOf" | "stillAs">,
): StepBook {
  const now = new Map<string, KeptStep>();
  const before = keptSince(bookPart(place, "all"), bookPart(place, "since"));
  const found = (of: string): KeptStep | undefined => {
    const known = now.get(of);
    if (known !== undefined) return known;
    const kept = before.of(of);
    if (kept === undefined || !hasRead(kept.parts) || stillAs(kept.parts) === undefined)
      return undefined;
    now.set(of, kept);
    return kept;
  };
  const taken = (of: string, made: () => unknown, tells: (value: unknown) => object): KeptStep => {
    const known = found(of);
    if (known !== undefined) {
      for (const [, , , names] of known.parts) noteReadAgain(names);
      return known;
    }
    const { value, names } = readBy(made);
    const own = { parts: partsOf(names, before.of(of)?.parts), value, ...tells(value) };
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
      before.keep(now, (kept, of) => {
        const parts = hasRead(kept.parts) ? stillAs(kept.parts) : undefined;
        if (parts === undefined) return now.has(of) ? kept : undefined;
        return parts === kept.parts ? kept : { ...kept, parts };
      });
    },
  };
}

/** Whether anything was noted of what a step reads; one of which nothing was would stand for ever. */
export function hasRead(parts: PartsRead): boolean {
  return parts.some(([, , , names]) => names.length > 0);
}

function bookPart(
  place: { readonly cache: WorkCache; readonly key: string } | undefined,
  part: "all" | "since",
): SincePart<KeptStep> {
  if (place === undefined) return { read: () => new Map(), write: () => undefined };
  const { cache } = place;
  const key = part === "all" ? place.key : contentHash([place.key, part]).toString("hex");
  return {
    read: () => (readValue(cache, key) as ReadonlyMap<string, KeptStep> | undefined) ?? new Map(),
    write: (steps) => writeValue(cache, key, steps),
  };
}
