/**
 * What a range reaches in a*, b* at one lightness: every pair of its colours let down in one white, on the way from
 * the one to the other. Between two mixtures of one lightness a mixture of both lies near the straight line, so that
 * what three and more colours reach is within the hull of the pairs, or little outside.
 */
import type { Lab } from "../../colorimetry/viewing.ts";
import { mixedLab, mixedTint, mixture, type Mixture } from "../../optics/mixtures/mixture.ts";
import type { LadderModel } from "../../optics/tints/ladder.ts";
import { isStatement } from "../../quantities/statement.ts";
import { convexHull, type Hull, type Place } from "./hull.ts";

/** Shares of the first by strength, on the way from one colour to another. */
const SHARES = [0.3, 0.7] as const;
/** L* [1] within which a lightness is met. */
const MET = 0.2;
/** Two colours whose tints are both greyer than this [C*ab] lead nowhere that others do not. */
const GREY = 18;

/** A tint of the lightness that was asked for. */
export interface ReachedPlace extends Place {
  /** Which colours it is made of. */
  readonly members: readonly number[];
  /** What its prediction may be off, 68 % [Delta-E00]: worked out when it is asked for. */
  readonly p68: () => number;
}

/** Tints of all colours and pairs at an L*. */
export function reachedPlaces(ladders: readonly LadderModel[], L: number): ReachedPlace[] {
  const alone = ladders.map((ladder) => {
    const mixed = mixture([{ ladder, parts: 1 }]);
    return isStatement(mixed) ? undefined : tintAt(mixed, L, START);
  });
  const places = alone.flatMap((tint, i) => (tint === undefined ? [] : [placeOf(tint, [i])]));
  for (const [i, first] of ladders.entries())
    for (const [j, second] of ladders.entries()) {
      const [one, other] = [alone[i], alone[j]];
      if (j <= i || (one === undefined && other === undefined)) continue;
      if ([one, other].every((end) => end !== undefined && chroma(end) < GREY)) continue;
      for (const share of SHARES) {
        const between = onTheWay(first, one, second, other, share, L);
        if (between !== undefined) places.push(placeOf(between, [i, j]));
      }
    }
  return places;
}

function placeOf({ mixed, ratio, a, b }: TintAt, members: readonly number[]): ReachedPlace {
  let known: number | undefined;
  return { a, b, members, p68: () => (known ??= mixedTint(mixed, ratio).uncertainty.p68) };
}

/** The hull of some places; those that hold a colour can be left out. */
export function hullOf(places: readonly ReachedPlace[], L: number, without?: number): Hull {
  const kept =
    without === undefined ? places : places.filter(({ members }) => !members.includes(without));
  return {
    L,
    corners: convexHull(kept).map(({ a, b, p68 }) => ({ a, b, p68: p68() })),
  };
}

/** A tint and the ratio to white by mass that has it. */
interface TintAt extends Place {
  readonly mixed: Mixture;
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
      return { mixed, a: nearer.lab.a, b: nearer.lab.b, ratio: Math.exp(nearer.log) };
    const between = at((pale.log * dark.over - dark.log * pale.over) / (dark.over - pale.over));
    if (between.over >= 0) pale = between;
    else dark = between;
  }
  return undefined;
}
