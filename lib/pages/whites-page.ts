import { isKnown, type Figure } from "../quantities/figure.ts";
import { decimalText, placesWithin } from "../words/number-text.ts";
import { standingView, standingWord } from "../present/standing-view.ts";
import { asMarkup, type CellView, type PictureView, type TableView } from "../present/views.ts";
import type { WhiteGroupView, WhitesPageView } from "../present/whites-page-views.ts";
import { within } from "../words/en/statements-phrases.ts";
import { cellSwatch } from "../plots/small-swatch.ts";
import { tintTrail, type Trail, type TrailPoint } from "../plots/tint-trail.ts";
import {
  nearNeutrals,
  type NearNeutral,
  type NeutralsInWhite,
} from "../collection/near-neutrals.ts";
import type { EqualLightness, TintStep } from "../sheet/sheet.ts";
import { orderLinks } from "./catalogue-pages.ts";
import { ownColour } from "./screen-swatch.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { pageHead } from "./site-frame.ts";

/** Darker let-downs than this crowd at the masstones, and say nothing of a tint. */
const DARKEST_SHOWN_L = 30;
/** Where there is room for all names beside their trails. */
const WIDE = 640;

/** Every near-neutral of the range in each white: trails one over the other, and their figures at equal lightness. */
export function whitesPage(context: PageContext, place: PagePlace): WhitesPageView {
  const text = context.words.pages.optics.inTheWhites;
  const groups = nearNeutrals(context.sheets.map(({ sheet }) => sheet));
  return {
    kind: "in-the-whites",
    ...pageHead(context, place, text.heading, text.lead),
    lead: groups.length === 0 ? [text.lead, text.none] : [text.lead],
    orders: orderLinks(context, place),
    groups: groups.map((group) => whiteGroup(group, context, place)),
  };
}

function whiteGroup(
  group: NeutralsInWhite,
  context: PageContext,
  place: PagePlace,
): WhiteGroupView {
  const { white } = group;
  const text = context.words.pages.optics.inTheWhites;
  const neutrals = group.neutrals.toSorted(
    (one, other) => bAt50(one) - bAt50(other) || (one.sheet.slug < other.sheet.slug ? -1 : 1),
  );
  const picture = trails(neutrals, within(white.name), white.slug, context);
  return {
    id: `in-${white.slug}`,
    heading: text.group(within(white.name), white.colourIndexName),
    ...(picture === undefined ? {} : { picture, key: text.key }),
    table: table(neutrals, within(white.name), context, place),
  };
}

function trails(
  neutrals: readonly NearNeutral[],
  white: string,
  slug: string,
  { words }: PageContext,
): PictureView | undefined {
  const text = words.pages.optics.inTheWhites;
  const drawn = neutrals.flatMap(({ sheet, tint }): Trail[] => {
    const shown = tint.steps.filter(
      ({ lab, suspect }) =>
        suspect === undefined && (value(lab["D65/10"]?.L) ?? 0) >= DARKEST_SHOWN_L,
    );
    const points = shown.flatMap(placed);
    const read = points.filter(({ standing }) => standing === "measured");
    if (read.length === 0) return [];
    return [
      {
        label: within(sheet.name),
        points: read,
        ...(points.length > read.length ? { predicted: points.map(({ a, b }) => ({ a, b })) } : {}),
      },
    ];
  });
  if (drawn.length === 0) return undefined;
  const at50 = neutrals.flatMap(({ sheet, tint: { atL } }) => {
    const [a, b] = [value(atL["50"]?.a), value(atL["50"]?.b)];
    return a === undefined || b === undefined
      ? []
      : [text.descriptionPart(sheet.name, decimalText(a, 1), decimalText(b, 1))];
  });
  const svg = (idPrefix: string, width?: number): string =>
    tintTrail({
      idPrefix,
      width,
      title: text.picture(white),
      description: at50.length === 0 ? text.picture(white) : text.description(at50),
      trails: drawn,
      axes: { a: "a*", b: "b*" },
      ends: words.pages.whites.trailEnds,
      isFitted: true,
    });
  return {
    svg: asMarkup(svg(`neutrals-${slug}`, WIDE)),
    narrow: asMarkup(svg(`neutrals-narrow-${slug}`)),
    caption: text.picture(white),
  };
}

/** A step's place among a* and b*, in its own colour. */
function placed({ lab, standing, ...screen }: TintStep): TrailPoint[] {
  const [a, b] = [value(lab["D65/10"]?.a), value(lab["D65/10"]?.b)];
  const colour = ownColour(screen);
  return a === undefined || b === undefined || colour === undefined
    ? []
    : [{ a, b, colour, standing }];
}

function table(
  neutrals: readonly NearNeutral[],
  white: string,
  { words }: PageContext,
  { root }: PagePlace,
): TableView {
  const { columns, caption, note } = words.pages.optics.inTheWhites;
  const at = ({ tint }: NearNeutral, L: EqualLightness, axis: "a" | "b"): CellView => {
    const figure = tint.atL[L]?.[axis];
    if (figure === undefined || !isKnown(figure))
      return { text: "\u2013", reason: standingWord("not stated", words).word };
    return {
      text: decimalText(figure.value, placesWithin(figure.uncertainty, 1)),
      standing: standingView(figure, words),
    };
  };
  return {
    caption: caption(white),
    compact: true,
    note,
    columns: [
      { head: columns.colour },
      { head: columns.b, numeric: true },
      { head: columns.a, numeric: true },
      { head: columns.b70, numeric: true },
      { head: columns.b30, numeric: true },
    ],
    rows: neutrals.map((neutral): CellView[] => {
      const colour = ownColour(neutral.tint.atL["50"]);
      return [
        {
          text: neutral.sheet.name,
          href: `${root}colours/${neutral.sheet.slug}/#in-${neutral.tint.white.slug}`,
          ...(colour === undefined ? {} : { swatch: asMarkup(cellSwatch(colour)) }),
        },
        at(neutral, "50", "b"),
        at(neutral, "50", "a"),
        at(neutral, "70", "b"),
        at(neutral, "30", "b"),
      ];
    }),
  };
}

/** Those whose ladder does not reach L* 50 stand last. */
function bAt50({ tint }: NearNeutral): number {
  return value(tint.atL["50"]?.b) ?? Infinity;
}

function value(figure: Figure<number> | undefined): number | undefined {
  return figure !== undefined && isKnown(figure) ? figure.value : undefined;
}
