import { drawMarks } from "./draw-blocks.ts";
import { drawPicture } from "./draw-picture.ts";
import type { PlacedPiece } from "./paper-columns.ts";
import type { Flow, PaperMark, Piece, Tagged } from "./layout-tree.ts";
import type { PrintDocument } from "./print-document.ts";
import { MM_PER_PT } from "./text-lines.ts";

/** What a drawing asks of its document as it goes. */
export interface FlowDrawing {
  readonly placed: ReadonlyMap<Piece, PlacedPiece>;
  /** Makes the page of this number the current one. */
  readonly turnTo: (page: number) => void;
  /** Told where an anchor stands, on its page [pt]. */
  readonly anchored?: (anchor: string, yPt: number) => void;
}

/** Draws a flow below a structure element, in reading order. */
export function drawFlow(
  document: PrintDocument,
  parent: PDFKit.PDFStructureElement,
  flow: readonly Flow[],
  drawing: FlowDrawing,
): void {
  for (const one of flow) {
    if (one.kind === "group") {
      const element = document.pdf.struct(
        one.tag,
        one.language === undefined ? {} : { lang: one.language },
      );
      parent.add(element);
      drawFlow(document, element, one.children, drawing);
      element.end();
      continue;
    }
    const place = drawing.placed.get(one);
    if (place === undefined) throw new RangeError("A piece of the flow has no place");
    drawing.turnTo(place.page);
    if (one.anchor !== undefined) drawing.anchored?.(one.anchor, place.yMm / MM_PER_PT);
    drawTagged(document, parent, one.content, place);
  }
}

interface Place {
  readonly xMm: number;
  readonly yMm: number;
}

export function drawTagged(
  document: PrintDocument,
  parent: PDFKit.PDFStructureElement,
  tagged: Tagged,
  place: Place,
): void {
  const { pdf } = document;
  const { tag, alt, language, scope, marks = [], links = [], children = [] } = tagged;
  if (tag === "Artifact") {
    pdf.markContent("Artifact", { type: "Layout" });
    drawAll(document, marks, place);
    pdf.endMarkedContent();
    return;
  }
  const element = pdf.struct(tag, {
    ...(alt === undefined ? {} : { alt }),
    ...(language === undefined ? {} : { lang: language }),
    ...(scope === undefined ? {} : { scope }),
  });
  parent.add(element);
  if (marks.length > 0) element.add(() => drawAll(document, marks, place));
  for (const child of children) drawTagged(document, element, child, place);
  for (const { href, xMm, yMm, widthMm, heightMm } of links) {
    const box = [place.xMm + xMm, place.yMm + yMm, widthMm, heightMm].map(
      (mm) => mm / MM_PER_PT,
    ) as [number, number, number, number];
    const link = pdf.struct("Link");
    element.add(link);
    if (href.startsWith("#"))
      pdf.goTo(...box, href.slice(1), {
        structParent: link,
        Contents: Object(href.slice(1)) as string,
      } as PDFKit.Mixins.AnnotationOption);
    else
      pdf.link(...box, href, {
        structParent: link,
        Contents: Object(href) as string,
      } as PDFKit.Mixins.AnnotationOption);
    link.end();
  }
  element.end();
}

function drawAll(document: PrintDocument, marks: readonly PaperMark[], place: Place): void {
  drawMarks(
    document,
    marks.filter((mark) => mark.kind !== "picture"),
    place,
  );
  for (const mark of marks) if (mark.kind === "picture") drawPicture(document, mark, place);
}
