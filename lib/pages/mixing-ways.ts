import type { SectionBlock } from "../blocks/block.ts";
import type { Words } from "../words/words.ts";
import type { LinkView, PageView } from "../present/views.ts";
import { readOnce, type RememberedReads } from "../kept/reads.ts";
import type { MixingData, MixingPaint } from "../mixing/mixing-paint.ts";
import { mixableColours, mixingRange, type MixingRange } from "../mixing/mixing-range.ts";
import { rangeReach, reachLevels, type Reach } from "../mixing/reach/range-reach.ts";
import { offeredPaints } from "../mixing/offered-paints.ts";
import { remembered } from "../quantities/remembered.ts";
import { given } from "../quantities/given.ts";
import { hasMixing } from "./mixing-data.ts";
import { madeStep } from "../kept/kept-steps.ts";
import { addressTo, type PageContext, type PagePlace } from "./page-context.ts";

/** A paint to choose on a page that mixes. */
export interface PaintChoice {
  readonly slug: string;
  readonly name: string;
}

/** A page that mixes: a part that a script makes, and what stands there without one. */
export interface MixingPageView extends PageView {
  readonly lead: readonly string[];
  /** This page and the others that mix; the one shown is marked. */
  readonly ways: readonly LinkView[];
  readonly words: Words["pages"]["mixing"];
  readonly sections: readonly SectionBlock[];
}

export const BENCH_PATH = "bench/index.html";
export const RECIPES_PATH = "bench/recipes/index.html";
const MAP_PATH = "bench/map/index.html";
export const PALETTE_PATH = "bench/palette/index.html";

/** The range made ready for the pages that mix, once a build. */
export function mixingOf(context: PageContext): MixingRange {
  return readOnce(RANGES, context.sheets, "", () => mixingRange(context.mixing()));
}
const RANGES: RememberedReads<PageContext["sheets"], MixingRange> = new WeakMap();

/** What is offered to be mixed, and sent to the pages that mix: of a large range not all of it. */
export const offeredOf = remembered((context: PageContext): MixingRange => {
  const all = mixingOf(context);
  const { paints, usual } = all.data;
  const offered = offeredPaints(
    paints,
    all.whites.map(({ slug }) => slug),
    usual,
  );
  return offered.length === paints.length ? all : mixingRange(offeredData(all.data, offered));
});

function offeredData(all: MixingData, paints: readonly MixingPaint[]): MixingData {
  const { format, workshop, currency, observer, usual, grounds } = all;
  return {
    format,
    // Handed on and not asked for: it is another with every sheet.
    get revision() {
      return all.revision;
    },
    workshop,
    ...(currency !== undefined && { currency }),
    observer,
    ...(usual !== undefined && { usual }),
    paints,
    ...(grounds !== undefined && { grounds }),
    hasOthers: true,
  };
}

/** Of a large range, that not all of it is offered; and which paints are not, since theory does not hold for them. */
export function offeredLead(context: PageContext): string[] {
  const [offered, all] = [offeredOf(context), mixingOf(context)];
  const { mixing } = context.words.pages;
  const { paints } = all.data;
  const unlike = paints.filter(({ isNotPredicted }) => isNotPredicted).map(({ name }) => name);
  return given([
    offered !== all && mixing.offered(offered.data.paints.length, paints.length),
    unlike.length > 0 && mixing.notPredicted(unlike),
  ]);
}

/** What the range reaches in each white that colours were let down in, once a build. */
export function reachesOf(context: PageContext): readonly Reach[] {
  return readOnce(REACHES, context.sheets, "", () => reachesIn(offeredOf(context), context));
}
const REACHES: RememberedReads<PageContext["sheets"], readonly Reach[]> = new WeakMap();

/** Whites that colours were let down in, each with a reach of its own. */
export const reachedWhites = remembered((context: PageContext): readonly MixingPaint[] => {
  const range = offeredOf(context);
  return range.whites.filter(({ slug }) => mixableColours(range, slug).length > 0);
});

function reachesIn(range: MixingRange, context: PageContext): Reach[] {
  return reachedWhites(context).map((white) =>
    rangeReach(range, white, (...inputs) =>
      context.kept({ modules: ["lib/mixing/reach/range-reach.ts"], inputs }, () =>
        reachLevels(...inputs),
      ),
    ),
  );
}

/** The map in the first white has the address of the map. */
export function mapPath({ slug }: MixingPaint, context: PageContext): string {
  return slug === reachedWhites(context)[0]?.slug ? MAP_PATH : `bench/map/${slug}/index.html`;
}

/** Whether there are pages that mix, and where the maps of what is reached lie: asked of the fits only where these changed. */
export function mixingPlaces(context: PageContext): {
  readonly mixes: boolean;
  readonly maps: readonly string[];
} {
  const step = { modules: ["lib/pages/mixing-ways.ts"], name: "places of pages that mix" };
  return madeStep(context.steps, step, () => {
    const mixes = hasMixing(context);
    return {
      mixes,
      maps: mixes ? reachedWhites(context).map((white) => mapPath(white, context)) : [],
    };
  });
}

/** Pages that mix, as a row of links. */
export function mixingWays(context: PageContext, { path, root }: PagePlace): LinkView[] {
  const { ways } = context.words.pages.mixing;
  const targets: readonly (readonly [text: string, target: string])[] = [
    [ways.bench, BENCH_PATH],
    [ways.recipes, RECIPES_PATH],
    ...(reachedWhites(context).length === 0
      ? []
      : ([
          [ways.map, MAP_PATH],
          [ways.palette, PALETTE_PATH],
        ] as const)),
  ];
  return targets.map(([text, target]) => ({
    text,
    href: addressTo(target, { root }),
    ...(path === target && { current: true }),
  }));
}

/** Colours that were let down in some white, then those that can only be shown alone. */
export function colourChoices(range: MixingRange): PaintChoice[] {
  return range.data.paints
    .filter(({ kind, fit }) => kind === "colour" && fit !== undefined)
    .map(({ slug, name }) => ({ slug, name }));
}

/** From a colour's sheet to the bench, with the colour on it. */
export function benchLinks(
  slug: string,
  { fits, words }: PageContext,
  { root }: PagePlace,
): LinkView[] {
  const fit = fits.get(slug);
  const white = fit?.kind === "fit" ? fit.whites[0]?.slug : undefined;
  if (white === undefined) return [];
  return [
    {
      text: words.pages.mixing.bench.fromSheet,
      href: `${root}bench/?mix=${slug}:1&white=${white}:10`,
    },
  ];
}
