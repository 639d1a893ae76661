import type { ScreenColour } from "../plots/screen-colour.ts";
import type { Words } from "../words/words.ts";
import type { EntryView, SectionBlock } from "../blocks/block.ts";
import { section } from "../blocks/section-blocks.ts";
import { comparisonMarkup } from "../present/comparison-html.ts";
import { comparisonView } from "../present/comparison-model.ts";
import type { LinkView, PageView, Markup } from "../present/views.ts";
import { chosenPairs, type ChosenPair } from "../records/chosen-pairs.ts";
import { colourTile, wallOrder } from "./colour-tile.ts";
import { evenly, ON_ONE_PAGE } from "./range-parts.ts";
import { wordedSheet } from "./worded-sheet.ts";
import { shownColour } from "./comparison-cells.ts";
import { rowOf } from "./colour-rows.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { pictureFolder, picturedColours, sharedPicture } from "./shared-picture.ts";
import { pageHead } from "./site-frame.ts";
import { onePage, type PageKind } from "./page-kind.ts";

/** Any two to four colours, chosen by pressing swatches; without script the pairs that the workshop chose. */
export interface CompareView extends PageView {
  readonly kind: "compare";
  readonly lead: readonly string[];
  readonly picker: {
    readonly words: Words["pages"]["compare"]["form"];
    /** Of a large range not every colour can be pressed. */
    readonly some?: string;
    readonly colours: readonly {
      readonly slug: string;
      readonly name: string;
      readonly colours: readonly ScreenColour[];
      readonly missing?: string;
    }[];
  };
  readonly sections: readonly SectionBlock[];
}

/** A pair (or three, or four) that the workshop chose: a page without script. */
export interface ComparePairView extends PageView {
  readonly kind: "compare-pair";
  readonly lead: readonly string[];
  readonly comparison: Markup;
  /** To choose others. */
  readonly more: LinkView;
}

/** "compare/bone-black-and-spinel-black/", from the site's root. */
export function pairAddress({ colours }: ChosenPair): string {
  return `compare/${colours.join("-and-")}/`;
}

/** Any two to four by pressing their swatches, and the pairs that need no script. */
export function comparePage(context: PageContext, place: PagePlace): CompareView {
  const text = context.words.pages.compare;
  const pairs = chosenPairs(context.records.workshop);
  return {
    kind: "compare",
    ...pageHead(context, place, text.heading, text.lead),
    lead: [text.lead],
    picker: {
      words: text.form,
      ...(context.sheets.length > ON_ONE_PAGE.tiles && {
        some: text.form.some(ON_ONE_PAGE.tiles, context.sheets.length),
      }),
      colours: evenly(wallOrder(context), ON_ONE_PAGE.tiles).map((worded) => {
        const { name, colours, missing } = colourTile(worded, context, place);
        return {
          slug: worded.sheet.slug,
          name,
          colours,
          ...(missing !== undefined && { missing }),
        };
      }),
    },
    sections:
      pairs.length === 0
        ? []
        : section("pairs", text.pairs, [
            { kind: "entries", entries: pairs.map((pair) => pairEntry(pair, context, place)) },
          ]),
  };
}

/** A chosen pair as a way to its page, with its colours abutting. */
function pairEntry(pair: ChosenPair, context: PageContext, { root }: PagePlace): EntryView {
  return {
    heading: pairHeading(pair, context),
    href: root + pairAddress(pair),
    ...(pair.why !== undefined && { text: pair.why }),
    colours: pair.colours.flatMap((slug) => {
      const worded = wordedSheet(slug, context);
      return (worded && rowOf(worded, context).colour) ?? [];
    }),
  };
}

/** A chosen pair, finished: nothing of it waits for a script. */
export function comparePairPage(
  pair: ChosenPair,
  context: PageContext,
  place: PagePlace,
): ComparePairView {
  const { words } = context;
  const text = words.pages.compare;
  const colours = pair.colours.flatMap((slug) => {
    const worded = wordedSheet(slug, context);
    return worded === undefined ? [] : shownColour(worded, context);
  });
  const comparison = comparisonView(
    colours,
    { compare: text, rulings: words.comparisons, notStated: words.standings["not stated"].word },
    place.root,
  );
  return {
    kind: "compare-pair",
    ...pageHead(
      context,
      place,
      pairHeading(pair, context),
      text.description(colours.map(({ name }) => name)),
    ),
    ...sharedPicture(
      context,
      pictureFolder(picturedColours(pair.colours, context), pairAddress(pair)),
      pairHeading(pair, context),
    ),
    lead: pair.why === undefined ? [] : [pair.why],
    comparison: comparisonMarkup(comparison, text),
    more: { text: text.more, href: `${place.root}compare/?colours=${pair.colours.join(",")}` },
  };
}

/** Ways from a sheet: its chosen pairs, then its nearest in colour beside it. */
export function compareLinks(slug: string, context: PageContext, { root }: PagePlace): LinkView[] {
  const text = context.words.pages.compare;
  const chosen = chosenPairs(context.records.workshop).filter(({ colours }) =>
    colours.includes(slug),
  );
  const inPairs = new Set(
    chosen.filter(({ colours }) => colours.length === 2).flatMap(({ colours }) => colours),
  );
  const near = (context.range.nearest.get(slug) ?? [])
    .filter((neighbour) => !inPairs.has(neighbour.slug))
    .slice(0, MOST_NEAR);
  return [
    ...chosen.map((pair) => ({ text: pairHeading(pair, context), href: root + pairAddress(pair) })),
    ...near.map((neighbour) => ({
      text: text.beside(sheetOf(neighbour.slug, context)?.name ?? neighbour.slug),
      href: `${root}compare/?colours=${slug},${neighbour.slug}`,
    })),
    { text: text.besideAny, href: `${root}compare/?colours=${slug}` },
  ];
}
const MOST_NEAR = 3;

export function pairHeading(pair: ChosenPair, context: PageContext): string {
  return (
    pair.heading ??
    context.words.pages.compare.pairHeading(
      pair.colours.map((slug) => sheetOf(slug, context)?.name ?? slug),
    )
  );
}

function sheetOf(slug: string, context: PageContext) {
  return wordedSheet(slug, context)?.sheet;
}

export const COMPARE = onePage("compare/index.html", comparePage);

export const PAIRS: PageKind<ComparePairView> = {
  pages: ({ context }) =>
    chosenPairs(context.records.workshop).map((pair) => ({
      path: `${pairAddress(pair)}index.html`,
      view: (place) => comparePairPage(pair, context, place),
    })),
};
