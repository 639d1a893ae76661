import { useGlyphs } from "./document-fonts.ts";
import { at, certain } from "../quantities/at.ts";
import {
  elementOf,
  HOLE,
  objectsOf,
  OUTSIDE,
  type Leaves,
  type PdfObjects,
  type PdfReference,
} from "./leaves.ts";
import type { PrintDocument } from "./print-document.ts";

/**
 * Binds leaves into a document whose fonts are embedded whole, behind all its pages.
 * @param parent the element of the structure that they stand in.
 * @param drawOn draws what the document adds to one of their pages, which is the current one meanwhile.
 */
export function boundLeaves(
  { pdf, labSpace, fonts }: PrintDocument,
  parent: PDFKit.PDFStructureElement,
  leaves: Leaves,
  drawOn: (page: number) => void,
): void {
  const objects = objectsOf(pdf);
  const part = pdf.struct("Sect");
  const own = [
    elementOf(part).dictionary,
    ...Array.from({ length: leaves.objects - 1 }, () => objects.ref({})),
  ];
  // It is written with the leaves, and not by pdfkit.
  Object.assign(elementOf(part), { _ended: true, _flushed: true });
  parent.add(part);
  const named = new Map<string, { readonly id: number }>([
    [OUTSIDE.pages, objects._root.data.Pages],
    [OUTSIDE.parent, elementOf(parent).dictionary],
    [OUTSIDE.lab, labSpace],
  ]);
  for (const [name, used] of leaves.fonts) {
    const font = fonts.font(name);
    useGlyphs(font, used);
    named.set(name, font.ref());
  }
  for (const [i, { object, sizePt }] of leaves.pages.entries()) {
    const page = at(own, object);
    // Pdfkit asks a page for its size where a bookmark leads to it.
    page.data["MediaBox"] = [0, 0, ...sizePt];
    named.set(
      `${OUTSIDE.drawnOn}${i}`,
      drawnOn(objects, page, () => drawOn(i)),
    );
  }
  const tree = objects.getStructParentTree();
  const keys = leaves.elements.map((elements) => {
    const key = objects.createStructParentTreeNextKey() as number;
    tree.add(
      key,
      typeof elements === "number" ? at(own, elements) : elements.map((one) => at(own, one)),
    );
    return key;
  });
  const outside = leaves.outside.map((name) => certain(named.get(name)).id);
  write(objects, leaves, own, (kind, which) => {
    if (kind === HOLE.key) return at(keys, which);
    return kind === HOLE.outside ? at(outside, which) : at(own, which).id;
  });
}

/** Adds a page that is written as it is. @returns what is drawn on it beside that */
function drawnOn(objects: PdfObjects, page: PdfReference, draw: () => void): PdfReference {
  const pages = objects._root.data.Pages.data as { readonly Kids: PdfReference[]; Count: number };
  pages.Kids.push(page);
  pages.Count += 1;
  const content = objects.ref({});
  const current = objects.page;
  objects.page = Object.create(current, {
    dictionary: { value: page },
    content: { value: content },
    markings: { value: [] },
  }) as typeof current;
  draw();
  objects.page = current;
  content.end();
  return content;
}

/** Digits of the largest number. */
const MOST_DIGITS = 10;

function write(
  objects: PdfObjects,
  { bytes, holes }: Leaves,
  own: readonly PdfReference[],
  numberIn: (kind: number, which: number) => number,
): void {
  const written = Buffer.allocUnsafe(bytes.length + (holes.length / 3) * MOST_DIGITS);
  let [from, length] = [0, 0];
  const copy = (to: number): void => {
    written.set(bytes.subarray(from, to), length);
    length += to - from;
    from = to;
  };
  for (let i = 0; i < holes.length; i += 3) {
    const [kind, which] = [at(holes, i + 1), at(holes, i + 2)];
    copy(at(holes, i));
    if (kind === HOLE.begins) at(own, which).offset = objects._offset + length;
    length += written.write(String(numberIn(kind, which)), length, "latin1");
  }
  copy(bytes.length);
  objects._write(written.subarray(0, length));
  for (const reference of own) objects._refEnd(reference);
}
