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
  marginOf,
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
    turnTo: pagesWithFoot(document, paper, {
      lines: [caution, `${name}. ${revision}`],
      sideMm: marginOf(laidOut.fit).side,
      ...(pageText !== undefined && { pageText }),
    }),
  });
}

/** A sheet as it is bound into the range. */
export interface SheetLeaves {
  readonly listed: ListedSheet;
  readonly leaves: Leaves;
  /** Where a bookmark of it leads, on its first page from the top [pt]. */
  readonly topPt: number;
  /** Beside the foot of its pages. */
  readonly sideMm: number;
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
  return { listed: laidOut.listed, leaves, topPt, sideMm: marginOf(laidOut.fit).side };
}

/** What stands at the foot of every page, and its distance from the edges [mm]. */
interface PageFoot {
  readonly lines: readonly string[];
  readonly sideMm?: number;
  readonly pageText?: (page: number) => string;
}

/** Turns to a page of a number, from 0 on, making those before it; each with its foot, which is read on none. */
export function pagesWithFoot(
  document: PrintDocument,
  paper: PaperSize,
  foot: PageFoot,
): (page: number) => void {
  let current = -1;
  return (page) => {
    while (current < page) {
      addPage(document, paper.widthMm, paper.heightMm);
      current += 1;
      drawArtifact(document, () => drawFoot(document, paper, foot, current), "Pagination");
    }
  };
}

/** The number of a page, at the end of a foot of two lines. */
export function drawPageNumber(
  document: PrintDocument,
  paper: PaperSize,
  text: string,
  sideMm: number,
): void {
  drawArtifact(
    document,
    () => drawNumber(document, footPlace(paper, sideMm, 1), text),
    "Pagination",
  );
}

const LOOK = { sizePt: 7 };
const LINE_MM = 3.2;
/** What the number takes of the last line. */
const NUMBER_MM = 20;

interface FootPlace {
  readonly widthMm: number;
  readonly place: Placement;
}

function footPlace({ widthMm, heightMm }: PaperSize, sideMm: number, line: number): FootPlace {
  return {
    widthMm: widthMm - 2 * sideMm,
    place: { xMm: sideMm, yMm: heightMm - MARGIN.bottom + 5 + line * LINE_MM },
  };
}

function drawNumber(document: PrintDocument, { widthMm, place }: FootPlace, text: string): void {
  drawMarks(document, setRuns(sans(text), { widthMm, ...LOOK, align: "right" }).marks, place);
}

function drawFoot(
  document: PrintDocument,
  paper: PaperSize,
  { lines, sideMm = MARGIN.side, pageText }: PageFoot,
  page: number,
): void {
  const { widthMm, place } = footPlace(paper, sideMm, 0);
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
    drawMarks(document, set.marks, footPlace(paper, sideMm, below).place);
    below += set.lines.length;
  }
  if (pageText !== undefined)
    drawNumber(document, footPlace(paper, sideMm, below - 1), pageText(page));
}
