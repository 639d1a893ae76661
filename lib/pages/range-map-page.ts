import type { Block, SectionBlock } from "../blocks/block.ts";
import { section, statement, tableOf } from "../blocks/section-blocks.ts";
import type { MixingRange } from "../mixing/mixing-range.ts";
import { predictedMix } from "../mixing/prediction/predicted-mix.ts";
import { seen } from "../mixing/prediction/seen-mix.ts";
import { hullArea, reachedShare, type Told } from "../mixing/reach/hull.ts";
import { TOLD_LEVEL, type Reach } from "../mixing/reach/range-reach.ts";
import { rangeMap, type MapColour, type MapScale } from "../plots/range-map.ts";
import { percentText } from "../present/mix-facts-text.ts";
import type { LinkView, PictureView } from "../present/views.ts";
import { isStatement } from "../quantities/statement.ts";
import { decimalText, type PrintedNumbers } from "../words/number-text.ts";
import {
  mapPath,
  mixingPlaces,
  offeredLead,
  offeredOf,
  mixingWays,
  reachesOf,
  type MixingPageView,
  type PaintChoice,
} from "./mixing-ways.ts";
import { addressTo, type PageContext, type PagePlace } from "./page-context.ts";
import { pageHead } from "./site-frame.ts";
import { median } from "../quantities/median.ts";
import { at } from "../quantities/at.ts";
import { given } from "../quantities/given.ts";
import type { PageKind } from "./page-kind.ts";

/** The range in a*, b*, with what can be mixed of it; alive with script. */
export interface RangeMapView extends MixingPageView {
  readonly kind: "range-map";
  /** Slug of the white that it is drawn in, and the same map in each. */
  readonly white: string;
  readonly whites: readonly LinkView[];
  readonly colours: readonly PaintChoice[];
  readonly picture: PictureView;
  /** What each tube adds, beside the picture. */
  readonly adds: readonly SectionBlock[];
  /** Where a* and b* lie in the wide picture and in the narrow one. */
  readonly scales: { readonly wide: string; readonly narrow: string };
}

/** Parts of white to one of colour, by weight, along a trail. */
const TRAIL = [0.2, 1, 5, 20, 80] as const;
const WIDE = 640;
/** C*ab within which the names of blacks find no room, and on a small screen those of browns. */
const CROWDED = { wide: 6, narrow: 16 };

/** Every colour at its place with its trail, and around them what can be mixed. */
export function rangeMapPage(reach: Reach, context: PageContext, place: PagePlace): RangeMapView {
  const text = context.words.pages.mixing.map;
  const range = offeredOf(context);
  const { white, levels } = reach;
  const colours = mapColours(reach, range, place);
  const middle = levels.find(({ L }) => L === TOLD_LEVEL);
  const draw = (idPrefix: string, width?: number) =>
    rangeMap({
      idPrefix,
      width,
      title: text.title(white.name),
      description: text.describe(
        colours.length,
        white.name,
        middle === undefined ? "" : areaText(hullArea(middle.all)),
      ),
      colours,
      axes: text.axes,
      crowd: {
        withinChroma: width === undefined ? CROWDED.narrow : CROWDED.wide,
        word: text.nearNeutral,
      },
      outlines: levels.map(({ L, all }) => ({ label: text.outline(L), places: all.corners })),
    });
  const [wide, narrow] = [draw("map", WIDE), draw("map-narrow")];
  const mapped = new Set(reach.colours.map(({ slug }) => slug));
  const absent = range.data.paints.filter(
    ({ kind, slug, isDiscontinued = false }) =>
      kind === "colour" && !mapped.has(slug) && !isDiscontinued,
  );
  const letDown = context.range.letDownIn.get(white.slug) ?? [];
  const isTried = (slug: string): boolean => letDown.includes(slug);
  const named = (said: (names: readonly string[]) => string, tried: boolean): string[] => {
    const names = absent.filter(({ slug }) => isTried(slug) === tried).map(({ name }) => name);
    return names.length === 0 ? [] : [said(names)];
  };
  return {
    kind: "range-map",
    ...pageHead(
      context,
      place,
      reach === reachesOf(context)[0] ? text.heading : text.headingIn(white.name),
      text.description,
    ),
    lead: [text.lead, ...offeredLead(context)],
    ways: mixingWays(context, place),
    words: context.words.pages.mixing,
    white: white.slug,
    whites: whiteLinks(reach, context, place),
    colours: reach.colours.map(({ slug, name }) => ({ slug, name })),
    picture: {
      svg: wide.svg,
      narrow: narrow.svg,
      caption: text.key(outlineWidth(reach, context.words.numbers)),
    },
    scales: { wide: scaleText(wide.scale), narrow: scaleText(narrow.scale) },
    adds: section("adds", text.adds.heading, addsBlocks(reach, context, place)),
    sections:
      absent.length === 0
        ? []
        : section("absent", text.absent, [
            statement(
              [...named(text.untried, false), ...named(text.readOtherwise, true)].join(" "),
              "note",
            ),
          ]),
  };
}

