import { cautionLine } from "./caution-line.ts";
import type { HandlingSectionView } from "../present/handling-views.ts";
import { statementText } from "../present/statement-text.ts";
import type { HandledPart } from "../sheet/handling/handling-sections.ts";
import { labelView } from "./label-view.ts";
import { sourceLink } from "./page-context.ts";
import { emptySection, type SheetPage } from "./section-views.ts";
import { studioView } from "./studio-view.ts";

/** Handling in full: label elements first, then what the studio meets before it is paint, the studio by operation, and where it may be sold. */
export function handlingSection({
  worded: {
    sheet: { cautions },
  },
  words,
  context,
  place,
}: SheetPage): HandlingSectionView {
  const text = words.pages.handling;
  const isStated = cautions.basis === "stated by the maker";
  return {
    ...emptySection("handling", words.pages.sections.handling),
    label: labelView(
      cautions,
      cautions,
      {
        heading: isStated
          ? text.stated
          : cautions.unknown.length > 0
            ? text.notClassified
            : text.workedOut,
        nothing: isStated ? text.nothingStated : text.nothing,
      },
      context,
      place,
    ),
    maker: makerLines(cautions, text, words.date),
    ...(cautions.checks.length === 0
      ? {}
      : {
          checks: {
            heading: text.checks,
            items: cautions.checks.map((check) => ({ text: statementText(check, words) })),
          },
        }),
    parts: [
      ...cautions.dryPigment.map((part) =>
        labelView(
          part,
          workedOut(part),
          { heading: text.dryPigment(part.name), nothing: text.dryNothing },
          context,
          place,
        ),
      ),
      ...cautions.additions.map((part) =>
        labelView(
          part,
          workedOut(part),
          { heading: text.addition(part.name), nothing: text.dryNothing },
          context,
          place,
        ),
      ),
    ],
    studioHeading: text.studio,
    studio: studioView(
      cautions.studio.filter(({ general }) => !general),
      words,
    ),
    studioGeneral: {
      text: text.general,
      link: { text: text.generalLink, href: `${place.root}label/#studio` },
    },
    marketsHeading: text.markets,
    markets: [...new Set(cautions.restrictions.map(({ market }) => market))].map((market) => ({
      market: text.marketNames[market] ?? market,
      lines: cautions.restrictions
        .filter((restriction) => restriction.market === market)
        .map((restriction) => ({
          text: statementText(restriction, words),
          ...(restriction.source === undefined
            ? {}
            : { source: sourceLink(context, place)(restriction.source) }),
        })),
    })),
    poisonCentre: poisonCentreLine(context.records.workshop.poisonCentre, text),
    deference: cautionLine(context),
  };
}

/** Of what the studio handles before it is paint the workshop is no maker: its label is always worked out here. */
export function workedOut({ frame, edition }: HandledPart): Parameters<typeof labelView>[1] {
  return { frame, edition, basis: "worked out" };
}

type Text = SheetPage["words"]["pages"]["handling"];

/** From the workshop's record; that there is none is said. */
export function poisonCentreLine(recorded: string | undefined, text: Text): string {
  return recorded === undefined ? text.noPoisonCentre : text.poisonCentre(recorded);
}

function makerLines(
  { ufi, maker }: Pick<SheetPage["worded"]["sheet"]["cautions"], "ufi" | "maker">,
  text: Text,
  date: (iso: string) => string,
): HandlingSectionView["maker"] {
  const { review, dataSheet } = maker ?? {};
  return [
    ...(ufi === undefined ? [] : [{ text: text.ufi(ufi) }]),
    ...(review === undefined
      ? []
      : [
          {
            text: text.review(review.by, date(review.date)),
            ...(review.wording === undefined ? {} : { quote: review.wording }),
          },
        ]),
    ...(dataSheet === undefined
      ? []
      : [
          {
            text: "",
            link: {
              text: text.dataSheet(dataSheet.date === undefined ? undefined : date(dataSheet.date)),
              href: dataSheet.url,
            },
          },
        ]),
  ];
}
