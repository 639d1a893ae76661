import { usedGlyphs } from "./document-fonts.ts";
import { certain } from "../quantities/at.ts";
import {
  elementOf,
  HOLE,
  objectsOf,
  OUTSIDE,
  type Leaves,
  type PdfPage,
  type PdfReference,
} from "./leaves.ts";
import { printDocument, type PrintDocument } from "./print-document.ts";
import type { Face } from "./print-font.ts";
import { Hole, textWithHoles } from "./text-with-holes.ts";

export interface LeavesToDraw {
  readonly language: string;
  readonly photographs: PrintDocument["photographs"];
  /** A text like those that the document will draw on each page. */
  readonly added: { readonly text: string; readonly face: Face };
  /** Below an element of the structure, from a new page on. */
  readonly draw: (document: PrintDocument, part: PDFKit.PDFStructureElement) => void;
}

/** Draws pages for any document whose fonts are embedded whole. */
export function drawnLeaves({ language, photographs, added, draw }: LeavesToDraw): Leaves {
  const document = printDocument(
    { title: "", author: "", language, date: undefined },
    photographs,
    {
      wholeFonts: true,
    },
  );
  const { pdf, labSpace, fonts, runs } = document;
  const objects = objectsOf(pdf);
  const outside: string[] = [];
  const outsideHole = (name: string): Hole => {
    if (!outside.includes(name)) outside.push(name);
    return new Hole([HOLE.outside, outside.indexOf(name)], " 0 R");
  };
  const named = (reference: unknown, as: Hole): void => {
    (reference as PdfReference).toString = () => as.toString();
  };
  named(objects._root.data.Pages, outsideHole(OUTSIDE.pages));
  named(labSpace, outsideHole(OUTSIDE.lab));
  const refer = objects.ref.bind(objects);
  objects.ref = (data) => {
    const reference = refer(data);
    named(reference, new Hole([HOLE.object, reference.id], " 0 R"));
    return reference;
  };
  const keys: Hole[] = [];
  objects.createStructParentTreeNextKey = () => {
    const key = new Hole([HOLE.key, keys.length]);
    keys.push(key);
    objects.getStructParentTree().add(key, []);
    return key;
  };
  const text = textWithHoles();
  objects._write = text.write;

  const parent = pdf.struct("Document");
  named(elementOf(parent).dictionary, outsideHole(OUTSIDE.parent));
  pdf.addStructure(parent);
  const part = pdf.struct("Sect");
  parent.add(part);
  const pages: PdfPage[] = [];
  const fontsOfAdded = runs(added.text, added.face).map(({ font }) => fonts.font(font));
  pdf.on("pageAdded", () => {
    const { page } = objects;
    page.dictionary.data["Contents"] = [
      page.content,
      outsideHole(`${OUTSIDE.drawnOn}${pages.length}`),
    ];
    for (const font of fontsOfAdded) page.fonts[font.id] = font.ref();
    pages.push(page);
  });
  draw(document, part);
  part.end();
  pdf.flushPages();

  // The part was there first.
  const own = new Map(
    text
      .begun()
      .toSorted((one, other) => one - other)
      .map((id, i) => [id, i]),
  );
  const objectOf = (id: number): number => certain(own.get(id));
  const fontNames = new Map(fonts.opened().map((name) => [fonts.font(name).ref().id, name]));
  const fontIn = (id: number): number => {
    const name = certain(fontNames.get(id));
    if (!outside.includes(name)) outside.push(name);
    return outside.indexOf(name);
  };
  return {
    ...text.written(([kind, which]) => {
      if (kind === HOLE.begins) return [kind, objectOf(which)];
      if (kind !== HOLE.object) return [kind, which];
      const object = own.get(which);
      return object === undefined ? [HOLE.outside, fontIn(which)] : [kind, object];
    }),
    objects: own.size,
    outside,
    elements: keys.map((key) => {
      const elements = objects.getStructParentTree().get(key);
      return "id" in elements ? objectOf(elements.id) : elements.map(({ id }) => objectOf(id));
    }),
    pages: pages.map(({ dictionary, width, height }) => ({
      object: objectOf(dictionary.id),
      sizePt: [width, height],
    })),
    fonts: fonts.opened().map((name) => [name, usedGlyphs(fonts.font(name))]),
  };
}
