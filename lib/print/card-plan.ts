import type { OwnWords } from "../words/words.ts";
import type { CardContent } from "./card-content.ts";
import type { CardSize } from "./card-size.ts";
import type { QrMatrix } from "./qr-figure.ts";

/** What a face is laid out from. */
export interface CardPlan {
  readonly content: CardContent;
  readonly revision: string;
  /** Of the sheet's address; absent where there is none. */
  readonly qr?: QrMatrix;
  readonly size: CardSize;
  readonly words: OwnWords;
}

/** Lengths [mm] and type that go with a size. */
export interface CardGeometry {
  readonly widthMm: number;
  readonly heightMm: number;
  /** From the cut edge to anything that may not be cut. */
  readonly safeMm: number;
  /** Of the paint, from the left edge on. */
  readonly panelMm: number;
  /** Type against that of a card of 90 x 55. */
  readonly type: number;
}

/** Colour printed beyond the cut, so that no white edge shows where the knife strays [mm]. */
export const BLEED_MM = 3;

/** No caution is set smaller [pt]. */
export const CAUTION_MIN_PT = 7;
/** Nothing is. */
export const TEXT_MIN_PT = 6.5;

/** Of a card's width the masstone takes so much. */
const PANEL = 0.4;
const PROTOTYPE = { widthMm: 90, heightMm: 55 };

export function cardGeometry({
  widthMm,
  heightMm,
}: Pick<CardSize, "widthMm" | "heightMm">): CardGeometry {
  const scale = Math.min(widthMm / PROTOTYPE.widthMm, heightMm / PROTOTYPE.heightMm);
  return {
    widthMm,
    heightMm,
    safeMm: Math.min(6, Math.max(3, 4 * scale)),
    panelMm: widthMm * PANEL,
    type: Math.min(1.35, Math.max(0.9, scale)),
  };
}
