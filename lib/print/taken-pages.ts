/** Pages of a printed document taken over into another, tags and links with them: nothing on them is laid out or drawn again. */
import { certain } from "../quantities/at.ts";
import {
  inside,
  placeBody,
  writeObject,
  type DrawnPage,
  type PdfReference,
  type PrintDocument,
} from "./print-document.ts";
import { childrenIn, printedFile, type PrintedObject, type PrintedPage } from "./printed-file.ts";

/**
 * Takes over all pages of a printed document.
 * @param parent has nothing in it, and gets what is read of the pages.
 * @param turnTo makes a new page, its foot drawn, for one of theirs by its number from 0.
 */
export type TakePages = (
  parent: PDFKit.PDFStructureElement,
  bytes: Uint8Array,
  turnTo: (page: number) => void,
) => void;

/** What of an object's text is another's here; a string stands as it is. */
const CHANGED =
  /\((?:[^\\()]|\\[^])*\)|(?<object>\d+) 0 R|\/StructParent (?<annotation>\d+)|\/(?<part>[A-Z]{6})\+/g;

interface Changed {
  readonly object?: string;
  readonly annotation?: string;
  readonly part?: string;
}

/** Fonts of the document itself, at the foot of pages, are named past those of any page that it takes over. */
const FONTS_OF_A_PAGE = 1000;

/** Into one document, in which nothing has been set yet; what is the same in several that are taken over stands in it once. */
export function takingPages({ pdf }: PrintDocument): TakePages {
  const into = inside(pdf);
  into._fontCount = FONTS_OF_A_PAGE;
  const shared = new Map<string, PdfReference>();
  const partName = partNames();
  return (parent, bytes, turnTo) => {
    const file = printedFile(bytes);
    const parts = new Map<string, string>();
    const copies = new Map<number, PdfReference>([[file.root, inside(parent).dictionary]]);
    /** Elements are copied once all pages are there, which they name. */
    const held: (() => void)[] = [];

    const copyOf = (number: number): PdfReference => {
      const known = copies.get(number);
      if (known !== undefined) return known;
      const object = file.object(number);
      const key = sharedKey(object);
      const own = (key === undefined ? undefined : shared.get(key)) ?? newCopy(number, object);
      copies.set(number, own);
      if (key !== undefined) shared.set(key, own);
      return own;
    };
    const newCopy = (number: number, { text, stream }: PrintedObject): PdfReference => {
      const own = into.ref({});
      // Known before it is written: elements lead to each other.
      copies.set(number, own);
      writeObject(into, own, text.replace(CHANGED, changed), stream);
      return own;
    };
    const changed = (found: string, ...groups: unknown[]): string => {
      const { object, annotation, part } = groups.at(-1) as Changed;
      if (object !== undefined) return `${copyOf(Number(object)).id} 0 R`;
      if (annotation !== undefined)
        return `/StructParent ${keyOf(() => copyOf(certain(file.elementOf(Number(annotation)))))}`;
      if (part === undefined) return found;
      const name = parts.get(part) ?? partName();
      parts.set(part, name);
      return `/${name}+`;
    };
    const keyOf = (elements: () => unknown): number => {
      const key = into.createStructParentTreeNextKey();
      held.push(() => into.getStructParentTree().add(key, elements()));
      return key;
    };

    file.pages.forEach((page, i) => {
      turnTo(i);
      copies.set(page.number, into.page.dictionary);
      place(into.page, page, copyOf);
      into.page.dictionary.data["StructParents"] = keyOf(() =>
        page.elements.map((one) => (one === undefined ? null : copyOf(one))),
      );
    });
    for (const make of held) make();
    nameChildren(parent, childrenIn(file.object(file.root).text).map(copyOf));
  };
}

/** On a new page whose foot is drawn. */
function place(
  page: DrawnPage,
  taken: PrintedPage,
  copyOf: (number: number) => PdfReference,
): void {
  const { dictionary, resources } = page;
  for (const [kind, name, object] of taken.resources) {
    const own = (resources.data[kind] ??= {}) as Record<string, PdfReference>;
    own[name] ??= copyOf(object);
  }
  if (taken.annotations.length > 0) dictionary.data["Annots"] = taken.annotations.map(copyOf);
  placeBody(page, certain(taken.body.stream));
}

/** pdfkit names below an element what it drew there; these are written already. */
function nameChildren(parent: PDFKit.PDFStructureElement, elements: readonly PdfReference[]): void {
  const own = inside(parent);
  own._children = [...elements];
  own._flushChild = (element) => void (own.dictionary.data["K"] as PdfReference[]).push(element);
}

/** Of a picture, what tells it from all others: the photograph of a lot may be shown on several sheets. */
function sharedKey({ text, stream }: PrintedObject): string | undefined {
  return stream !== undefined && text.includes("/Subtype /Image") && !text.includes(" 0 R")
    ? text + Buffer.from(stream).toString("latin1")
    : undefined;
}

/**
 * Six letters for each part of a font, which no other part in the document has; pdfkit's own begin with no Q.
 * @source ISO 32000-1:2008, 9.6.4: different subsets of a font in one file have different tags.
 */
function partNames(): () => string {
  let made = 0;
  return () => {
    let name = "";
    for (let i = 0, left = made; i < 5; i++, left = Math.floor(left / 26))
      name = String.fromCharCode(65 + (left % 26)) + name;
    made++;
    return `Q${name}`;
  };
}
