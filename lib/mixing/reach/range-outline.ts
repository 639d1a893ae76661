/**
 * How far a range reaches in a*, b* at one lightness: every pair of its colours let down in one white, on the way from
 * the one to the other, and the hull around them. Between two mixtures of one lightness a mixture of both lies near the
 * straight line, so that what three and more colours reach is within it, or little outside.
 */
import type { Lab } from "../../colorimetry/viewing.ts";
import { mixedLab, mixture, type Mixture } from "../../optics/mixtures/mixture.ts";
import type { LadderModel } from "../../optics/tints/ladder.ts";
import { isStatement } from "../../quantities/statement.ts";

/** Directions of an outline, evenly around from +a*. */
export const DIRECTIONS = 72;
/** Shares of the first by strength, on the way from one colour to another. */
const SHARES = [0.3, 0.7] as const;
/** L* [1] within which a lightness is met. */
const MET = 0.2;
/** Two colours whose tints are both greyer than this [C*ab] lead nowhere that others do not. */
const GREY = 18;

/** A pair's way at one lightness, and which colours it is made of. */
export interface PairWay {
  readonly members: readonly [number, number];
  readonly points: readonly { readonly a: number; readonly b: number }[];
}

/** C*ab reached in each direction [1], shape (DIRECTIONS). */
export type Outline = readonly number[];

/** Ways of all pairs at an L*. */
export function pairWays(ladders: readonly LadderModel[], L: number): PairWay[] {
  const alone = ladders.map((ladder) => {
    const mixed = mixture([{ ladder, parts: 1 }]);
    return isStatement(mixed) ? undefined : tintAt(mixed, L, START);
  });
  const ways: PairWay[] = [];
  for (const [i, first] of ladders.entries())
    for (const [j, second] of ladders.entries()) {
      const [one, other] = [alone[i], alone[j]];
      if (j <= i || (one === undefined && other === undefined)) continue;
      const isGrey = [one, other].every((end) => end !== undefined && chroma(end) < GREY);
      const between = isGrey
        ? []
        : SHARES.flatMap((share) => onTheWay(first, one, second, other, share, L) ?? []);
      ways.push({
        members: [i, j],
        points: [
          ...(other === undefined ? [] : [other]),
          ...between,
          ...(one === undefined ? [] : [one]),
        ],
      });
    }
  return ways;
}

/** A tint and the ratio to white by mass that has it. */
interface TintAt {
  readonly a: number;
  readonly b: number;
  readonly ratio: number;
}

/** Where a search begins that knows nothing [mass of colour to one of white]. */
const START = 0.1;

function chroma({ a, b }: TintAt): number {
  return Math.hypot(a, b);
}

/** Amounts that darken the white about alike: by the ratios of the two alone, else by how much they absorb. */
function onTheWay(
  first: LadderModel,
  one: TintAt | undefined,
  second: LadderModel,
  other: TintAt | undefined,
  share: number,
  L: number,
): TintAt | undefined {
  const alike = absorption(second) / absorption(first);
  const [ofFirst, ofSecond] = [
    share * (one?.ratio ?? (other?.ratio ?? START) * alike),
    (1 - share) * (other?.ratio ?? (one?.ratio ?? START) / alike),
  ];
  const mixed = mixture([
    { ladder: first, parts: ofFirst },
    { ladder: second, parts: ofSecond },
  ]);
  return isStatement(mixed) ? undefined : tintAt(mixed, L, ofFirst + ofSecond);
}

/** Mean K per part by mass, in units of S of the white. */
function absorption({ white: { K } }: LadderModel): number {
  return K.reduce((sum, value) => sum + value, 0) / K.length;
}

/** The tint at a lightness: bracketed from a first guess, then by regula falsi on ln of the ratio. */
function tintAt(mixed: Mixture, L: number, guess: number): TintAt | undefined {
  const at = (log: number): { readonly log: number; readonly lab: Lab; readonly over: number } => {
    const lab = mixedLab(mixed, Math.exp(log));
    return { log, lab, over: lab.L - L };
  };
  let pale = at(Math.log(guess));
  let dark = pale;
  for (let step = 0; step < 8 && pale.over < 0; step++) pale = at(pale.log - 1.2);
  for (let step = 0; step < 8 && dark.over > 0; step++) dark = at(dark.log + 1.2);
  if (!(pale.over >= 0 && dark.over <= 0)) return undefined;
  for (let step = 0; step < 12; step++) {
    const nearer = Math.abs(pale.over) < Math.abs(dark.over) ? pale : dark;
    if (Math.abs(nearer.over) < MET)
      return { a: nearer.lab.a, b: nearer.lab.b, ratio: Math.exp(nearer.log) };
    const between = at((pale.log * dark.over - dark.log * pale.over) / (dark.over - pale.over));
    if (between.over >= 0) pale = between;
    else dark = between;
  }
  return undefined;
}

/** The hull of some ways as C*ab in each direction; those that hold a colour can be left out. */
export function outline(ways: readonly PairWay[], without?: number): Outline {
  const hull = convexHull(
    ways
      .filter(({ members }) => without === undefined || !members.includes(without))
      .flatMap(({ points }) => points),
  );
  return Array.from({ length: DIRECTIONS }, (_, direction) =>
    Math.max(
      0,
      ...hull.map((place, i) =>
        crossing(place, hull[(i + 1) % hull.length] ?? place, directionAngle(direction)),
      ),
    ),
  );
}

/** Corners of the hull in order, by the monotone chain. */
function convexHull(places: readonly Place[]): Place[] {
  const sorted = places.toSorted((one, other) => one.a - other.a || one.b - other.b);
  const half = (ordered: readonly Place[]): Place[] => {
    const chain: Place[] = [];
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

export function directionAngle(direction: number): number {
  return (direction / DIRECTIONS) * 2 * Math.PI;
}

type Place = PairWay["points"][number];

/** How far out a ray from neutral meets the line between two places; 0 where it does not. */
function crossing(from: Place, to: Place, angle: number): number {
  const [x, y] = [Math.cos(angle), Math.sin(angle)];
  const across = (place: Place): number => place.b * x - place.a * y;
  const along = (place: Place): number => place.a * x + place.b * y;
  const [one, other] = [across(from), across(to)];
  if (one === other) return one === 0 ? Math.max(along(from), along(to), 0) : 0;
  const share = one / (one - other);
  if (!(share >= 0 && share <= 1)) return 0;
  return Math.max((1 - share) * along(from) + share * along(to), 0);
}

/** Area within an outline, in a* times b*. */
export function outlineArea(reached: Outline): number {
  const wedge = Math.sin((2 * Math.PI) / DIRECTIONS) / 2;
  return reached.reduce(
    (sum, radius, i) => sum + wedge * radius * (reached[(i + 1) % DIRECTIONS] ?? NaN),
    0,
  );
}
