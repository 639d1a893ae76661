import type { NamedValues } from "./kept-bodies.ts";

/**
 * Many values by name, kept in two files: all of them, and those that have become others since, so
 * that an edit which changes a few writes down these alone.
 */
export interface KeptSince<V> {
  readonly of: (name: string) => V | undefined;
  /**
   * Keep what some have become; one that is the very value which is kept already has not.
   * @param again any of them as it is written where all are, undefined where it is not worth it any more.
   */
  readonly keep: (
    now: ReadonlyMap<string, V>,
    again: (value: V, name: string) => V | undefined,
  ) => void;
}

/** Where one of the two files is read from and written to. */
export interface SincePart<V> {
  readonly read: () => NamedValues<V>;
  readonly write: (values: ReadonlyMap<string, V>) => void;
}

/** Of more values apart than this share [1], and than so many, all are written again. Our own choice. */
const SHARE_APART = 1 / 8;
const MOST_APART = 8;

/** Whether so few of all are apart that the rest need not be written again. */
export function areFewApart(apart: number, all: number): boolean {
  return apart <= Math.max(MOST_APART, all * SHARE_APART);
}

export function keptSince<V>(whole: SincePart<V>, apart: SincePart<V>): KeptSince<V> {
  let read: Record<"all" | "since", NamedValues<V>> | undefined;
  const known = (): NonNullable<typeof read> =>
    (read ??= { all: whole.read(), since: apart.read() });
  const of = (name: string): V | undefined => known().since.get(name) ?? known().all.get(name);
  return {
    of,
    keep: (now, again) => {
      const { all, since } = known();
      if ([...now].every(([name, value]) => of(name) === value)) return;
      const others = [...new Map([...since, ...now])];
      const changed = new Map(others.filter(([name, value]) => all.get(name) !== value));
      if (areFewApart(changed.size, all.size)) {
        read = { all, since: changed };
        apart.write(changed);
        return;
      }
      const written = [...new Map([...all, ...since, ...now])].flatMap(([name, value]) => {
        const still = again(value, name);
        return still === undefined ? [] : [[name, still] as const];
      });
      const none = new Map<string, V>();
      const nowAll = new Map(written);
      read = { all: nowAll, since: none };
      whole.write(nowAll);
      // Until then what is kept there is at most older, as anything that is kept may be.
      if (since.size > 0) apart.write(none);
    },
  };
}
