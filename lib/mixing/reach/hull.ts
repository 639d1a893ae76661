/** The hull of what can be mixed at one lightness, in a* and b*, and how far its size can be told. */
import { axisUncertainty } from "../../optics/fit/prediction-uncertainty.ts";

export interface Place {
  readonly a: number;
  readonly b: number;
}

/** A tint that nothing lies beyond. */
export interface Corner extends Place {
  /** What its prediction may be off, 68 % [Delta-E00]. */
  readonly p68: number;
}

export interface Hull {
  readonly L: number;
  /** In order, counter-clockwise; fewer than three for what has no area. */
  readonly corners: readonly Corner[];
}

/** Those places of which a convex line goes around all, in order, by the monotone chain. */
export function convexHull<P extends Place>(places: readonly P[]): P[] {
  const sorted = places.toSorted((one, other) => one.a - other.a || one.b - other.b);
  const half = (ordered: readonly P[]): P[] => {
    const chain: P[] = [];
    for (const place of ordered) {
      while (chain.length >= 2 && !turnsLeft(chain.at(-2), chain.at(-1), place)) chain.pop();
      chain.push(place);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.toReversed())];
}

function turnsLeft(one: Place | undefined, other: Place | undefined, next: Place): boolean {
  if (one === undefined || other === undefined) return true;
  return (other.a - one.a) * (next.b - one.b) - (other.b - one.b) * (next.a - one.a) > 0;
}

/** A figure with what it may be off, 68 %. */
export interface Told {
  readonly value: number;
  readonly p68: number;
}

/** Area of a hull, in a* times b*; its corners are off each by itself. */
export function hullArea(hull: Hull): Told {
  const slopes = areaSlopes(hull);
  return { value: area(hull), p68: Math.sqrt(varianceOf(hull, [...slopes.values()])) };
}

/** How much of a whole a part reaches [1], by area; a corner that both have is off in both alike. */
export function reachedShare(part: Hull, whole: Hull): Told {
  const [ofPart, ofWhole] = [area(part), area(whole)];
  if (!(ofWhole > 0)) return { value: 1, p68: 0 };
  const share = ofPart / ofWhole;
  const corners = new Map<string, Slope>();
  const add = (hull: Hull, by: number): void => {
    for (const [key, { corner, a, b }] of areaSlopes(hull)) {
      const known = corners.get(key);
      corners.set(key, { corner, a: (known?.a ?? 0) + by * a, b: (known?.b ?? 0) + by * b });
    }
  };
  add(part, 1 / ofWhole);
  add(whole, -share / ofWhole);
  return { value: share, p68: Math.sqrt(varianceOf(whole, [...corners.values()])) };
}

/** How an area grows as a corner moves along a* and b*. */
interface Slope {
  readonly corner: Corner;
  readonly a: number;
  readonly b: number;
}

function area({ corners }: Hull): number {
  return corners.reduce((sum, { a, b }, i) => {
    const next = corners[(i + 1) % corners.length];
    return next === undefined ? sum : sum + (a * next.b - next.a * b) / 2;
  }, 0);
}

function areaSlopes({ corners }: Hull): Map<string, Slope> {
  return new Map(
    corners.flatMap((corner, i): [string, Slope][] => {
      const [before, next] = [corners.at(i - 1), corners[(i + 1) % corners.length]];
      if (before === undefined || next === undefined) return [];
      return [
        [
          `${corner.a.toFixed(1)} ${corner.b.toFixed(1)}`,
          { corner, a: (next.b - before.b) / 2, b: (before.a - next.a) / 2 },
        ],
      ];
    }),
  );
}

function varianceOf({ L }: Hull, slopes: readonly Slope[]): number {
  return slopes.reduce((sum, { corner, a, b }) => {
    const width = axisUncertainty(corner.p68, { L, a: corner.a, b: corner.b });
    return sum + (a * width.a) ** 2 + (b * width.b) ** 2;
  }, 0);
}

/** Where a ray from neutral leaves a hull: C*ab [1], and what the line there may be off [Delta-E00]. */
export interface Edge {
  readonly chroma: number;
  readonly p68: number;
}

/** @param angle hab [rad]. @returns undefined where the ray does not meet the hull. */
export function edgeAt({ corners }: Hull, angle: number): Edge | undefined {
  const edges = corners.flatMap((corner, i) => {
    const next = corners[(i + 1) % corners.length];
    return (next === undefined ? undefined : crossing(corner, next, angle)) ?? [];
  });
  return edges.toSorted((one, other) => other.chroma - one.chroma)[0];
}

function crossing(from: Corner, to: Corner, angle: number): Edge | undefined {
  const [x, y] = [Math.cos(angle), Math.sin(angle)];
  const across = (place: Place): number => place.b * x - place.a * y;
  const along = (place: Place): number => place.a * x + place.b * y;
  const [one, other] = [across(from), across(to)];
  if (one === other) return undefined;
  const share = one / (one - other);
  const chroma = (1 - share) * along(from) + share * along(to);
  return share >= 0 && share <= 1 && chroma >= 0
    ? { chroma, p68: (1 - share) * from.p68 + share * to.p68 }
    : undefined;
}
