import type { Lab } from "../colorimetry/viewing.ts";
import type { ScreenColour } from "../plots/screen-colour.ts";
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

export const BLACK: Ink = { grey: 0 };
export const WHITE: Ink = { grey: 1 };

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

export interface BoxMark {
  readonly kind: "box";
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
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

export type Mark = TextMark | BoxMark | LineMark | PathMark;

/** Standard structure types of PDF that paper uses; an artifact is passed over by a reading machine. */
export type BlockTag = "H1" | "H2" | "H3" | "P" | "Figure" | "Artifact";

/** Marks that are read as one thing, in reading order. */
export interface Block {
  readonly tag: BlockTag;
  /** Of a figure: said in place of it. */
  readonly alt?: string;
  /** BCP 47, where it is not the document's. */
  readonly language?: string;
  readonly marks: readonly Mark[];
}
