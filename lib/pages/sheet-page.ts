import { priceText } from "../present/price-text.ts";
import { tintsInWords } from "../words/tints-in-words.ts";
import type { SectionBlock } from "../blocks/block.ts";
import type { FactView } from "../present/views.ts";
import type { OfferView, SheetView } from "../blocks/page-kinds.ts";
import { contentsOf } from "../blocks/section-blocks.ts";
import type { OwnWords } from "../words/words.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { CautionsSection } from "../sheet/handling/handling-sections.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { coloursLetDownIn } from "./colours-tinted-with.ts";
import { hazardView } from "./label-view.ts";
import { isMoreThanACoat } from "./hiding-film.ts";
import { jsonLd } from "./json-ld.ts";
import { metalsIn } from "./mixing-data.ts";
import { benchLinks } from "./mixing-ways.ts";
import { madeOf, madeOfText, withMediumNote } from "./made-of.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { paintColour, swatchCell } from "./screen-swatch.ts";
import { pageOfSheet } from "./page-of-sheet.ts";
import { tintsBlock } from "./sheet-hero.ts";
import { sheetSections } from "./sheet-sections.ts";
import { pageHead } from "./site-frame.ts";
import { sharedPicture } from "./shared-picture.ts";
import { mayHoldDryingOil, sixFacts } from "./six-facts.ts";
import { whitePurposes } from "./white-blocks.ts";
import { given } from "../quantities/given.ts";
import { pageOfEachSheet } from "./page-kind.ts";

/** A colour's page for a painter: first screen, then what is read at the easel. */
export function sheetPage(worded: SheetTexts, context: PageContext, place: PagePlace): SheetView {
  const { words } = context;
  const { sheet } = worded;
  const page = pageOfSheet(worded, context, place);
  const text = words.pages.sheetPage;
  const head = pageHead(
    context,
    place,
    sheet.name,
    words.pages.sheet.description(sheet.name, madeOfText(sheet, words)),
  );
  const hazard = hasWarning(sheet)
    ? hazardView(saidAtFirst(sheet.cautions), sheet.cautions, words, "#handling")
    : undefined;
  const tints = tintsBlock(sheet, words);
  const colour = paintColour(sheet.notations.masstone);
  const sections = sheetSections(page);
  return {
    kind: "sheet",
    ...head,
    jsonLd: jsonLd(sheet, context, head),
    ...(colour !== undefined &&
      sharedPicture(
        context,
        `colours/${sheet.slug}/`,
        tints?.description ?? `${sheet.name}${words.colon}${madeOfText(sheet, words)}`,
      )),
    name: sheet.name,
    madeOf: madeOf(sheet, words, place.root),
    masstone: {
      caption: masstoneCaption(sheet, words),
      ...(isMoreThanACoat(sheet) && { isThickLayer: true }),
      ...swatchCell(colour, words.pages.sheet.noPanel),
    },
    ...(tints !== undefined && { tints }),
    sentence: withMediumNote(firstSentence(sheet, context), sheet, words),
    offer: offerViews(sheet, words),
    actions: given([
      { text: text.compare, href: `${place.root}compare/?colours=${sheet.slug}` },
      ...benchLinks(sheet.slug, context, place),
      sections.some(({ id }) => id === "replacement") && {
        text: words.pages.mixing.recipes.replaces.heading,
        href: "#replacement",
      },
    ]),
    ...(hazard !== undefined && { hazard }),
    ...(sheet.cautions.unknown.length > 0 && {
      unknownHazard: text.unknownHazard(
        // What the label says of lead need not be said again.
        sheet.cautions.supplemental.length > 0 ? [] : metalsIn(sheet, "painting"),
      ),
    }),
    ...(mayHoldDryingOil(sheet) && { ragLine: words.pages.ragLine }),
    facts: sixFacts(worded, context).map((fact) => linkedFact(fact, sections)),
    ...(sheet.recordDate !== undefined && { asOf: text.asOf(words.date(sheet.recordDate)) }),
    contents: contentsOf(sections),
    sections,
    standingsFold: text.standingsFold,
  };
}

