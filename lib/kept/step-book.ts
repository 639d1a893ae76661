/** Steps of one kind that are taken of many things, such as every colour: kept in one file, each by what it read. */
import type { KeptSteps, PartsRead } from "./kept-steps.ts";
import { readValue, writeValue } from "./kept-result.ts";
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
  let earlier: ReadonlyMap<string, KeptStep> | undefined;
  const before = (): ReadonlyMap<string, KeptStep> => (earlier ??= readBook(place));
  // Told by what their owners are now, and else as they are written down: they are found again by either.
  const told = new WeakSet<KeptStep>();
  const stillIn = (of: string): KeptStep | undefined => {
    const kept = before().get(of);
    const parts = kept !== undefined && hasRead(kept.parts) ? stillAs(kept.parts) : undefined;
    if (kept === undefined || parts === undefined) return undefined;
    if (parts === kept.parts) return kept;
    const moved = { ...kept, parts };
    told.add(moved);
    return moved;
  };
  const found = (of: string): KeptStep | undefined => {
    const known = now.get(of) ?? stillIn(of);
    if (known !== undefined) now.set(of, known);
    return known;
  };
  const taken = (of: string, made: () => unknown, tells: (value: unknown) => object): KeptStep => {
    const known = found(of);
    if (known !== undefined) {
      for (const [, , , names] of known.parts) noteReadAgain(names);
      return known;
    }
    const { value, names } = readBy(made);
    const own = { parts: partsOf(names, before().get(of)?.parts), value, ...tells(value) };
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
      if (place?.cache.keeps !== true || now.size === 0) return;
      // What nobody asked for this time stays for as long as it would be right.
      for (const of of before().keys()) {
        const still = now.has(of) ? undefined : stillIn(of);
        if (still !== undefined) now.set(of, still);
      }
      const isSame =
        now.size === before().size &&
        [...now].every(([of, kept]) => before().get(of) === kept || told.has(kept));
      if (isSame) return;
      earlier = new Map(now);
      writeValue(place.cache, place.key, earlier);
    },
  };
}

/** Whether anything was noted of what a step reads; one of which nothing was would stand for ever. */
export function hasRead(parts: PartsRead): boolean {
  return parts.some(([, , , names]) => names.length > 0);
}

function readBook(
  place: { readonly cache: WorkCache; readonly key: string } | undefined,
): ReadonlyMap<string, KeptStep> {
  const kept = place && readValue(place.cache, place.key);
  return (kept as ReadonlyMap<string, KeptStep> | undefined) ?? new Map<string, KeptStep>();
}
