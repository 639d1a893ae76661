import { drawMarks } from "./draw-marks.ts";
import { drawArtifact, drawTagged } from "./draw-tagged.ts";
import type { Flow, Piece } from "./layout-tree.ts";
import { marksOf, MM_PER_PT } from "./mark.ts";
import type { PlacedPiece } from "./paper-columns.ts";
import type { PrintDocument } from "./print-document.ts";

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
    for (const { piece, yMm } of place.heads)
      drawArtifact(document, () =>
        drawMarks(document, marksOf(piece.content), { xMm: place.xMm, yMm }),
      );
    drawTagged(document, parent, one.content, place);
  }
}
