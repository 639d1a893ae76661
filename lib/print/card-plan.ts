import type { Words } from "../words/words.ts";
import type { CardContent } from "./card-content.ts";
import type { CardSize } from "./card-size.ts";
import type { Ink } from "./mark.ts";
import type { QrMatrix } from "./qr-block.ts";
import type { Measure } from "./text-lines.ts";

/** What a face is laid out from. */
export interface CardPlan {
  readonly content: CardContent;
  readonly revision: string;
  /** Of the sheet's address; absent where there is none. */
  readonly qr?: QrMatrix;
  readonly size: CardSize;
  readonly words: Words;
  readonly measure: Measure;
}

/** Lengths [mm] and type that go with a size. */
export interface CardGeometry {
  readonly widthMm: number;
  readonly heightMm: number;
  /** From the cut edge to anything that may not be cut. */
  readonly safeMm: number;
  /** Type against that of a card of 90 x 55. */
  readonly type: number;
}

/** Colour printed beyond the cut, so that no white edge shows where the knife strays [mm]. */
export const BLEED_MM = 3;

/** No caution is set smaller [pt]. */
export const CAUTION_MIN_PT = 7;
/** Nothing is. */
export const TEXT_MIN_PT = 5.5;

/** Below this height a card is a strip for a shelf's rail [mm]. */
export const STRIP_BELOW_MM = 48;

const PROTOTYPE = { widthMm: 90, heightMm: 55 };

export function cardGeometry({
  widthMm,
  heightMm,
}: Pick<CardSize, "widthMm" | "heightMm">): CardGeometry {
  const scale = Math.min(widthMm / PROTOTYPE.widthMm, heightMm / PROTOTYPE.heightMm);
  return {
    widthMm,
    heightMm,
    safeMm: heightMm < STRIP_BELOW_MM ? 3 : Math.min(7, Math.max(3.5, 4 * scale)),
    type: Math.min(1.35, Math.max(0.95, scale)),
  };
}

/** Munsell N 6, on which every swatch stands: Y 29.30 % by ASTM D1535 is L* 61.0. */
export const N6: Ink = { lab: { L: 61.05, a: 0, b: 0 }, screen: { hex: "#939393" } };
/** Of labels beside what they label. */
export const QUIET: Ink = { grey: 0.38 };
