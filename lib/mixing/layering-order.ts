import { midpoint } from "../quantities/interval.ts";
import type { MixingPaint } from "./mixing-paint.ts";

type Tube = Pick<MixingPaint, "facts">;

/**
 * Tubes from the bottom layer up: the quickest to dry first, of those that dry alike the leaner; what is not known last.
 * Common practice of the trade, no source.
 */
export function layeringOrder<P extends Tube>(paints: readonly P[]): P[] {
  const days = ({ facts: { drying } }: P): number =>
    drying === undefined ? Infinity : Math.sqrt(drying.days[0] * drying.days[1]);
  const oil = ({ facts }: P): number =>
    facts.oil === undefined ? Infinity : midpoint(facts.oil.volumeFraction);
  const apart = (one: number, other: number): number => (one === other ? 0 : one - other);
  return paints.toSorted(
    (one, other) => apart(days(one), days(other)) || apart(oil(one), oil(other)),
  );
}

/** Oil by volume [1] by which one film is fatter than another: less is within what weighing tells. Our own choice. */
const FATTER_BY = 0.01;

/**
 * Of each tube, in the order of layering, the fattest of those below it that is fatter whichever ends of their ranges
 * hold: what goes over that needs oil added. Undefined where none is.
 */
export function fatterBelow<P extends Tube>(ordered: readonly P[]): (P | undefined)[] {
  const least = ({ facts }: P): number => facts.oil?.volumeFraction[0] ?? -Infinity;
  return ordered.map((tube, i) => {
    const most = tube.facts.oil?.volumeFraction[1] ?? Infinity;
    return ordered
      .slice(0, i)
      .filter((below) => least(below) > most + FATTER_BY)
      .toSorted((one, other) => least(other) - least(one))[0];
  });
}
