import type { Piece } from "./layout-tree.ts";

/** A place that pieces are set in, from its top down. */
export interface Column {
  /** From 0. */
  readonly page: number;
  readonly xMm: number;
  readonly topMm: number;
  readonly bottomMm: number;
}

export interface PlacedPiece {
  readonly piece: Piece;
  readonly page: number;
  readonly xMm: number;
  readonly yMm: number;
}

/** Columns one after another, without end. */
export type Columns = (index: number) => Column;

/** Pieces in reading order down one column after another; what is kept together moves on together. A piece higher than a whole column stands alone in one. */
export function placedPieces(pieces: readonly Piece[], columns: Columns): PlacedPiece[] {
  const placed: PlacedPiece[] = [];
  let index = 0;
  let column = columns(index);
  let y = column.topMm;
  for (const chain of chains(pieces)) {
    const height = chain.reduce(
      (sum, piece, i) =>
        sum + piece.heightMm + (i === 0 && y === column.topMm ? 0 : piece.beforeMm),
      0,
    );
    if (y > column.topMm && y + height > column.bottomMm + 1e-6) {
      column = columns(++index);
      y = column.topMm;
    }
    // A column too short for anything, below a high band, is passed by.
    for (
      let tries = 0;
      tries < 2 &&
      chainHeight(chain) > column.bottomMm - column.topMm + 1e-6 &&
      column.bottomMm - column.topMm < columns(index + 2).bottomMm - columns(index + 2).topMm;
      tries++
    ) {
      column = columns(++index);
      y = column.topMm;
    }
    for (const piece of chain) {
      const top = y === column.topMm ? y : y + piece.beforeMm;
      placed.push({ piece, page: column.page, xMm: column.xMm, yMm: top });
      y = top + piece.heightMm;
    }
  }
  return placed;
}

export function pageCount(placed: readonly PlacedPiece[]): number {
  return (placed.at(-1)?.page ?? 0) + 1;
}

function chains(pieces: readonly Piece[]): Piece[][] {
  const all: Piece[][] = [];
  let open = false;
  for (const piece of pieces) {
    if (open) all.at(-1)?.push(piece);
    else all.push([piece]);
    open = piece.keepWithNext === true;
  }
  return all;
}

function chainHeight(chain: readonly Piece[]): number {
  return chain.reduce(
    (sum, { heightMm, beforeMm }, i) => sum + heightMm + (i === 0 ? 0 : beforeMm),
    0,
  );
}
