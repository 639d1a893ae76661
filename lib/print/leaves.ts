import type { UsedGlyph } from "./document-fonts.ts";

/**
 * Pages drawn once, to be bound into one document after another as they are. A PDF is made of
 * objects that name each other by number, and the numbers are all that differs from document to
 * document: so leaves are kept as bytes with holes where a number is to stand.
 */

/** What stands in a hole. */
export const HOLE = {
  /** The number of one of the leaves' objects, where that begins. */
  begins: 0,
  /** The same, where another names the object. */
  object: 1,
  /** The number of an object that the document has, one of {@link Leaves.outside}. */
  outside: 2,
  /** The key by which the document's structure finds what a page or a link belongs to. */
  key: 3,
} as const;

/** Plain data. */
export interface Leaves {
  /** How many objects of PDF they are; the first is the element of the structure that holds all others. */
  readonly objects: number;
  readonly bytes: Uint8Array;
  /** Of each hole, in order, three numbers: at which byte, what stands in it, and which one of these. */
  readonly holes: Uint32Array;
  /** Names of what they find in the document: its fonts, and {@link OUTSIDE}. */
  readonly outside: readonly string[];
  /** By key, the elements of the structure on a page, or the one of a link; as objects. */
  readonly elements: readonly (number | readonly number[])[];
  readonly pages: readonly {
    readonly object: number;
    /** Width and height [pt]. */
    readonly sizePt: readonly [width: number, height: number];
  }[];
  /** Their fonts by name, with what is used of each. */
  readonly fonts: readonly (readonly [name: string, used: readonly UsedGlyph[]])[];
}

export const OUTSIDE = {
  pages: "pages",
  /** The element of the structure that they stand in. */
  parent: "parent",
  lab: "Lab",
  /** What the document draws on a page, in order. */
  drawnOn: "drawn on ",
} as const;

/** What pdfkit writes as it is. */
export class AsWritten {
  readonly #text: string;

  constructor(text: string) {
    this.#text = text;
  }

  /** By which pdfkit tells it from a dictionary. */
  get [Symbol.toStringTag](): string {
    return "AsWritten";
  }

  toString(): string {
    return this.#text;
  }
}

/** Parts of pdfkit that its types leave out. */
export interface PdfObjects {
  readonly _root: { readonly data: { readonly Pages: PdfReference } };
  page: PdfPage;
  readonly _offset: number;
  /** Of each object by its number less one; null until it is written. */
  readonly _offsets: (number | null)[];
  _write: (data: string | Uint8Array) => void;
  readonly _refEnd: (reference: PdfReference) => void;
  ref: (data: object) => PdfReference;
  readonly getStructParentTree: () => {
    readonly add: (
      key: unknown,
      elements: PdfReference | readonly PdfReference[] | AsWritten,
    ) => void;
    readonly get: (key: unknown) => PdfReference | readonly PdfReference[];
  };
  createStructParentTreeNextKey: () => unknown;
}

export interface PdfReference {
  readonly id: number;
  readonly data: Record<string, unknown>;
  offset?: number;
  readonly end: () => void;
  toString: () => string;
}

export interface PdfPage {
  readonly dictionary: PdfReference;
  readonly content: PdfReference;
  readonly width: number;
  readonly height: number;
  readonly fonts: Record<string, PdfReference>;
}

export interface PdfElement {
  readonly dictionary: PdfReference;
  _ended: boolean;
  _flushed: boolean;
}

export function objectsOf(pdf: PDFKit.PDFDocument): PdfObjects {
  return pdf as unknown as PdfObjects;
}

export function elementOf(part: PDFKit.PDFStructureElement): PdfElement {
  return part as unknown as PdfElement;
}
