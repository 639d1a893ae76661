import { tintsInWords } from "../words/tints-in-words.ts";
import { isKnown, knownValue } from "../quantities/figure.ts";
import type { Block, BoardBlock, SectionBlock } from "../blocks/block.ts";
import { section, statement, tableOf } from "../blocks/section-blocks.ts";
import { placesWithin } from "../words/number-text.ts";
import { standingView } from "../present/standing-view.ts";
import { notStatedCell } from "./order-cells.ts";
import type { CellView, PictureView, TableView, PageView, LinkView } from "../present/views.ts";
import { cellSwatch } from "../plots/small-swatch.ts";
import { fittedFrame, tintTrail, type Trail, type TrailFrame } from "../plots/tint-trail.ts";
import {
  isGreyTint,
  nearNeutrals,
  readWithGloss,
  type NearNeutral,
  type NeutralsInWhite,
} from "../collection/near-neutrals.ts";
import { madeStep } from "../kept/kept-steps.ts";
import { remembered } from "../quantities/remembered.ts";
import { numberColumns, tableView } from "../present/table-view.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { EqualLightness } from "../sheet/tints/tint-figures.ts";
import { rowOf } from "./colour-rows.ts";
import { orderLinks, WHITES_PATH } from "./catalogue-pages.ts";
import { ON_ONE_PAGE, pagesOf, partHeading, partLinks, partPaths } from "./range-parts.ts";
import { ownColour, swatchCell } from "./screen-swatch.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { pageHead } from "./site-frame.ts";
import { trailOf, trailPoint } from "./trail-picture.ts";
import { knownAb } from "../sheet/notations/known-lab.ts";
import type { PageKind } from "./page-kind.ts";
import { given } from "../quantities/given.ts";

/** All blacks and greys of the range, white by white. */
export interface WhitesPageView extends PageView {
  readonly kind: "in-the-whites";
  readonly lead: readonly string[];
  /** The catalogue's orders and this page, which is marked. */
  readonly orders: readonly LinkView[];
  /** Of a range on several pages. */
  readonly parts: readonly LinkView[];
  readonly sections: readonly SectionBlock[];
}

/** Darker let-downs than this crowd at the masstones, and say nothing of a tint. */
const DARKEST_SHOWN_L = 30;
/** Wide enough for all names beside their trails, and narrow enough for a phone [user units]. */
const WIDTH = 360;

/** Where its pages lie: several of a range with many blacks and greys. */
export function whitesPaths(context: PageContext): string[] {
  return partPaths(WHITES_PATH, neutralPages(context));
}

/** Blacks and greys in the order that they are shown in, by page. */
const neutralPages = remembered((context: PageContext) => {
  const neutrals = context.sheets.filter((worded) => rowOf(worded, context).isNearNeutral);
  return pagesOf(
    [{ items: inBoardOrder(neutrals.map(({ sheet }) => sheet)) }],
    ON_ONE_PAGE.neutrals,
  ).map((page) => page.flatMap(({ items }) => items));
});

/** The bluest in the white of most of them first, then those that only another white has. */
function inBoardOrder(sheets: readonly Sheet[]): Sheet[] {
  return [
    ...new Set(
      nearNeutrals(sheets).flatMap(({ neutrals }) =>
        byBlueness(neutrals).map(({ sheet }) => sheet),
      ),
    ),
  ];
}

/**
 * Every black and grey of the range in each white: swatches to judge by eye, then their places and figures.
 * @param nth page of it, from 0.
 */
export function whitesPage(nth: number, context: PageContext, place: PagePlace): WhitesPageView {
  const text = context.words.pages.optics.inTheWhites;
  const pages = neutralPages(context);
  const groups = nearNeutrals(pages[nth] ?? []);
  const withGloss = readWithGloss(groups.flatMap(({ neutrals }) => neutrals));
  return {
    kind: "in-the-whites",
    ...pageHead(
      context,
      place,
      partHeading(text.heading, nth + 1, pages.length, context.words),
      text.lead,
    ),
    lead: groups.length === 0 ? [text.lead, text.none] : [text.lead],
    orders: orderLinks(context, place, WHITES_PATH),
    parts: partLinks(whitesPaths(context), place),
    sections: [
      ...section(
        "swatches",
        text.sections.swatches,
        given([
          withGloss.length > 0 && statement(text.readWithGloss(withGloss)),
          ...swatchBoard(groups, context, place),
        ]),
      ),
      ...section("trails", text.sections.trails, trailPlots(groups, context)),
      ...section(
        "figures",
        text.sections.figures,
        groups.map((group) => figuresFold(group, context, place)),
      ),
    ],
  };
}

function swatchBoard(
  groups: readonly NeutralsInWhite[],
  { words }: PageContext,
  { root }: PagePlace,
): BoardBlock[] {
  const text = words.pages.optics.inTheWhites;
  const sheets = inBoardOrder([
    ...new Set(groups.flatMap(({ neutrals }) => neutrals.map(({ sheet }) => sheet))),
  ]);
  if (sheets.length === 0) return [];
  return [
    {
      kind: "board",
      caption: text.board.caption,
      heads: [
        text.columns.colour,
        text.board.alone,
        ...groups.map(({ white }) => white.name),
        text.board.said,
      ],
      rows: sheets.map((sheet) => ({
        name: sheet.name,
        href: `${root}colours/${sheet.slug}/`,
        cells: [
          swatchCell(ownColour(sheet.notations.masstone), text.board.notRead),
          ...groups.map(({ white }) => tintCell(sheet, white.slug, words)),
        ],
        said:
          tintsInWords(
            sheet.tints.map(({ white, sentence }) => ({ white: white.name, ruling: sentence })),
            words.tints,
          ) ?? "",
      })),
    },
  ];
}

