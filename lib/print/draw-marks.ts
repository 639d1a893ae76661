import { certain } from "../quantities/at.ts";
import { drawPicture } from "./draw-picture.ts";
import { MM_PER_PT, type Mark, type TextMark } from "./mark.ts";
import type { PrintDocument } from "./print-document.ts";
import { setInk } from "./set-ink.ts";

/** Where marks go on the page: their own origin, and half a turn for what is read from the other side. */
export interface Placement {
  readonly xMm: number;
  readonly yMm: number;
  /** Turned about the origin by 180 degree. */
  readonly turned?: boolean;
  /** Nothing shows outside [mm, from the origin]. */
  readonly clipMm?: {
    readonly left: number;
    readonly top: number;
    readonly right: number;
    readonly bottom: number;
  };
}

/** Draws marks, read as what they are drawn inside of. */
export function drawMarks(
  document: PrintDocument,
  marks: readonly Mark[],
  { xMm, yMm, turned = false, clipMm }: Placement,
): void {
  const { pdf } = document;
  pdf.save();
  pdf.translate(xMm / MM_PER_PT, yMm / MM_PER_PT);
  if (turned) pdf.rotate(180);
  if (clipMm !== undefined)
    pdf
      .rect(
        pt(clipMm.left),
        pt(clipMm.top),
        pt(clipMm.right - clipMm.left),
        pt(clipMm.bottom - clipMm.top),
      )
      .clip();
  for (const mark of marks) drawMark(document, mark);
  pdf.restore();
}

function drawMark(document: PrintDocument, mark: Mark): void {
  const { pdf } = document;
  switch (mark.kind) {
    case "text":
      return drawText(document, mark);
    case "box":
      setInk(document, mark.ink, "fill");
      pdf.rect(pt(mark.xMm), pt(mark.yMm), pt(mark.widthMm), pt(mark.heightMm));
      pdf.addContent("f");
      return;
    case "photograph":
      pdf.image(photographOf(document, mark.hash), pt(mark.xMm), pt(mark.yMm), {
        width: pt(mark.widthMm),
        height: pt(mark.heightMm),
      });
      return;
    case "line":
      setInk(document, mark.ink, "stroke");
      pdf.lineWidth(mark.widthPt);
      if (mark.dashMm === undefined) pdf.undash();
      else pdf.dash(pt(mark.dashMm[0]), { space: pt(mark.dashMm[1]) });
      pdf.moveTo(pt(mark.fromMm[0]), pt(mark.fromMm[1])).lineTo(pt(mark.toMm[0]), pt(mark.toMm[1]));
      pdf.addContent("S");
      return;
    case "path":
      pdf.save();
      pdf.translate(pt(mark.xMm), pt(mark.yMm));
      pdf.scale(mark.scale / MM_PER_PT);
      pdf.path(mark.d);
      setInk(document, mark.ink, mark.strokeWidth === undefined ? "fill" : "stroke");
      if (mark.strokeWidth !== undefined) pdf.lineWidth(mark.strokeWidth);
      pdf.addContent(mark.strokeWidth !== undefined ? "S" : mark.evenOdd === true ? "f*" : "f");
      pdf.restore();
      return;
    case "picture":
      drawPicture(document, mark);
  }
}

/** Neither underlined nor linked: pdfkit need not measure what it is told the width of. */
const ON_ITS_BASELINE = {
  lineBreak: false,
  baseline: "alphabetic",
  textWidth: 0,
  wordCount: 1,
} as PDFKit.Mixins.TextOptions;

function drawText(
  document: PrintDocument,
  { text, xMm, yMm, face, sizePt, ink = { grey: 0 } }: TextMark,
): void {
  const { pdf } = document;
  setInk(document, ink, "fill");
  let x = pt(xMm);
  document.runs(text, face).forEach((run, i, runs) => {
    pdf.font(run.font).fontSize(sizePt);
    pdf.text(run.text, x, pt(yMm), ON_ITS_BASELINE);
    if (i < runs.length - 1) x += pdf.widthOfString(run.text);
  });
}

function pt(mm: number): number {
  return mm / MM_PER_PT;
}

/** @throws RangeError for a photograph that the document was not given: a fault of ours. */
function photographOf({ photographs }: PrintDocument, hash: string): Buffer {
  return Buffer.from(certain(photographs.get(hash)));
}
