import type { LinkView } from "../present/views.ts";
import type { PaintChoice } from "../blocks/page-kinds.ts";
import { mixingRange, type MixingRange } from "../mixing/mixing-range.ts";
import { mixingData } from "./mixing-data.ts";
import type { PageContext, PagePlace } from "./page-context.ts";

export const BENCH_PATH = "bench/index.html";
export const RECIPES_PATH = "bench/recipes/index.html";
export const MAP_PATH = "bench/map/index.html";
export const PALETTE_PATH = "bench/palette/index.html";

/** The range made ready for the pages that mix, once a build. */
export function mixingOf(context: PageContext): MixingRange {
  const known = RANGES.get(context.sheets);
  if (known !== undefined) return known;
  const range = mixingRange(mixingData(context));
  RANGES.set(context.sheets, range);
  return range;
}
const RANGES = new WeakMap<PageContext["sheets"], MixingRange>();

/** Pages that mix, as a row of links. */
export function mixingWays({ words }: PageContext, { path, root }: PagePlace): LinkView[] {
  const { ways } = words.pages.mixing;
  return (
    [
      [ways.bench, BENCH_PATH],
      [ways.recipes, RECIPES_PATH],
      [ways.map, MAP_PATH],
      [ways.palette, PALETTE_PATH],
    ] as const
  ).map(([text, target]) => ({
    text,
    href: `${root}${target.replace("index.html", "")}`,
    ...(path === target ? { current: true } : {}),
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
  return white === undefined
    ? []
    : [
        {
          text: words.pages.mixing.bench.fromSheet,
          href: `${root}bench/?mix=${slug}:1&white=${white}:10`,
        },
      ];
}
