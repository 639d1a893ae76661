import type { SvgNode } from "../plots/svg.ts";
import type { Ink, Mark } from "./mark.ts";
import type { LinkBox } from "./paper-run.ts";

/** Of a sheet of paper [mm]: A4, US Letter. */
export interface PaperSize {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** A picture of lib/plots, drawn as vectors: the same tree that a page shows. */
export interface PictureMark {
  readonly kind: "picture";
  readonly tree: SvgNode;
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  /** Ink for a paint by the sRGB that the tree gives it. */
  readonly paints: ReadonlyMap<string, Ink>;
}

export type PaperMark = Mark | PictureMark;

/** Standard structure types of PDF 1.7 (ISO 32000-1, 14.8.4) that sheets use. */
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

/** What is drawn in one place and read as one thing. Lengths in mm from the piece's top left corner. */
export interface Tagged {
  readonly tag: PaperTag;
  readonly alt?: string;
  /** BCP 47, where it is not the document's. */
  readonly language?: string;
  readonly scope?: "Row" | "Column";
  readonly marks?: readonly PaperMark[];
  readonly links?: readonly LinkBox[];
  readonly children?: readonly Tagged[];
}

/** The smallest thing that a column holds whole. */
export interface Piece {
  readonly kind: "piece";
  readonly heightMm: number;
  /** Above it, left out at the top of a column. */
  readonly beforeMm: number;
  /** Stands in one column with what follows. */
  readonly keepWithNext?: boolean;
  /** Where a bookmark leads. */
  readonly anchor?: string;
  readonly content: Tagged;
}

/** Pieces that belong together in the structure, and may stand in several columns. */
export interface Group {
  readonly kind: "group";
  readonly tag: PaperTag;
  readonly language?: string;
  readonly children: readonly Flow[];
}

export type Flow = Piece | Group;

export function piecesOf(flow: readonly Flow[]): Piece[] {
  return flow.flatMap((one) => (one.kind === "piece" ? [one] : piecesOf(one.children)));
}
