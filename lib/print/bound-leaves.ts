import { useGlyphs } from "./document-fonts.ts";
import { at, certain } from "../quantities/at.ts";
import {
  AsWritten,
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
  const { id: first } = elementOf(part).dictionary;
  // It is written with the leaves, and not by pdfkit, and so are the objects behind it, of which pdfkit knows the pages alone.
  Object.assign(elementOf(part), { _ended: true, _flushed: true });
  parent.add(part);
  const known = new Map([[0, elementOf(part).dictionary]]);
  const pages = new Set(leaves.pages.map(({ object }) => object));
  for (let i = 1; i < leaves.objects; i++)
    if (pages.has(i)) known.set(i, objects.ref({}));
    else objects._offsets.push(null);
  const idOf = (object: number): number => first + object;
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
    const page = certain(known.get(object));
    // Pdfkit asks a page for its size where a bookmark leads to it.
    page.data["MediaBox"] = [0, 0, ...sizePt];
    named.set(
      `${OUTSIDE.drawnOn}${i}`,
      drawnOn(objects, page, () => drawOn(i)),
    );
  }
  const tree = objects.getStructParentTree();
  const reference = (object: number): string => `${idOf(object)} 0 R`;
  const keys = leaves.elements.map((elements) => {
    const key = objects.createStructParentTreeNextKey() as number;
    const text =
      typeof elements === "number" ? reference(elements) : `[${elements.map(reference).join(" ")}]`;
    tree.add(key, new AsWritten(text));
    return key;
  });
  const outside = leaves.outside.map((name) => certain(named.get(name)).id);
  write(objects, leaves, (kind, which, offset) => {
    if (kind === HOLE.key) return at(keys, which);
    if (kind === HOLE.outside) return at(outside, which);
    const id = idOf(which);
    if (kind === HOLE.begins) objects._offsets[id - 1] = offset;
    return id;
  });
  for (const reference of known.values()) {
    reference.offset = certain(objects._offsets[reference.id - 1] ?? undefined);
    objects._refEnd(reference);
  }
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
/** Fewer bytes are copied sooner one by one. */
const FEW_BYTES = 32;

/** @param numberIn what stands in a hole, at an offset of the document. */
function write(
  objects: PdfObjects,
  { bytes, holes }: Leaves,
  numberIn: (kind: number, which: number, offset: number) => number,
): void {
  const written = Buffer.allocUnsafe(bytes.length + (holes.length / 3) * MOST_DIGITS);
  let [from, length] = [0, 0];
  const copy = (to: number): void => {
    if (to - from > FEW_BYTES) written.set(bytes.subarray(from, to), length);
    else for (let i = from; i < to; i++) written[length + i - from] = at(bytes, i);
    length += to - from;
    from = to;
  };
  for (let i = 0; i < holes.length; i += 3) {
    copy(at(holes, i));
    const number = numberIn(at(holes, i + 1), at(holes, i + 2), objects._offset + length);
    for (const digit of String(number)) written[length++] = digit.charCodeAt(0);
  }
  copy(bytes.length);
  objects._write(written.subarray(0, length));
}
