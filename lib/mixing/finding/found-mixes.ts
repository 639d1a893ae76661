/** Every mixture of a few colours and a white that comes near a colour: singles first, then pairs, then threes. */
import { at } from "../../quantities/at.ts";
import { deltaE00 } from "../../colorimetry/difference.ts";
import type { Lab } from "../../colorimetry/viewing.ts";
import { spectrumLab } from "../../colorimetry/spectrum-lab.ts";
import { mixedReading, mixture } from "../../optics/mixtures/mixture.ts";
import type { LadderModel } from "../../optics/tints/ladder.ts";
import { notRefused } from "../../quantities/statement.ts";
import type { Mix } from "../mix.ts";
import { laddersIn, mixableColours, type MixingRange } from "../mixing-range.ts";
import { finishedSpectrum, type SeenAs } from "../prediction/seen-mix.ts";
import { matchProblem, type MatchProblem } from "./match-problem.ts";
import { matchedAmounts, SHARE_MIN, type MatchedAmounts } from "./matched-amounts.ts";
import type { Target } from "./target.ts";

export interface FindingWish {
  readonly target: Target;
  readonly white: string;
  /** Colours that may be in it; absent: all that mix. */
  readonly colours?: readonly string[];
  /** Colours that have to be in it. */
  readonly mustHold: readonly string[];
  readonly coloursMost: number;
  /** The target's own paint, where its recipe is wanted without it. */
  readonly without: readonly string[];
  readonly isWhiteFree: boolean;
}

export interface FoundMix {
  /** By mass of paint. */
  readonly mix: Mix;
  /** D65/10. */
  readonly lab: Lab;
  readonly deltaE00: number;
}

/** Further from the target than this a mixture is no answer [Delta-E00]. */
export const REACH = 12;
/** How far the plain model may point beside what the drawdowns' own reading says [Delta-E00]. */
const MODEL_APART = 8;
/** A paint that brings the mixture nearer by less than this is left out [Delta-E00]. */
const WORTH_A_PAINT = 0.1;
/** Times that the aim is mended by what the full model says beside the plain one. */
const AIMS = 4;
const AIM_FOUND = 0.02;

/**
 * @returns mixtures as they are found, each with no paint in it that it could do without.
 * @source allen-1974, walowit-1987
 */
export function* foundMixes(
  wish: FindingWish,
  range: MixingRange,
): Generator<FoundMix | undefined> {
  yield* mixesOf(searchOf(wish, range));
}

/** A search with all that it goes by: plain data, from which the same is found again. */
export interface Search {
  readonly wish: FindingWish;
  readonly colours: readonly string[];
  /** Of the colours, in the wish's white. */
  readonly ladders: readonly LadderModel[];
}

export function searchOf(wish: FindingWish, range: MixingRange): Search {
  const colours = searchedColours(wish, range);
  return { wish, colours, ladders: laddersIn(wish.white, colours, range) };
}

/** Of some paints of a search, by their places in it, the white 0: the mixture that comes nearest. */
export type NearestOf = (
  members: readonly number[],
  made: () => Nearest | undefined,
) => Nearest | undefined;

/**
 * What a search finds, as {@link foundMixes}.
 * @param nearestOf another that gives what is made, as one that remembers it.
 */
export function* mixesOf(
  { wish, colours, ladders }: Search,
  nearestOf: NearestOf = (_, made) => made(),
): Generator<FoundMix | undefined> {
  if (ladders.length === 0) return;
  const problem = matchProblem(wish.target, ladders);
  const best = new Map<string, number>();
  for (const members of memberSets(colours.length, wish)) {
    const slugs = members.flatMap((member) => (member === 0 ? [] : [colours[member - 1] ?? ""]));
    if (!wish.mustHold.every((slug) => slugs.includes(slug))) continue;
    const found = nearestOf(members, () => nearestMix(problem, members, ladders, wish.target.lab));
    if (found === undefined || found.deltaE00 > REACH) {
      yield undefined;
      continue;
    }
    best.set(members.join(), found.deltaE00);
    const fewer = Math.min(
      ...members.map((_, i) => best.get(members.toSpliced(i, 1).join()) ?? Infinity),
    );
    yield fewer <= found.deltaE00 + WORTH_A_PAINT
      ? undefined
      : {
          lab: found.lab,
          deltaE00: found.deltaE00,
          mix: {
            by: "mass",
            colours: members.flatMap((member, i) =>
              member === 0
                ? []
                : [{ slug: colours[member - 1] ?? "", parts: at(found.amounts, i) }],
            ),
            white: { slug: wish.white, parts: members[0] === 0 ? at(found.amounts, 0) : 0 },
          },
        };
  }
}

