import type { PageView, TileView, WaysView } from "../present/views.ts";
import { chosenPairs } from "../records/chosen-pairs.ts";
import { answerLink } from "./answer-link.ts";
import { colourTile, familyTiles, wallOrder } from "./colour-tile.ts";
import { pairAddress, pairHeading } from "./compare-pages.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { sharedPicture } from "./shared-picture.ts";
import { rangeCounts } from "./range-counts.ts";
import { ON_ONE_PAGE } from "./range-parts.ts";
import { upperFirst } from "../words/letter-case.ts";
import { pageHead } from "./site-frame.ts";
import { onePage } from "./page-kind.ts";

export interface HomeView extends PageView {
  readonly kind: "home";
  /** Over the wall. */
  readonly promise: string;
  /** What is shown that is not measured, or has nothing to show yet. */
  readonly besides?: string;
  readonly press: string;
  readonly wall: string;
  /** Every colour, by family and from light to dark; of a large range every family. */
  readonly tiles: readonly TileView[];
  readonly isByFamily: boolean;
  /** What the workshop makes, in its own words. */
  readonly about: readonly string[];
  readonly ask?: WaysView;
  readonly beside?: WaysView;
  readonly know: WaysView;
}

const MOST_LINKS = 4;

/** The range as a wall of paint, and three ways in below it. */
export function homePage(context: PageContext, place: PagePlace): HomeView {
  const { words, records, sheets, answers } = context;
  const text = words.pages.home;
  const { name, about, firstQuestions } = records.workshop;
  const asked =
    firstQuestions?.flatMap((first) => answers.filter(({ slug }) => slug === first)) ??
    answers.slice(0, MOST_LINKS);
  const pairs = chosenPairs(records.workshop);
  const isOneWall = sheets.length <= ON_ONE_PAGE.tiles;
  const counts = rangeCounts(context);
  const promise = text.promise(counts);
  const besides = text.besides(counts);
  return {
    kind: "home",
    ...pageHead(context, place, name, about ?? promise),
    ...sharedPicture(context, "", promise),
    promise,
    ...(besides !== "" && { besides: `${upperFirst(besides)}.` }),
    press: isOneWall ? text.press : text.pressFamily,
    wall: text.wall,
    isByFamily: !isOneWall,
    tiles: isOneWall
      ? wallOrder(context).map((worded) => colourTile(worded, context, place))
      : familyTiles(context, place),
    about: about === undefined ? [] : [about],
    ...(answers.length > 0 && {
      ask: {
        heading: text.ask,
        links: asked.map((answer) => answerLink(answer, place)),
        ...(answers.length > asked.length && {
          more: { text: text.allQuestions(answers.length), href: `${place.root}answers/` },
        }),
      },
    }),
    ...(pairs.length > 0 && {
      beside: {
        heading: text.beside,
        links: pairs.slice(0, MOST_LINKS).map((pair) => ({
          text: pairHeading(pair, context),
          href: place.root + pairAddress(pair),
        })),
        more: { text: text.choose, href: `${place.root}compare/` },
      },
    }),
    know: {
      heading: text.know,
      links: [{ text: text.knowText, href: `${place.root}methods/` }],
      more: { text: text.knowLink, href: `${place.root}label/` },
    },
  };
}

export const HOME = onePage("index.html", homePage);
