import type { PageContext } from "../pages/page-context.ts";
import type { LaidCard } from "./card-layout.ts";
import type { CardSize } from "./card-size.ts";
import { drawCards } from "./cards-pdf.ts";
import type { PaperSize } from "./layout-tree.ts";
import { paperPhotographs } from "./paper-photographs.ts";
import { printDocument, printedBytes } from "./print-document.ts";
import type { Proof } from "./proof-inks.ts";
import { drawSheet } from "./sheet-pdf.ts";
import { laidOutSheet, type SheetToPrint } from "./sheet-paper.ts";

/** Cards and sheets of some colours in one document, their paints in process inks; sheets as they lie are laid out once. */
export function proofPdf(
  { cards, size, sheets, paper }: ProofContent,
  { words, records, date }: Pick<PageContext, "words" | "records" | "date">,
): (proof: Proof) => { readonly bytes: Uint8Array; readonly pages: number } {
  const laidOut = sheets.map((sheet) => [sheet, laidOutSheet(sheet, paper)] as const);
  return (proof) => {
    const document = printDocument(
      {
        title: proof.notice,
        author: records.workshop.name,
        language: words.language,
        date,
      },
      paperPhotographs(records),
      { proof },
    );
    const root = document.pdf.struct("Document");
    document.pdf.addStructure(root);
    let { pages } = drawCards(document, root, cards, size, words);
    for (const [sheet, laid] of laidOut) {
      drawSheet(document, root, sheet, laid, paper, (page) =>
        words.pages.sheetPaper.pageOf(page + 1, laid.pages),
      );
      pages += laid.pages;
    }
    root.end();
    return { bytes: printedBytes(document), pages };
  };
}

export interface ProofContent {
  readonly cards: readonly LaidCard[];
  readonly size: CardSize;
  readonly sheets: readonly SheetToPrint[];
  readonly paper: PaperSize;
}
