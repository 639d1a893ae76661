import { asMarkup, type ProseSectionView } from "../present/views.ts";
import { markdownHtml } from "./markdown.ts";
import type { SheetPage } from "./section-views.ts";

/** What the workshop wrote below its record, and what the colour is put up in; nothing where there is neither. */
export function notesSection({
  context: { records },
  worded: { sheet },
  words,
}: SheetPage): ProseSectionView | undefined {
  const notes = records.colours.get(sheet.slug)?.notes ?? "";
  const offer = offerText(sheet.offer, words.pages.handling.offer);
  if (notes === "" && offer === undefined) return undefined;
  const body = [...(notes === "" ? [] : [notes]), ...(offer === undefined ? [] : [offer])].join(
    "\n\n",
  );
  return {
    id: "notes",
    heading: words.pages.sections.notes,
    body: asMarkup(markdownHtml(body)),
    tables: [],
    sources: [],
  };
}

/** Sizes, with prices where no market forbids them; else why there are none. */
function offerText(
  offer: SheetPage["worded"]["sheet"]["offer"],
  text: SheetPage["words"]["pages"]["handling"]["offer"],
): string | undefined {
  if (offer === undefined) return undefined;
  const { sizes, currency, withheldFor, notClassified } = offer;
  if (notClassified !== undefined) return text.notClassified(notClassified);
  const putUp = text.putUp(
    sizes.map(({ ml, price }) =>
      text.size(
        ml,
        price === undefined || currency === undefined ? undefined : text.price(price, currency),
      ),
    ),
  );
  return withheldFor.length === 0
    ? putUp
    : `${putUp} ${text.withheld(withheldFor.map((market) => text.markets[market] ?? market))}`;
}
