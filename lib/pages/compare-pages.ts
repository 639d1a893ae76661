import { comparisonPanel } from "../plots/comparison-panel.ts";
import { familyStrip } from "../plots/small-swatch.ts";
import { comparisonMarkup } from "../present/comparison-html.ts";
import { comparisonView } from "../present/comparison-model.ts";
import type { ComparePairView, CompareView, ShownColour } from "../present/comparison-types.ts";
import { asMarkup, type LinkView } from "../present/views.ts";
import { COMPARISON_RULINGS } from "../words/en/statements-comparison.ts";
import { FAMILIES } from "../words/en/terms.ts";
import { chosenPairs, type ChosenPair } from "../records/chosen-pairs.ts";
import { byFamily } from "./catalogue-pages.ts";
import { ownColour } from "./screen-swatch.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { shownColour } from "./comparison-cells.ts";
import { pageHead } from "./site-frame.ts";

/** "compare/bone-black-and-spinel-black/", from the site's root. */
export function pairAddress({ colours }: ChosenPair): string {
  return `compare/${colours.join("-and-")}/`;
}

/** Every colour as the page's script fetches it. */
export function shownColours(context: PageContext): readonly ShownColour[] {
  return context.sheets.map((worded) => shownColour(worded, context));
}

/** Any two to four by a form, and the pairs that need none. */
export function comparePage(context: PageContext, place: PagePlace): CompareView {
  const text = context.words.pages.compare;
  return {
    kind: "compare",
    ...pageHead(context, place, text.heading, text.lead),
    lead: [text.lead],
    form: {
      heading: text.form.heading,
      without: text.form.without,
      fields: text.form.fields,
      empty: text.form.empty,
      submit: text.form.submit,
      families: byFamily(context.sheets).map(([family, sheets]) => ({
        name: FAMILIES[family],
        colours: sheets.map(({ sheet: { slug, name } }) => ({ slug, name })),
      })),
    },
    pairsHeading: text.pairs,
    pairs: chosenPairs(context.records.workshop).map((pair) => {
      const paints = pair.colours
        .map((slug) => ownColour(sheetOf(slug, context)?.notations.masstone))
        .filter((colour) => colour !== undefined);
      return {
        heading: pairHeading(pair, context),
        href: place.root + pairAddress(pair),
        ...(pair.why === undefined ? {} : { why: pair.why }),
        ...(paints.length === 0 ? {} : { strip: asMarkup(familyStrip(paints)) }),
      };
    }),
  };
}

/** A chosen pair, finished: nothing of it waits for a script. */
export function comparePairPage(
  pair: ChosenPair,
  shown: readonly ShownColour[],
  context: PageContext,
  place: PagePlace,
): ComparePairView {
  const { words } = context;
  const text = words.pages.compare;
  const colours = pair.colours.flatMap(
    (slug) => shown.find((colour) => colour.slug === slug) ?? [],
  );
  const panel = comparisonPanel(colours, text);
  const comparison = comparisonView(
    colours,
    { compare: text, rulings: COMPARISON_RULINGS, notStated: words.standings["not stated"].word },
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
    lead: pair.why === undefined ? [] : [pair.why],
    ...(panel === undefined ? {} : { panel }),
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

function sheetOf(slug: string, { sheets }: PageContext) {
  return sheets.find(({ sheet }) => sheet.slug === slug)?.sheet;
}
