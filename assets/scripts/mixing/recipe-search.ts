/** A search for recipes in short slices, so that whoever runs it can be interrupted and hears of the first finds at once. */
import {
  foundMixes,
  type FindingWish,
  type FoundMix,
} from "../../../lib/mixing/finding/found-mixes.ts";
import {
  byOrder,
  judgedMix,
  mixPasses,
  paintPasses,
  type JudgedMix,
  type MixLimits,
  type RecipeOrder,
} from "../../../lib/mixing/finding/judged-mix.ts";
import type { Target } from "../../../lib/mixing/finding/target.ts";
import { mixableColours, type MixingRange } from "../../../lib/mixing/mixing-range.ts";
import type { Interval } from "../../../lib/quantities/interval.ts";
import { mixFacts } from "../../../lib/mixing/prediction/mix-facts.ts";

export interface RecipeWish {
  readonly target: Target;
  /** A white's slug; absent: all of them, one after the other. */
  readonly white?: string;
  readonly coloursMost: number;
  readonly isWhiteFree: boolean;
  readonly leaveOut: readonly string[];
  readonly mustHold: readonly string[];
  readonly limits: MixLimits;
  readonly order: RecipeOrder;
  /** Most recipes that are worked out in full. */
  readonly most: number;
}

export interface RecipeReport {
  readonly recipes: readonly JudgedMix[];
  readonly tried: number;
  /** Mixtures within reach that keep to the limits, listed or not. */
  readonly reached: number;
  readonly isDone: boolean;
  /** Days to touch dry of the quickest that comes near and dries too late. */
  readonly quickest?: Interval;
}

/** A slice [ms]: short enough to stop at once, long enough to get on. */
const SLICE_MS = 40;
const FIRST_MOST = 8;

export async function searchRecipes(
  wish: RecipeWish,
  range: MixingRange,
  report: (report: RecipeReport) => void,
  isStale: () => boolean,
): Promise<void> {
  const found: FoundMix[] = [];
  let [tried, reported] = [0, 0];
  let since = performance.now();
  const rest = async (): Promise<void> => {
    if (performance.now() - since < SLICE_MS) return;
    await new Promise((resolve) => setTimeout(resolve));
    since = performance.now();
  };
  let quickest: Interval | undefined;
  for (const one of finds(wish, range)) {
    tried++;
    if (one !== undefined && mixPasses(one.mix, wish.limits, range)) found.push(one);
    else if (one !== undefined) quickest = quicker(quickest, daysTooLate(one, wish, range));
    if (performance.now() - since < SLICE_MS) continue;
    if (found.length > reported && reported === 0) {
      reported = found.length;
      const first = nearest(found).slice(0, FIRST_MOST);
      report({
        recipes: ordered(
          first.map((each) => judgedMix(each, wish.target, range)),
          wish,
        ),
        tried,
        reached: found.length,
        isDone: false,
      });
    }
    await rest();
    if (isStale()) return;
  }
  const judged: JudgedMix[] = [];
  for (const one of preferred(found, wish, range).slice(0, wish.most)) {
    judged.push(judgedMix(one, wish.target, range));
    await rest();
    if (isStale()) return;
  }
  report({
    recipes: ordered(judged, wish),
    tried,
    reached: found.length,
    isDone: true,
    ...(quickest === undefined ? {} : { quickest }),
  });
}

/** Days of a mixture that keeps to all limits but the day that it has to be dry by. */
function daysTooLate(
  { mix }: FoundMix,
  { limits: { days, ...others } }: RecipeWish,
  range: MixingRange,
): Interval | undefined {
  return days !== undefined && mixPasses(mix, others, range)
    ? mixFacts(mix, range).dryingDays
    : undefined;
}

function quicker(one: Interval | undefined, other: Interval | undefined): Interval | undefined {
  return one === undefined || (other !== undefined && other[1] < one[1]) ? other : one;
}

function* finds(wish: RecipeWish, range: MixingRange): Generator<FoundMix | undefined> {
  const whites = wish.white === undefined ? range.whites.map(({ slug }) => slug) : [wish.white];
  for (const white of whites) {
    const whitePaint = range.paint(white);
    if (
      whitePaint === undefined ||
      !paintPasses(whitePaint, wish.limits) ||
      wish.leaveOut.includes(white)
    )
      continue;
    const colours = mixableColours(range, white)
      .filter((paint) => paintPasses(paint, wish.limits) && !wish.leaveOut.includes(paint.slug))
      .map(({ slug }) => slug);
    const one: FindingWish = {
      target: wish.target,
      white,
      colours,
      mustHold: wish.mustHold,
      coloursMost: wish.coloursMost,
      without: wish.leaveOut,
      // Without white a mixture is the same in each; it is looked for once.
      isWhiteFree: wish.isWhiteFree && white === whites[0],
    };
    yield* foundMixes(one, range);
  }
}

function nearest(found: readonly FoundMix[]): FoundMix[] {
  return found.toSorted((one, other) => one.deltaE00 - other.deltaE00);
}

/** Those that are worked out in full: the nearest of the fewest paints first, as most are asked for. */
function preferred(
  found: readonly FoundMix[],
  { order }: RecipeWish,
  range: MixingRange,
): FoundMix[] {
  const near = nearest(found);
  if (order === "nearest" || order === "lamps") return near;
  if (order === "fewest")
    return found.toSorted(
      (one, other) =>
        Number(one.deltaE00 > CLOSE) - Number(other.deltaE00 > CLOSE) ||
        one.mix.colours.length - other.mix.colours.length ||
        one.deltaE00 - other.deltaE00,
    );
  const key = ({ mix }: FoundMix): number => {
    const facts = mixFacts(mix, range);
    return order === "drying"
      ? (facts.dryingDays?.[1] ?? Infinity)
      : order === "price"
        ? (facts.pricePer10Ml ?? Infinity)
        : (facts.lightfastness.rank ?? Infinity);
  };
  const keyed = near.map((one) => ({ one, of: key(one) }));
  return keyed
    .toSorted(
      (one, other) =>
        Number(one.one.deltaE00 > CLOSE) - Number(other.one.deltaE00 > CLOSE) ||
        (one.of === other.of ? 0 : one.of - other.of),
    )
    .map(({ one }) => one);
}
/** About what a prediction is off by [Delta-E00]: nearer ones are all candidates. */
const CLOSE = 1;

function ordered(recipes: readonly JudgedMix[], { order }: RecipeWish): JudgedMix[] {
  return recipes.toSorted(byOrder(order));
}
