import type { Tagged } from "./mark.ts";

/** One piece of label, at real size. */
export interface LabelFace {
  readonly blocks: readonly Tagged[];
  /** Of a piece that is folded and so of another width than its label. */
  readonly strip?: FoldedStrip;
}

/** Pages side by side, or one below the other, on one strip, folded in turn; the last is stuck on the package. */
export interface FoldedStrip {
  readonly runs: "across" | "down";
  readonly widthMm: number;
  readonly heightMm: number;
  /** From the strip's left or upper edge to each fold [mm]; the first is folded backwards, the next forwards. */
  readonly foldsMm: readonly number[];
}

export interface LaidLabel {
  readonly slug: string;
  readonly name: string;
  /** Of a tube one; of a jar its front and its back. */
  readonly faces: readonly LabelFace[];
  /** Statements that are not on it, as its size allows. */
  readonly leftOut: readonly string[];
  /** Side of the red frames [mm]; absent without pictograms. */
  readonly pictogramMm?: number;
  readonly xHeightMm: number;
  /** How hard its statements are read in narrow columns, and what they cost of the paint: 0 of neither. */
  readonly crowding?: number;
}

/** Pages of a fold-out label; none of one that is not folded. */
export function foldOutPages({ faces }: Pick<LaidLabel, "faces">): number {
  return faces.reduce(
    (most, { strip }) => (strip === undefined ? most : strip.foldsMm.length + 1),
    0,
  );
}
