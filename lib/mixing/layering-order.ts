import type { MixingPaint } from "./mixing-paint.ts";

/**
 * Tubes from the bottom layer up: the quickest to dry first, of those that dry alike the leaner; what is not known last.
 * Common practice of the trade, no source.
 */
export function layeringOrder<P extends Pick<MixingPaint, "facts">>(paints: readonly P[]): P[] {
  const days = ({ facts: { drying } }: P): number =>
    drying === undefined ? Infinity : Math.sqrt(drying.days[0] * drying.days[1]);
  const oil = ({ facts }: P): number => facts.oil?.gPer100g ?? Infinity;
  const apart = (one: number, other: number): number => (one === other ? 0 : one - other);
  return paints.toSorted(
    (one, other) => apart(days(one), days(other)) || apart(oil(one), oil(other)),
  );
}
