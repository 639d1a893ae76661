import type { Lab } from "../colorimetry/viewing.ts";
import type { PaintColour } from "../blocks/block.ts";
import type { ScreenColour } from "../plots/screen-colour.ts";
import type { SvgNode } from "../plots/svg.ts";
import type { Face } from "./print-font.ts";

/**
 * What stands on paper, before anything is drawn: lengths in millimetres from the
 * top left corner, type sizes in points. A PDF and a preview in SVG are both drawn
 * from the same marks, so that they cannot differ.
 */
export type Ink =
  /** Of a paint: device-independent, D50/2; `screen` is what a preview shows. */
  | { readonly lab: Lab; readonly screen: ScreenColour }
  /** 0 black to 1 white. */
  | { readonly grey: number }
  /** "#rrggbb", in sRGB. */
  | { readonly srgb: string };

export const MM_PER_PT = 25.4 / 72;

export const BLACK: Ink = { grey: 0 };
export const WHITE: Ink = { grey: 1 };
/** Labels and notes: grey, dark enough to be read at 6.5 point. */
export const GREY: Ink = { grey: 0.35 };
/** Munsell N 6, on which swatches stand: Y 29.30 % by ASTM D1535 is L* 61.0. */
export const N6: Ink = { lab: { L: 61.05, a: 0, b: 0 }, screen: { hex: "#939393" } };

/** A paint as ink: by its own Lab, and where nobody knows that, as a screen shows it. */
export function inkOf({ lab, ...screen }: PaintColour): Ink {
  return lab === undefined ? { srgb: screen.hex.toLowerCase() } : { lab, screen };
}

export interface TextMark {
  readonly kind: "text";
  readonly text: string;
  readonly xMm: number;
  /** Of the baseline. */
  readonly yMm: number;
  readonly face: Face;
  readonly sizePt: number;
  readonly ink?: Ink;
}

/** A place on the page [mm], by its upper left corner. */
export interface BoxMm {
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

export interface BoxMark extends BoxMm {
  readonly kind: "box";
  readonly ink: Ink;
}

export interface LineMark {
  readonly kind: "line";
  readonly fromMm: readonly [x: number, y: number];
  readonly toMm: readonly [x: number, y: number];
  readonly widthPt: number;
  readonly ink: Ink;
  /** Lengths of dash and gap [mm]. */
  readonly dashMm?: readonly [dash: number, gap: number];
}

/** Path data in units of its own, scaled and set down with its origin at x, y. Filled, or stroked with a width in its own units. */
export interface PathMark {
  readonly kind: "path";
  readonly d: string;
  readonly xMm: number;
  readonly yMm: number;
  /** Millimetres to one of its units. */
  readonly scale: number;
  readonly ink: Ink;
  readonly evenOdd?: boolean;
  readonly strokeWidth?: number;
}

/** A picture of a page, drawn as vectors: the tree that its markup spells. */
export interface PictureMark {
  readonly kind: "picture";
  readonly tree: SvgNode;
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  /** Ink for a paint by the sRGB that the tree gives it. */
  readonly paints: ReadonlyMap<string, Ink>;
}

/** A JPEG in sRGB, that the document has by its hash. */
export interface PhotographMark extends BoxMm {
  readonly kind: "photograph";
  readonly hash: string;
}

export type Mark = TextMark | BoxMark | LineMark | PathMark | PictureMark | PhotographMark;

/** Standard structure types of PDF 1.7 (ISO 32000-1, 14.8.4) that paper uses; an artifact is passed over by a reading machine. */
export type PaperTag =
  | "Sect"
  | "H1"
  | "H2"
  | "H3"
  | "P"
  | "L"
  | "LI"
  | "Lbl"
  | "LBody"
  | "Table"
  | "TR"
  | "TH"
  | "TD"
  | "Figure"
  | "Caption"
  | "Note"
  | "Link"
  | "TOC"
  | "TOCI"
  | "Div"
  | "Span"
  | "Artifact";

/** Where a text leads that is read on a screen. */
export interface LinkBox extends BoxMm {
  /** A whole address, or "#" and the name of a place in the document. */
  readonly href: string;
}

/** Marks that are read as one thing, and what is read inside it, in reading order. */
export interface Tagged {
  readonly tag: PaperTag;
  /** Of a figure: said in place of it. */
  readonly alt?: string;
  /** BCP 47, where it is not the document's. */
  readonly language?: string;
  readonly scope?: "Row" | "Column";
  readonly marks?: readonly Mark[];
  readonly links?: readonly LinkBox[];
  readonly children?: readonly Tagged[];
}

/** Every mark of an element and of those inside it. */
export function marksOf({ marks = [], children = [] }: Tagged): Mark[] {
  return [...marks, ...children.flatMap(marksOf)];
}

/** The same, moved [mm]. */
export function shifted<M extends Mark>(mark: M, xMm: number, yMm = 0): M {
  if (mark.kind !== "line") return { ...mark, xMm: mark.xMm + xMm, yMm: mark.yMm + yMm };
  const moved = ([x, y]: readonly [number, number]): [number, number] => [x + xMm, y + yMm];
  return { ...mark, fromMm: moved(mark.fromMm), toMm: moved(mark.toMm) };
}

/** An element and all inside it, moved [mm]. */
export function movedTo(tagged: Tagged, xMm: number, yMm: number): Tagged {
  const { marks, links, children } = tagged;
  return {
    ...tagged,
    ...(marks !== undefined && { marks: marks.map((mark) => shifted(mark, xMm, yMm)) }),
    ...(links === undefined
      ? {}
      : { links: links.map((link) => ({ ...link, xMm: link.xMm + xMm, yMm: link.yMm + yMm })) }),
    ...(children === undefined
      ? {}
      : { children: children.map((child) => movedTo(child, xMm, yMm)) }),
  };
}
