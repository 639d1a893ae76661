import type { OwnWords } from "../words/words.ts";
import type { LaidCard } from "./card-layout.ts";
import { BLEED_MM } from "./card-plan.ts";
import type { CardSize } from "./card-size.ts";
import { cropMarks } from "./crop-marks.ts";
import type { Placement } from "./draw-marks.ts";
import { drawTagged } from "./draw-tagged.ts";
import { imposition, type Imposition } from "./imposition.ts";
import { addPage, printDocument, printedBytes, type PrintDocument } from "./print-document.ts";

export interface CardsPdf {
  readonly bytes: Uint8Array;
  readonly pages: number;
  readonly leaves: number;
}

/** Sheets of cards with crop marks: each page of fronts followed by its backs, or folded cards on one side. */
export function cardsPdf(
  cards: readonly LaidCard[],
  size: CardSize,
  {
    workshop,
    date,
    words,
  }: { readonly workshop: string; readonly date: string | undefined; readonly words: OwnWords },
): CardsPdf {
  const text = words.pages.cards.document;
  const document = printDocument({
    title: text.title(workshop, size.name),
    author: workshop,
    subject: text.subject(cards.length),
    language: words.language,
    date,
  });
  const root = document.pdf.struct("Document");
  document.pdf.addStructure(root);
  const drawn = drawCards(document, root, cards, size, words);
  root.end();
  return { bytes: printedBytes(document), ...drawn };
}

/** Draws cards on new pages below a structure element. */
export function drawCards(
  document: PrintDocument,
  root: PDFKit.PDFStructureElement,
  cards: readonly LaidCard[],
  size: CardSize,
  words: OwnWords,
): Omit<CardsPdf, "bytes"> {
  const text = words.pages.cards.document;
  const layout = imposition(size);
  const leaves = cards.flatMap(({ name, leaves: own }) => own.map((leaf) => ({ name, leaf })));
  let pages = 0;
  for (let first = 0; first < leaves.length; first += layout.perSheet) {
    const sheet = leaves.slice(first, first + layout.perSheet);
    for (const side of size.twoSided ? (["front", "back"] as const) : (["both"] as const)) {
      addPage(document, layout.paperMm.width, layout.paperMm.height);
      pages++;
      drawTagged(document, root, cropMarks(layout), { xMm: 0, yMm: 0 });
      sheet.forEach(({ name, leaf }, i) => {
        const section = document.pdf.struct("Sect", { title: text.card(name) });
        root.add(section);
        for (const face of side === "both" ? (["front", "back"] as const) : [side])
          for (const element of leaf[face])
            drawTagged(document, section, element, placement(layout, size, i, face));
        section.end();
      });
    }
  }
  return { pages, leaves: leaves.length };
}

/** A face goes as far as its bleed, but not over a fold; a back is on its head above a fold, and on paper that lies. */
function placement(
  layout: Imposition,
  { widthMm, heightMm, twoSided }: CardSize,
  index: number,
  face: "front" | "back",
): Placement {
  const { xMm, yMm } = layout.place(index, face);
  const clipMm = {
    left: -BLEED_MM,
    top: twoSided ? -BLEED_MM : 0,
    right: widthMm + BLEED_MM,
    bottom: heightMm + BLEED_MM,
  };
  return face === "back" && (!twoSided || layout.isLying)
    ? { xMm: xMm + widthMm, yMm: yMm + heightMm, turned: true, clipMm }
    : { xMm, yMm, clipMm };
}
