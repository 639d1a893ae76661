/** Recipes found for measured oil paints whose parts were weighed: how near they come, and to the weighed parts. */
import { foundMixes, type FoundMix } from "../../lib/mixing/finding/found-mixes.ts";
import { judgedMix } from "../../lib/mixing/finding/judged-mix.ts";
import { readTarget } from "../../lib/mixing/finding/target.ts";
import { packedFit, FIT_FORMAT } from "../../lib/mixing/fits/packed-fit.ts";
import { mixingRange, type MixingRange } from "../../lib/mixing/mixing-range.ts";
import type { MixingPaint } from "../../lib/mixing/mixing-paint.ts";
import type { ColourFit, FitRefusal } from "../../lib/optics/fit/colour-fit.ts";
import { fittedColours } from "../../lib/optics/fit/fitted-colour.ts";
import { MEASURED_PAINTS, measuredPaint, type MeasuredPaint } from "./measured-paints.ts";
import { allFits, LADDERS, NOT_HIDING, setOf } from "./prediction-errors.ts";

const WHITE = "zinc white";
const BLACK = "bone black";

export interface RecipeError {
  readonly id: string;
  readonly hides: boolean;
  /** Largest difference of a share from the weighed one, of the recipe of the weighed paints [1]. */
  readonly shareError: number;
  /** Between the reading and what that recipe is predicted to read. */
  readonly deltaE00: number;
  /** Whether the weighed paints are among the answers: within the printed ± (68 %) of the reading. */
  readonly isAnswer: boolean;
}

/** Every let-down in zinc white, found by a range that never saw it. */
export function letDownRecipes(): RecipeError[] {
  return LADDERS.flatMap((ids) => {
    const set = setOf(ids, "with films");
    return set.tints.map((left) => {
      const others = { ...set, tints: set.tints.filter(({ id }) => id !== left.id) };
      const fits = allFits(others, ids, "with films", {});
      const range = rangeOf(new Map([[ids[0], fits.get("judged")]]));
      const colour = left.massRatio / (1 + left.massRatio);
      return recipeError(left.id, new Map([[ids[0], colour]]), range);
    });
  });
}

/** Every mixture of a colour with bone black and no white, found by a range of all colours let down in zinc white. */
export function blackMixtureRecipes(): RecipeError[] {
  const fits = fittedColours(
    new Map(LADDERS.map((ids) => [ids[0], setOf(ids, "with films", false)] as const)),
  );
  const range = rangeOf(fits);
  const [black] = LADDERS.flatMap(([id]) => (measuredPaint(id).parts.has(BLACK) ? [id] : []));
  return [...MEASURED_PAINTS.values()].filter(isWithBlack).flatMap((paint) => {
    const colour = LADDERS.find(([id]) => id.startsWith(paint.id.slice(0, 2)))?.[0];
    if (colour === undefined || black === undefined) return [];
    const share = paint.parts.get(BLACK) ?? NaN;
    return [
      recipeError(
        paint.id,
        new Map([
          [colour, 1 - share],
          [black, share],
        ]),
        range,
      ),
    ];
  });
}

function isWithBlack({ id, parts }: MeasuredPaint): boolean {
  const isLetDown = parts.has(WHITE) || /^(?:08|16)/.test(id);
  return parts.size === 2 && parts.has(BLACK) && !isLetDown;
}

/** @param weighed shares of the colours [1]; what is left is white. */
function recipeError(
  id: string,
  weighed: ReadonlyMap<string, number>,
  range: MixingRange,
): RecipeError {
  const colours = [...weighed.keys()];
  const isWithWhite = [...weighed.values()].reduce((sum, share) => sum + share, 0) < 0.999;
  const target = readTarget(id, "reading", {
    ...measuredPaint(id).overWhite,
    ...(range.surface === undefined ? {} : { surface: range.surface }),
  });
  const found = [
    ...foundMixes(
      {
        target,
        white: WHITE,
        colours,
        mustHold: colours,
        coloursMost: colours.length,
        without: [],
        isWhiteFree: true,
      },
      range,
    ),
  ].flatMap((one) => (one === undefined || holdsWhite(one) !== isWithWhite ? [] : [one]));
  const best = found.toSorted((one, other) => one.deltaE00 - other.deltaE00)[0];
  if (best === undefined)
    return { id, hides: !NOT_HIDING.test(id), shareError: 1, deltaE00: Infinity, isAnswer: false };
  return {
    id,
    hides: !NOT_HIDING.test(id),
    shareError: Math.max(
      ...[...weighed].map(([slug, share]) => Math.abs(shareOf(slug, best) - share)),
    ),
    deltaE00: best.deltaE00,
    isAnswer: judgedMix(best, target, range).isWithin,
  };
}

function holdsWhite({ mix }: FoundMix): boolean {
  return mix.white.parts > 0;
}

function shareOf(slug: string, { mix }: FoundMix): number {
  const total = mix.white.parts + mix.colours.reduce((sum, { parts }) => sum + parts, 0);
  return (mix.colours.find((part) => part.slug === slug)?.parts ?? 0) / total;
}

/** Fits as a reader's browser is sent them. */
function rangeOf(fits: ReadonlyMap<string, ColourFit | FitRefusal | undefined>): MixingRange {
  const facts = {
    warning: { signal: null, statements: [], isUnknown: true },
    metals: [],
    isRestricted: false,
  };
  const paints = [...fits].flatMap(([slug, fit]): MixingPaint[] =>
    fit?.kind === "fit"
      ? [{ slug, name: slug, kind: "colour", index: [], fit: packedFit(fit), facts }]
      : [],
  );
  return mixingRange({
    format: FIT_FORMAT,
    revision: "",
    workshop: "",
    observer: "CIE 1964",
    paints: [...paints, { slug: WHITE, name: WHITE, kind: "white", index: [], facts }],
  });
}