/** What the first screen says in one sentence: of a white that stands out among the others, what it is good for. */
function firstSentence(sheet: Sheet, context: PageContext): string {
  const purposes = sheet.family === "white" ? whitePurposes(sheet, context) : [];
  return purposes.length > 0 ? purposes.join(" ") : plainSentence(sheet, context);
}

/** What a colour does in the whites, without figures; of a white, that others are let down in it. */
export function plainSentence(sheet: Sheet, context: PageContext): string {
  const { words } = context;
  const text = words.pages.sheetPage;
  const letDown = coloursLetDownIn(sheet.slug, context);
  if (sheet.family === "extender" && sheet.tints.length === 0) return text.extenderSentence;
  if (letDown.length > 0 || sheet.family === "white") return text.whiteSentence(letDown.length);
  return (
    tintsInWords(
      sheet.tints.map(({ white, sentence }) => ({ white: white.name, ruling: sentence })),
      words.tints,
    ) ?? (sheet.tints.length > 0 ? text.ladder.noSentence : text.notTried)
  );
}

/** A fact of which the page has no section leads to what it would take to know it. */
function linkedFact({ href, ...fact }: FactView, sections: readonly SectionBlock[]): FactView {
  const isThere = (anchor: string): boolean => sections.some(({ id }) => `#${id}` === anchor);
  const target = href !== undefined && isThere(href) ? href : "#unknown";
  return isThere(target) ? { ...fact, href: target } : fact;
}

/** What the swatch is: of a paint that no coat hides with, a layer thicker than any, lest it be taken for an opaque one. */
function masstoneCaption(sheet: Sheet, words: OwnWords): string {
  if (isMoreThanACoat(sheet)) return words.pages.cards.thickLayer;
  return sheet.notations.masstone?.standing === "estimated"
    ? words.pages.photographs.estimated
    : words.pages.sheetPage.alone;
}

/** The label without what nobody has classified, where it has no signal word yet: that is said once, below. */
function saidAtFirst(cautions: CautionsSection): CautionsSection {
  return cautions.signalWord === null && cautions.unknown.length > 0
    ? { ...cautions, gaps: [], unknownAcuteToxicity: [] }
    : cautions;
}

/** Whether a label warns of something that is known: classified, or a metal that no statement tells of. */
function hasWarning({ cautions }: Sheet): boolean {
  const { signalWord, hazardStatements, supplemental, pictograms, notClassified } = cautions;
  return (
    signalWord !== null ||
    [hazardStatements, supplemental, pictograms, notClassified].some(({ length }) => length > 0)
  );
}

/** Sizes with prices; where a market forbids the sale, why there are none. */
export function offerViews({ offer, discontinued }: Sheet, words: OwnWords): OfferView[] {
  if (discontinued !== undefined)
    return [{ text: words.pages.sheetPage.discontinued(words.date(discontinued)) }];
  if (offer === undefined) return [];
  const text = words.pages.handling.offer;
  const { sizes, currency, withheldFor, notClassified } = offer;
  if (notClassified !== undefined) return [{ text: words.pages.sheetPage.notForSale }];
  if (withheldFor.length > 0)
    return [
      {
        text: words.pages.sheetPage.noPrice(
          withheldFor.map((market) => text.markets[market] ?? market),
        ),
      },
    ];
  return sizes.map((offered) => {
    const size = `${words.numbers.plain(offered.ml)}\u00a0ml`;
    const priced = priceText(offered, currency, words);
    return priced === undefined
      ? { text: size, size }
      : { ...priced, text: `${size} ${priced.text}`, size };
  });
}

export const SHEETS = pageOfEachSheet(
  (slug) => `colours/${slug}/index.html`,
  ({ worded }, context, place) => sheetPage(worded, context, place),
);
