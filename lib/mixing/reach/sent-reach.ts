/** A reach as it is sent to a page, and back. */
import type { Corner, Hull } from "./hull.ts";
import type { Reach } from "./range-reach.ts";

/** a*, b* and the 68 % [Delta-E00] of each corner, to a tenth. */
export type SentHull = readonly (readonly [a: number, b: number, p68: number])[];

export interface SentReach {
  readonly white: string;
  readonly levels: readonly {
    readonly L: number;
    readonly all: SentHull;
    readonly without: Readonly<Record<string, SentHull>>;
  }[];
}

export function sentReach({ white, levels }: Reach): SentReach {
  return {
    white: white.slug,
    levels: levels.map(({ L, all, without }) => ({
      L,
      all: sentHull(all),
      without: Object.fromEntries([...without].map(([slug, hull]) => [slug, sentHull(hull)])),
    })),
  };
}

function sentHull({ corners }: Hull): SentHull {
  const tenth = (value: number): number => Number(value.toFixed(1));
  return corners.map(({ a, b, p68 }) => [tenth(a), tenth(b), tenth(p68)]);
}

export function receivedHull(L: number, sent: SentHull): Hull {
  return { L, corners: sent.map(([a, b, p68]): Corner => ({ a, b, p68 })) };
}
