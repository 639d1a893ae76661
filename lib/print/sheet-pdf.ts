import { paperPhotographs } from "./paper-photographs.ts";
import { drawFlow } from "./draw-flow.ts";
import { drawMarks } from "./draw-marks.ts";
import { drawArtifact } from "./draw-tagged.ts";
import type { PaperSize } from "./layout-tree.ts";
import { quiet, sans } from "./paper-style.ts";
import { addPage, printDocument, printedBytes, type PrintDocument } from "./print-document.ts";
import { setRuns } from "./set-runs.ts";
import { laidOutSheet, MARGIN, type LaidOutSheet, type PagesToPrint } from "./sheet-paper.ts";

/** A sheet as a PDF of its own. */
export function sheetPdf(
  sheet: PagesToPrint,
  paper: PaperSize,
  laidOut: LaidOutSheet = laidOutSheet(sheet, paper),
): Uint8Array {
  const {
    sheet: { title, description },
    context: { records, date, words },
  } = sheet;
  const document = printDocument(
    {
      title,
      author: records.workshop.name,
      subject: description,
      language: words.language,
      date,
    },
    paperPhotographs(records),
  );
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
  { caution }: Pick<PagesToPrint, "caution">,
  laidOut: LaidOutSheet,
  paper: PaperSize,
  pageText: (page: number) => string,
  anchored?: (anchor: string, yPt: number) => void,
): void {
  const { name, revision } = laidOut.listed;
  drawFlow(document, parent, laidOut.flow, {
    placed: laidOut.placed,
    ...(anchored === undefined ? {} : { anchored }),
    turnTo: pagesWithFoot(document, paper, [caution, `${name}. ${revision}`], pageText),
  });
}

/** Turns to a page of a number, from 0 on, making those before it; each with its foot, which is read on none. */
export function pagesWithFoot(
  document: PrintDocument,
  paper: PaperSize,
  lines: readonly string[],
  pageText: (page: number) => string,
): (page: number) => void {
  let current = -1;
  return (page) => {
    while (current < page) {
      addPage(document, paper.widthMm, paper.heightMm);
      drawFoot(document, paper, lines, pageText(++current));
    }
  };
}

function drawFoot(
  document: PrintDocument,
  paper: PaperSize,
  lines: readonly string[],
  pageText: string,
): void {
  const widthMm = paper.widthMm - 2 * MARGIN.side;
  const place = { xMm: MARGIN.side, yMm: paper.heightMm - MARGIN.bottom + 5 };
  const look = { sizePt: 7 };
  const rule = {
    kind: "line",
    fromMm: [0, -1.5],
    toMm: [widthMm, -1.5],
    widthPt: 0.25,
    ink: { grey: 0.6 },
  } as const;
  drawArtifact(
    document,
    () => {
      drawMarks(document, [rule], place);
      lines.forEach((text, i) => {
        const yMm = place.yMm + i * 3.2;
        drawMarks(document, setRuns(quiet(text), { widthMm: widthMm - 20, ...look }).marks, {
          ...place,
          yMm,
        });
        if (i === lines.length - 1)
          drawMarks(document, setRuns(sans(pageText), { widthMm, ...look, align: "right" }).marks, {
            ...place,
            yMm,
          });
      });
    },
    "Pagination",
  );
}
