import { drawFlow } from "./draw-flow.ts";
import { drawMarks, type Placement } from "./draw-marks.ts";
import { drawArtifact } from "./draw-tagged.ts";
import { drawnLeaves } from "./drawn-leaves.ts";
import type { PaperSize } from "./layout-tree.ts";
import type { Leaves } from "./leaves.ts";
import { paperPhotographs } from "./paper-photographs.ts";
import { quiet, sans } from "./paper-style.ts";
import { addPage, printDocument, printedBytes, type PrintDocument } from "./print-document.ts";
import { setRuns } from "./set-runs.ts";
import {
  laidOutSheet,
  MARGIN,
  type LaidOutSheet,
  type ListedSheet,
  type PagesToPrint,
} from "./sheet-paper.ts";

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
  pageText?: (page: number) => string,
  anchored?: (anchor: string, yPt: number) => void,
): void {
  const { name, revision } = laidOut.listed;
  drawFlow(document, parent, laidOut.flow, {
    placed: laidOut.placed,
    ...(anchored !== undefined && { anchored }),
    turnTo: pagesWithFoot(document, paper, [caution, `${name}. ${revision}`], pageText),
  });
}

/** A sheet as it is bound into the range. */
export interface SheetLeaves {
  readonly listed: ListedSheet;
  readonly leaves: Leaves;
  /** Where a bookmark of it leads, on its first page from the top [pt]. */
  readonly topPt: number;
}

/** A sheet's pages without their numbers, which the range draws. */
export function sheetLeaves(
  sheet: PagesToPrint,
  paper: PaperSize,
  laidOut: LaidOutSheet,
): SheetLeaves {
  const { records, words } = sheet.context;
  let topPt = 0;
  const leaves = drawnLeaves({
    language: words.language,
    photographs: paperPhotographs(records),
    added: { text: words.pages.sheetPaper.pageOf(1, 1), face: "sans" },
    draw: (document, part) =>
      drawSheet(document, part, sheet, laidOut, paper, undefined, (_, yPt) => (topPt = yPt)),
  });
  return { listed: laidOut.listed, leaves, topPt };
}

/** Turns to a page of a number, from 0 on, making those before it; each with its foot, which is read on none. */
export function pagesWithFoot(
  document: PrintDocument,
  paper: PaperSize,
  lines: readonly string[],
  pageText?: (page: number) => string,
): (page: number) => void {
  let current = -1;
  return (page) => {
    while (current < page) {
      addPage(document, paper.widthMm, paper.heightMm);
      current += 1;
      drawArtifact(
        document,
        () => drawFoot(document, paper, lines, pageText?.(current)),
        "Pagination",
      );
    }
  };
}

/** The number of a page, at the end of a foot of two lines. */
export function drawPageNumber(document: PrintDocument, paper: PaperSize, text: string): void {
  drawArtifact(document, () => drawNumber(document, paper, 1, text), "Pagination");
}

const LOOK = { sizePt: 7 };
const LINE_MM = 3.2;
/** What the number takes of the last line. */
const NUMBER_MM = 20;

function footPlace(
  { widthMm, heightMm }: PaperSize,
  line: number,
): { readonly widthMm: number; readonly place: Placement } {
  return {
    widthMm: widthMm - 2 * MARGIN.side,
    place: { xMm: MARGIN.side, yMm: heightMm - MARGIN.bottom + 5 + line * LINE_MM },
  };
}

function drawNumber(document: PrintDocument, paper: PaperSize, line: number, text: string): void {
  const { widthMm, place } = footPlace(paper, line);
  drawMarks(document, setRuns(sans(text), { widthMm, ...LOOK, align: "right" }).marks, place);
}

function drawFoot(
  document: PrintDocument,
  paper: PaperSize,
  lines: readonly string[],
  pageText: string | undefined,
): void {
  const { widthMm, place } = footPlace(paper, 0);
  const rule = {
    kind: "line",
    fromMm: [0, -1.5],
    toMm: [widthMm, -1.5],
    widthPt: 0.25,
    ink: { grey: 0.6 },
  } as const;
  drawMarks(document, [rule], place);
  let below = 0;
  for (const [i, text] of lines.entries()) {
    const besideMm = i === lines.length - 1 ? NUMBER_MM : 0;
    const set = setRuns(quiet(text), { widthMm: widthMm - besideMm, ...LOOK });
    drawMarks(document, set.marks, footPlace(paper, below).place);
    below += set.lines.length;
  }
  if (pageText !== undefined) drawNumber(document, paper, below - 1, pageText);
}