function tintCell(sheet: Sheet, white: string, words: PageContext["words"]) {
  const text = words.pages.optics.inTheWhites;
  const tint = sheet.tints.find((one) => one.white.slug === white);
  if (tint === undefined) return { missing: text.board.notTried };
  const at = knownAb(tint.atL["50"]);
  const { decimal } = words.numbers;
  return {
    ...swatchCell(ownColour(tint.atL["50"]), words.pages.sheetPage.notReached),
    ...(at !== undefined && { text: text.board.figures(decimal(at.a, 1), decimal(at.b, 1)) }),
  };
}

/** A drawing a white, all in one frame, so that they can be compared: the greys set it, and what left the greys stands at its edge. */
function trailPlots(groups: readonly NeutralsInWhite[], context: PageContext): Block[] {
  const text = context.words.pages.optics.inTheWhites;
  const drawn = groups.map((group) => ({ group, trails: group.neutrals.flatMap(trailsOf) }));
  const greys = drawn.flatMap(({ group }) =>
    group.neutrals.filter(({ tint }) => isGreyTint(tint)).flatMap(trailsOf),
  );
  if (greys.length === 0) return [];
  const frame = fittedFrame(greys);
  return [
    statement(text.key),
    {
      kind: "plots",
      isSmall: true,
      plots: drawn
        .filter(({ trails }) => trails.length > 0)
        .map(({ group, trails }) => trailPlot(group, trails, frame, context)),
    },
  ];
}

function trailsOf({ sheet, tint }: NearNeutral): Trail[] {
  const shown = tint.steps.filter(
    ({ lab, suspect }) =>
      suspect === undefined && (knownValue(lab["D65/10"]?.L) ?? 0) >= DARKEST_SHOWN_L,
  );
  return trailOf(sheet.name, shown.flatMap(trailPoint), 1);
}

function trailPlot(
  { white, neutrals }: NeutralsInWhite,
  trails: readonly Trail[],
  frame: TrailFrame,
  { words }: PageContext,
): PictureView {
  const text = words.pages.optics.inTheWhites;
  const name = white.name;
  const { decimal } = words.numbers;
  const at50 = neutrals.flatMap(({ sheet, tint: { atL } }) => {
    const at = knownAb(atL["50"]);
    return at === undefined
      ? []
      : [text.descriptionPart(sheet.name, decimal(at.a, 1), decimal(at.b, 1))];
  });
  const svg = tintTrail({
    decimalMark: words.numbers.mark,
    idPrefix: `neutrals-${white.slug}`,
    width: WIDTH,
    title: text.picture(name),
    description: at50.length === 0 ? text.picture(name) : text.description(at50),
    trails,
    ends: words.pages.whites.trailEnds,
    frame,
  });
  return {
    svg: svg,
    caption: text.picture(name),
  };
}

function figuresFold(group: NeutralsInWhite, context: PageContext, place: PagePlace): Block {
  const { white } = group;
  const text = context.words.pages.optics.inTheWhites;
  return {
    kind: "group",
    id: `in-${white.slug}`,
    flow: "stack",
    blocks: [
      {
        kind: "fold",
        summary: text.group(white.name, white.colourIndexName),
        blocks: [tableOf(table(group, context, place))],
      },
    ],
  };
}

function table(
  { white, neutrals }: NeutralsInWhite,
  { words }: PageContext,
  { root }: PagePlace,
): TableView {
  const { columns, caption, note } = words.pages.optics.inTheWhites;
  const at = ({ tint }: NearNeutral, L: EqualLightness, axis: "a" | "b"): CellView => {
    const figure = tint.atL[L]?.[axis];
    if (figure === undefined || !isKnown(figure)) return notStatedCell(words);
    return {
      text: words.numbers.decimal(figure.value, placesWithin(figure.uncertainty, 1)),
      standing: standingView(figure, words),
    };
  };
  return tableView({
    caption: caption(white.name),
    note,
    columns: [columns.colour, ...numberColumns(columns.b, columns.a, columns.b70, columns.b30)],
    rows: byBlueness(neutrals).map((neutral) => {
      const colour = ownColour(neutral.tint.atL["50"]);
      return [
        {
          text: neutral.sheet.name,
          href: `${root}colours/${neutral.sheet.slug}/#in-${neutral.tint.white.slug}`,
          ...(colour !== undefined && { swatch: cellSwatch(colour) }),
        },
        at(neutral, "50", "b"),
        at(neutral, "50", "a"),
        at(neutral, "70", "b"),
        at(neutral, "30", "b"),
      ];
    }),
  });
}

/** The bluest at L* 50 first; those whose ladder does not reach it last. */
function byBlueness(neutrals: readonly NearNeutral[]): NearNeutral[] {
  const b = ({ tint }: NearNeutral): number => knownValue(tint.atL["50"]?.b) ?? Infinity;
  return neutrals.toSorted(
    (one, other) => b(one) - b(other) || (one.sheet.slug < other.sheet.slug ? -1 : 1),
  );
}

/** Of a range that has near-neutrals; asked of the colours again only where what it goes by changed. */
export const IN_THE_WHITES: PageKind<WhitesPageView> = {
  pages: ({ context }) => {
    const step = { modules: ["lib/pages/whites-page.ts"], name: "places of the near-neutrals" };
    const paths = madeStep(context.steps, step, () =>
      context.sheets.some((worded) => rowOf(worded, context).isNearNeutral)
        ? whitesPaths(context)
        : [],
    );
    return paths.map((path, nth) => ({ path, view: (place) => whitesPage(nth, context, place) }));
  },
};
