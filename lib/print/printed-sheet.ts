import type { PaperSize } from "./layout-tree.ts";
import { boundSheet, type BoundSheet } from "./range-contents.ts";
import { laidOutSheet, type SheetToPrint } from "./sheet-paper.ts";
import { sheetPdf } from "./sheet-pdf.ts";

/** A sheet's PDF, and what is needed to bind it in a range. */
export interface PrintedSheet {
  readonly bytes: Uint8Array;
  readonly bound: BoundSheet;
}

export function printedSheet(sheet: SheetToPrint, paper: PaperSize): PrintedSheet {
  const laidOut = laidOutSheet(sheet, paper);
  return { bytes: sheetPdf(sheet, paper, laidOut), bound: boundSheet(laidOut) };
}