function scaleText({ originX, originY, unit }: MapScale): string {
  return [originX, originY, unit].map((value) => value.toFixed(3)).join(" ");
}

/** The same map in each white. */
function whiteLinks(shown: Reach, context: PageContext, place: PagePlace): LinkView[] {
  return reachesOf(context).map((reach) => ({
    text: reach.white.name,
    href: addressTo(mapPath(reach.white, context), place),
    ...(reach === shown && { current: true }),
  }));
}

/** Middle of what the outlines' corners may be off, 68 %. */
function outlineWidth({ levels }: Reach, numbers: PrintedNumbers): string {
  const widths = levels.flatMap(({ all }) => all.corners.map(({ p68 }) => p68));
  return numbers.decimal(widths.length === 0 ? 0 : median(widths), 1);
}

function areaText({ value, p68 }: Told): string {
  const hundreds = (area: number): string => decimalText(Math.round(area / 100) * 100, 0);
  return `${hundreds(value)} \u00b1${hundreds(Math.max(p68, 100))}`;
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

/** A loss of less [1] is none. */
const LEAST_LOSS = 0.005;

/** What the range would lose with each colour that some level needs, the greatest loss first. */
function addsBlocks(
  { colours, levels }: Reach,
  { words }: PageContext,
  { root }: PagePlace,
): Block[] {
  const text = words.pages.mixing.map.adds;
  const losses = colours.map((colour) => ({
    colour,
    told: levels.map(({ all, without }) => {
      const left = without.get(colour.slug);
      const loss = left && lossOf(reachedShare(left, all));
      return loss !== undefined && loss.value > Math.max(loss.p68, LEAST_LOSS) ? loss : undefined;
    }),
  }));
  const [adding, others] = [
    losses.filter(({ told }) => told.some((one) => one !== undefined)),
    losses.filter(({ told }) => told.every((one) => one === undefined)),
  ];
  const most = (told: readonly (Told | undefined)[]): number =>
    Math.max(...told.map((one) => one?.value ?? 0));
  return given([
    tableOf({
      caption: text.caption,
      columns: [text.colour, ...levels.map(({ L }) => ({ head: text.column(L), numeric: true }))],
      rows: adding
        .toSorted((one, other) => most(other.told) - most(one.told))
        .map(({ colour, told }) => [
          { text: colour.name, href: `${root}colours/${colour.slug}/` },
          ...told.map((one) => (one === undefined ? text.none : percentText(one))),
        ]),
      note: text.note,
    }),
    others.length > 0 && statement(text.others(others.map(({ colour }) => colour.name)), "note"),
  ]);
}

function lossOf({ value, p68 }: Told): Told {
  return { value: Math.max(1 - value, 0), p68 };
}

/** A page of each white that something is reached in. */
export const RANGE_MAPS: PageKind<RangeMapView> = {
  pages: ({ context }) =>
    mixingPlaces(context).maps.map((path, nth) => ({
      path,
      view: (place) => rangeMapPage(at(reachesOf(context), nth), context, place),
    })),
};
