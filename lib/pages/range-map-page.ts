import type { RangeMapView } from "../blocks/page-kinds.ts";
import { section, statement } from "../blocks/section-blocks.ts";
import type { MixingPaint } from "../mixing/mixing-paint.ts";
import { mixableColours, type MixingRange } from "../mixing/mixing-range.ts";
import { predictedMix } from "../mixing/prediction/predicted-mix.ts";
import { seen } from "../mixing/prediction/seen-mix.ts";
import {
  directionAngle,
  outline,
  outlineArea,
  pairWays,
  type Outline,
} from "../mixing/reach/range-outline.ts";
import type { LadderModel } from "../optics/tints/ladder.ts";
import { rangeMap, type MapColour, type MapScale } from "../plots/range-map.ts";
import { asMarkup, type CellView } from "../present/views.ts";
import { isStatement } from "../quantities/statement.ts";
import { decimalText } from "../words/number-text.ts";
import { mixingOf, mixingWays } from "./mixing-ways.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { pageHead } from "./site-frame.ts";

/** L* at which the reach of a range is told. */
export const REACH_LEVELS = [30, 50, 70] as const;
/** Parts of white to one of colour, by weight, along a trail. */
const TRAIL = [0.2, 1, 5, 20, 80] as const;
const WIDE = 640;

/** The range's reach in its first white, worked out once a build. */
export interface Reach {
  readonly white: MixingPaint;
  readonly colours: readonly MixingPaint[];
  readonly levels: readonly {
    readonly L: number;
    readonly all: Outline;
    /** In the order of the colours. */
    readonly without: readonly Outline[];
  }[];
}

const KNOWN = new WeakMap<PageContext["sheets"], Reach | undefined>();

export function reachOf(context: PageContext): Reach | undefined {
  if (!KNOWN.has(context.sheets)) KNOWN.set(context.sheets, worked(mixingOf(context)));
  return KNOWN.get(context.sheets);
}

function worked(range: MixingRange): Reach | undefined {
  const [white] = range.whites;
  if (white === undefined) return undefined;
  const colours = mixableColours(range, white.slug);
  const ladders = colours.flatMap(({ slug }): LadderModel[] => {
    const ladder = range.ladder(slug, white.slug);
    return isStatement(ladder) ? [] : [ladder];
  });
  return {
    white,
    colours,
    levels: REACH_LEVELS.map((L) => {
      const ways = pairWays(ladders, L);
      return { L, all: outline(ways), without: colours.map((_, i) => outline(ways, i)) };
    }),
  };
}

/** Every colour at its place with its trail, and around them what can be mixed. */
export function rangeMapPage(reach: Reach, context: PageContext, place: PagePlace): RangeMapView {
  const text = context.words.pages.mixing.map;
  const range = mixingOf(context);
  const { white, levels } = reach;
  const colours = mapColours(reach, range, place);
  const area = levels.find(({ L }) => L === 50)?.all ?? [];
  const draw = (idPrefix: string, width?: number): { svg: string; scale: MapScale } =>
    rangeMap({
      idPrefix,
      width,
      title: text.title(white.name),
      description: text.describe(
        colours.length,
        white.name,
        decimalText(Math.round(outlineArea(area) / 100) * 100, 0),
      ),
      colours,
      axes: text.axes,
      outlines: levels.map(({ L, all }) => ({
        label: text.outline(L),
        places: all.map((radius, i) => ({
          a: radius * Math.cos(directionAngle(i)),
          b: radius * Math.sin(directionAngle(i)),
        })),
      })),
    });
  const [wide, narrow] = [draw("map", WIDE), draw("map-narrow")];
  const mapped = new Set(reach.colours.map(({ slug }) => slug));
  const absent = range.data.paints
    .filter(({ kind, slug }) => kind === "colour" && !mapped.has(slug))
    .map(({ name }) => name);
  return {
    kind: "range-map",
    ...pageHead(context, place, text.heading, text.description),
    lead: [text.lead],
    ways: mixingWays(context, place),
    words: context.words.pages.mixing,
    colours: reach.colours.map(({ slug, name }) => ({ slug, name })),
    picture: {
      svg: asMarkup(wide.svg),
      narrow: asMarkup(narrow.svg),
      caption: text.key(outlineWidth(reach, range)),
    },
    scales: { wide: scaleText(wide.scale), narrow: scaleText(narrow.scale) },
    sections: [
      ...section("adds", text.adds.heading, [
        { kind: "table", table: addsTable(reach, context, place) },
      ]),
      ...(absent.length === 0
        ? []
        : section("absent", text.absent, [statement(text.notMapped(absent), "note")])),
    ],
  };
}

function scaleText({ originX, originY, unit }: MapScale): string {
  return [originX, originY, unit].map((value) => value.toFixed(3)).join(" ");
}

/** Middle 68 % width of the range's tints, which the outline is made of. */
function outlineWidth({ white, colours }: Reach, range: MixingRange): string {
  const [one, other] = [colours[0], colours.at(-1)];
  const widths = colours.flatMap(({ slug }) => {
    const partner = slug === one?.slug ? other : one;
    const found = predictedMix(
      {
        by: "mass",
        colours: [
          { slug, parts: 1 },
          ...(partner === undefined || partner.slug === slug
            ? []
            : [{ slug: partner.slug, parts: 1 }]),
        ],
        white: { slug: white.slug, parts: 8 },
      },
      range,
    );
    return isStatement(found) ? [] : [found.uncertainty.p68];
  });
  return decimalText(widths.toSorted((a, b) => a - b)[widths.length >> 1] ?? NaN, 1);
}

function mapColours(
  { white, colours }: Reach,
  range: MixingRange,
  { root }: PagePlace,
): MapColour[] {
  return colours.flatMap(({ slug, name, lab, screen }): MapColour[] => {
    if (lab === undefined || screen === undefined) return [];
    const trail = TRAIL.flatMap((parts) => {
      const found = predictedMix(
        { by: "mass", colours: [{ slug, parts: 1 }], white: { slug: white.slug, parts } },
        range,
      );
      if (isStatement(found)) return [];
      const { hex, displayP3 } = seen(found.spectrum, "daylight").shown;
      return [{ a: found.lab.a, b: found.lab.b, colour: { hex, displayP3 } }];
    });
    return [
      { label: name, href: `${root}colours/${slug}/`, colour: screen, a: lab[1], b: lab[2], trail },
    ];
  });
}

/** What the range would lose with each colour, the greatest loss first. */
function addsTable({ colours, levels }: Reach, { words }: PageContext, { root }: PagePlace) {
  const text = words.pages.mixing.map.adds;
  const losses = colours.map((colour, i) => ({
    colour,
    shares: levels.map(({ all, without }) => {
      const whole = outlineArea(all);
      return whole > 0 ? 1 - outlineArea(without[i] ?? all) / whole : 0;
    }),
  }));
  return {
    caption: text.caption,
    columns: [
      { head: text.colour },
      ...levels.map(({ L }) => ({ head: text.column(L), numeric: true })),
    ],
    rows: losses
      .toSorted((one, other) => Math.max(...other.shares) - Math.max(...one.shares))
      .map(({ colour, shares }): CellView[] => [
        { text: colour.name, href: `${root}colours/${colour.slug}/` },
        ...shares.map((share) => ({ text: share < 0.01 ? text.little : lossText(share) })),
      ]),
    note: text.note,
  };
}

function lossText(share: number): string {
  return `${decimalText(100 * share, 0)}\u00a0%`;
}
