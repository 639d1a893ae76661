/** What a range reaches in one white, and what is left of it without each of its colours. */
import type { LadderModel } from "../../optics/tints/ladder.ts";
import type { MixingPaint } from "../mixing-paint.ts";
import { laddersIn, mixableColours, type MixingRange } from "../mixing-range.ts";
import { convexHull, type Hull } from "./hull.ts";
import { hullOf, reachedPlaces } from "./reached-places.ts";

/** L* at which a reach is told. */
export const REACH_LEVELS = [30, 50, 70] as const;
/** The one that is told where one is enough. */
export const TOLD_LEVEL = 50;

export interface Reach {
  readonly white: MixingPaint;
  readonly colours: readonly MixingPaint[];
  readonly levels: readonly ReachLevel[];
}

export interface ReachLevel {
  readonly L: number;
  readonly all: Hull;
  /** By slug; of a colour that is not here the range is as large without it. */
  readonly without: ReadonlyMap<string, Hull>;
}

/** @param levels another that gives the same, as one that remembers what it gave. */
export function rangeReach(
  range: MixingRange,
  white: MixingPaint,
  levels: typeof reachLevels = reachLevels,
): Reach {
  const colours = mixableColours(range, white.slug).filter(
    ({ isDiscontinued = false }) => !isDiscontinued,
  );
  const slugs = colours.map(({ slug }) => slug);
  const outer = outermost(slugs, laddersIn(white.slug, slugs, range));
  return {
    white,
    colours,
    levels: levels(
      outer.map(({ slug }) => slug),
      outer.map(({ ladder }) => ladder),
    ),
  };
}

/** Of more colours than this only the outermost are mixed with one another: their pairs would grow with the square of the range. */
const PAIRED_MOST = 48;
/** These are so many in each of so many equal parts of the hue circle. Our own choice. */
const HUES = 12;
const MOST_OF_A_HUE = PAIRED_MOST / HUES;

interface Outer {
  readonly slug: string;
  readonly ladder: LadderModel;
}

/**
 * All of a few colours; of many, the most colourful let-downs of each hue, in the order of the range.
 * @validity What a duller colour of the same hue would add beyond these is not looked for.
 */
export function outermost(slugs: readonly string[], ladders: readonly LadderModel[]): Outer[] {
  const all = ladders.map((ladder, i) => ({ slug: slugs[i] ?? "", ladder }));
  if (all.length <= PAIRED_MOST) return all;
  const counts = new Map<number, number>();
  const chosen = new Set(
    all
      .map((one) => ({ one, ...mostColourful(one.ladder) }))
      .toSorted((one, other) => other.chroma - one.chroma)
      .filter(({ hue }) => {
        const count = (counts.get(hue) ?? 0) + 1;
        counts.set(hue, count);
        return count <= MOST_OF_A_HUE;
      })
      .map(({ one }) => one),
  );
  return all.filter((one) => chosen.has(one));
}

/** C*ab of the most colourful step of a ladder, masstone among them, and the part of the hue circle that it lies in. */
function mostColourful({ fit, white }: LadderModel): { chroma: number; hue: number } {
  const [most] = [fit.masstone.lab, ...white.steps.map(({ lab }) => lab)]
    .map(({ a, b }) => ({
      chroma: Math.hypot(a, b),
      hue: Math.floor(((Math.atan2(b, a) / (2 * Math.PI) + 1) % 1) * HUES),
    }))
    .toSorted((one, other) => other.chroma - one.chroma);
  return most ?? { chroma: 0, hue: 0 };
}

/** Of colours by slug and their ladders in one white: plain data, from which the same is worked out again. */
export function reachLevels(
  slugs: readonly string[],
  ladders: readonly LadderModel[],
): readonly ReachLevel[] {
  return REACH_LEVELS.map((L) => {
    const places = reachedPlaces(ladders, L);
    const needed = new Set(convexHull(places).flatMap(({ members }) => members));
    return {
      L,
      all: hullOf(places, L),
      without: new Map(
        slugs.flatMap((slug, i) => (needed.has(i) ? [[slug, hullOf(places, L, i)] as const] : [])),
      ),
    };
  });
}

/** Hulls of a few chosen tubes, all of which mix in a white, at each level. */
export function chosenHulls(
  range: MixingRange,
  white: string,
  chosen: readonly MixingPaint[],
): Hull[] {
  const ladders = laddersIn(
    white,
    chosen.map(({ slug }) => slug),
    range,
  );
  return REACH_LEVELS.map((L) => hullOf(reachedPlaces(ladders, L), L));
}
