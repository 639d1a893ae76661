import { drawMarks, type Placement } from "./draw-marks.ts";
import { MM_PER_PT, type Tagged } from "./mark.ts";
import type { PrintDocument } from "./print-document.ts";

/** Draws an element and all inside it below a structure element, in reading order. */
export function drawTagged(
  document: PrintDocument,
  parent: PDFKit.PDFStructureElement,
  { tag, alt, language, scope, marks = [], links = [], children = [] }: Tagged,
  place: Placement,
): void {
  const { pdf } = document;
  if (tag === "Artifact") {
    drawArtifact(document, () => drawMarks(document, marks, place));
    return;
  }
  const element = pdf.struct(tag, {
    ...(alt !== undefined && { alt }),
    ...(language !== undefined && { lang: language }),
    ...(scope !== undefined && { scope }),
  });
  parent.add(element);
  if (marks.length > 0) element.add(() => drawMarks(document, marks, place));
  for (const child of children) drawTagged(document, element, child, place);
  for (const { href, xMm, yMm, widthMm, heightMm } of links) {
    const box = [place.xMm + xMm, place.yMm + yMm, widthMm, heightMm].map(
      (mm) => mm / MM_PER_PT,
    ) as [number, number, number, number];
    const link = pdf.struct("Link");
    element.add(link);
    const inside = href.startsWith("#");
    const options = {
      structParent: link,
      Contents: Object(inside ? href.slice(1) : href) as string,
    } as PDFKit.Mixins.AnnotationOption;
    if (inside) pdf.goTo(...box, href.slice(1), options);
    else pdf.link(...box, href, options);
    link.end();
  }
  element.end();
}

/** Draws what a reading machine passes over. */
export function drawArtifact(
  { pdf }: PrintDocument,
  draw: () => void,
  type: "Layout" | "Pagination" = "Layout",
): void {
  pdf.markContent("Artifact", { type });
  draw();
  pdf.endMarkedContent();
}
