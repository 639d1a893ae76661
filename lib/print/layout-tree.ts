import type { PaperTag, Tagged } from "./mark.ts";

/** Of a sheet of paper [mm]: A4, US Letter, a card. */
export interface PaperSize {
  readonly widthMm: number;
  readonly heightMm: number;
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
  /** Said again wherever the group goes on over to another column or another page, before what goes on. */
  readonly runningHead?: { readonly piece: Piece; readonly at: "column" | "page" };
  readonly children: readonly Flow[];
}

export type Flow = Piece | Group;

/** A piece with the heads that it stands under, the outermost first. */
export interface HeadedPiece {
  readonly piece: Piece;
  readonly heads: readonly NonNullable<Group["runningHead"]>[];
}

export function headedPieces(
  flow: readonly Flow[],
  heads: HeadedPiece["heads"] = [],
): HeadedPiece[] {
  return flow.flatMap((one): HeadedPiece[] => {
    if (one.kind === "piece") return [{ piece: one, heads }];
    const own = one.runningHead === undefined ? heads : [...heads, one.runningHead];
    return headedPieces(one.children, own);
  });
}