/** The colours of a search, those that have to be in it first. */
function searchedColours(wish: FindingWish, range: MixingRange): string[] {
  return mixableColours(range, wish.white)
    .map(({ slug }) => slug)
    .filter(
      (slug) =>
        !wish.without.includes(slug) &&
        (wish.colours === undefined || wish.colours.includes(slug) || wish.mustHold.includes(slug)),
    );
}

/** Sets of paints, fewest first; with the white (0) and, where that is asked for, without. */
function* memberSets(
  count: number,
  { coloursMost, isWhiteFree }: FindingWish,
): Generator<number[]> {
  for (let size = 1; size <= Math.min(coloursMost, count); size++)
    for (const set of subsets(count, size)) {
      yield [0, ...set];
      if (isWhiteFree && size > 1) yield set;
    }
}

function* subsets(count: number, size: number, from = 1): Generator<number[]> {
  if (size === 0) {
    yield [];
    return;
  }
  for (let first = from; first <= count - size + 1; first++)
    for (const rest of subsets(count, size - 1, first + 1)) yield [first, ...rest];
}

/** By mass of each paint, in the order of their places. */
export interface Nearest {
  readonly amounts: readonly number[];
  readonly lab: Lab;
  readonly deltaE00: number;
}

/** The plain model is aimed beside the target by what the full one says of where it came to, until that meets it. */
function nearestMix(
  problem: MatchProblem,
  members: readonly number[],
  ladders: readonly LadderModel[],
  target: Lab,
): Nearest | undefined {
  let matched: MatchedAmounts | undefined = matchedAmounts(problem, members, target);
  if (matched === undefined || matched.distance > REACH + MODEL_APART) return undefined;
  let nearest: Nearest | undefined;
  for (let aim = 0; aim < AIMS && matched !== undefined; aim++) {
    const { amounts, lab: plain }: MatchedAmounts = matched;
    if (amounts.some((amount) => amount < SHARE_MIN)) break;
    const lab = fullLab(members, amounts, ladders);
    const reached = deltaE00(lab, target);
    const before = nearest?.deltaE00 ?? Infinity;
    if (reached < before) nearest = { amounts, lab, deltaE00: reached };
    if (
      reached < AIM_FOUND ||
      reached > before - AIM_FOUND ||
      (aim === 0 && reached > REACH + MODEL_APART)
    )
      break;
    matched = matchedAmounts(
      problem,
      members,
      {
        L: target.L - (lab.L - plain.L),
        a: target.a - (lab.a - plain.a),
        b: target.b - (lab.b - plain.b),
      },
      amounts,
    );
  }
  return nearest;
}

/** As a target is given: a glossy film without its glare. */
function fullLab(
  members: readonly number[],
  amounts: readonly number[],
  ladders: readonly LadderModel[],
): Lab {
  const parts = members.flatMap((member, i) => {
    const ladder = ladders[member - 1];
    return member === 0 || ladder === undefined ? [] : [{ ladder, parts: at(amounts, i) }];
  });
  const total = parts.reduce((sum, part) => sum + part.parts, 0);
  const mixed = notRefused(mixture(parts));
  const { geometry, surface } = at(ladders, 0).fit;
  const seenAs: SeenAs = { geometry, surface: surface.surface };
  const massRatio = members[0] === 0 ? total / at(amounts, 0) : Infinity;
  const { grid, values } = finishedSpectrum(mixedReading(mixed, massRatio), seenAs, "glossy");
  return spectrumLab({ grid, values });
}
