import type { Change, ChangedThing } from "./changes-between.ts";

/** From so many colours on whose prices move, that is one act of the workshop's. */
const MANY = 3;

/** Prices that move the same way. */
export interface PriceMove {
  readonly way: "rise" | "fall";
  readonly colours: number;
  /** Of one price of theirs [%], above 0. */
  readonly leastPercent: number;
  readonly mostPercent: number;
}

/** How prices of a range move, where more than a few do: those that rise, then those that fall. */
export function priceAct(changed: readonly ChangedThing[]): PriceMove[] {
  const moves = changed.flatMap(({ slug, changes }) =>
    changes.flatMap((change) =>
      isMove(change) ? [{ slug, percent: 100 * (change.now / change.before - 1) }] : [],
    ),
  );
  if (new Set(moves.map(({ slug }) => slug)).size < MANY) return [];
  return (["rise", "fall"] as const).flatMap((way): PriceMove[] => {
    const own = moves.filter(({ percent }) => (way === "rise" ? percent > 0 : percent < 0));
    const percents = own.map(({ percent }) => Math.abs(percent));
    if (own.length === 0) return [];
    return [
      {
        way,
        colours: new Set(own.map(({ slug }) => slug)).size,
        leastPercent: Math.min(...percents),
        mostPercent: Math.max(...percents),
      },
    ];
  });
}

/** A size that came or went has no price that moved. */
export function isMove(change: Change): change is Extract<Change, { kind: "price" }> & {
  readonly before: number;
  readonly now: number;
} {
  return change.kind === "price" && change.now !== undefined && (change.before ?? 0) > 0;
}
