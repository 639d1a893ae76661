import { drawFlow } from "./draw-flow.ts";
import { drawMarks } from "./draw-blocks.ts";
import type { PaperSize } from "./layout-tree.ts";
import { GREY } from "./paper-style.ts";
import { setRuns } from "./paper-run.ts";
import { addPage, printDocument, printedBytes, type PrintDocument } from "./print-document.ts";
import { laidOutSheet, MARGIN, type LaidOutSheet, type SheetToPrint } from "./sheet-paper.ts";

/** A sheet as a PDF of its own. */
export function sheetPdf(
  sheet: SheetToPrint,
  paper: PaperSize,
  laidOut: LaidOutSheet = laidOutSheet(sheet, paper),
): Uint8Array {
  const {
    view,
    page: {
      words,
      context: { records, date },
    },
  } = sheet;
  const document = printDocument({
    title: view.title,
    author: records.workshop.name,
    subject: view.description,
    language: words.language,
    date,
  });
  const root = document.pdf.struct("Document");
  document.pdf.addStructure(root);
  drawSheet(document, root, sheet, laidOut, paper, (page) =>
    words.pages.sheetPaper.pageOf(page + 1, laidOut.pages),
  );
  root.end();
  return printedBytes(document);
}

/** Draws a laid-out sheet on new pages below a structure element. */
export function drawSheet(
  document: PrintDocument,
  parent: PDFKit.PDFStructureElement,
  { view, page: { words } }: SheetToPrint,
  laidOut: LaidOutSheet,
  paper: PaperSize,
  pageText: (page: number) => string,
  anchored?: (anchor: string, yPt: number) => void,
): void {
  let current = -1;
  drawFlow(document, parent, laidOut.flow, {
    placed: laidOut.placed,
    ...(anchored === undefined ? {} : { anchored }),
    turnTo: (page) => {
      while (current < page) {
        current++;
        addPage(document, paper.widthMm, paper.heightMm);
        drawFooter(
          document,
          paper,
          [words.pages.cautionLine, `${view.name}. ${view.revision}`],
          pageText(current),
        );
      }
    },
  });
}

/** The line that defers, what the sheet is and of when, and the page: on every page, read on none. */
export function drawFooter(
  document: PrintDocument,
  paper: PaperSize,
  lines: readonly string[],
  pageText: string,
): void {
  const widthMm = paper.widthMm - 2 * MARGIN.side;
  const look = { sizePt: 7, leadingPt: 9 };
  const top = paper.heightMm - MARGIN.bottom + 5;
  document.pdf.markContent("Artifact", { type: "Pagination" });
  drawMarks(
    document,
    [{ kind: "line", fromMm: [0, -1.5], toMm: [widthMm, -1.5], widthPt: 0.25, ink: { grey: 0.6 } }],
    { xMm: MARGIN.side, yMm: top },
  );
  lines.forEach((text, i) =>
    drawMarks(
      document,
      setRuns([{ text, face: "sans", ink: GREY }], { widthMm: widthMm - 20, ...look }).marks,
      { xMm: MARGIN.side, yMm: top + i * 3.2 },
    ),
  );
  drawMarks(
    document,
    setRuns([{ text: pageText, face: "sans" }], { widthMm: 20, ...look, align: "right" }).marks,
    { xMm: MARGIN.side + widthMm - 20, yMm: top + (lines.length - 1) * 3.2 },
  );
  document.pdf.endMarkedContent();
}
