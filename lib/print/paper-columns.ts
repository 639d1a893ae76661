import { headedPieces, type Flow, type HeadedPiece, type Piece } from "./layout-tree.ts";

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
  /** Heads said again above it, from the column's top down. */
  readonly heads: readonly { readonly piece: Piece; readonly yMm: number }[];
}

/** Columns one after another, without end. */
export type Columns = (index: number) => Column;

const EPSILON_MM = 1e-6;

/**
 * Pieces in reading order down one column after another; what is kept together moves on
 * together, and a group that goes on over says its head again. A piece higher than a whole
 * column stands alone in one.
 */
export function placedPieces(flow: readonly Flow[], columns: Columns): PlacedPiece[] {
  return placedChains(chainsOf(flow), columns);
}

/** Pieces that are kept together, in reading order. */
export type Chains = readonly (readonly HeadedPiece[])[];

/** Of a flow that is placed again and again, told once. */
export function chainsOf(flow: readonly Flow[]): Chains {
  const all: HeadedPiece[][] = [];
  let open = false;
  for (const headed of headedPieces(flow)) {
    if (open) all.at(-1)?.push(headed);
    else all.push([headed]);
    open = headed.piece.keepWithNext === true;
  }
  return all;
}

/** The same as {@link placedPieces}, of a flow's chains. */
export function placedChains(chains: Chains, columns: Columns): PlacedPiece[] {
  const placed: PlacedPiece[] = [];
  const begun = new Set<HeadedPiece["heads"][number]>();
  let index = 0;
  let column = columns(index);
  let y = column.topMm;
  let isNewPage = true;
  const next = (): void => {
    const before = column.page;
    column = columns(++index);
    y = column.topMm;
    isNewPage = column.page !== before;
  };
  /** Heads above the first piece of a column. */
  const headsOf = ({ heads }: HeadedPiece): Piece[] =>
    heads
      .filter((head) => begun.has(head) && (head.at === "column" || isNewPage))
      .map(({ piece }) => piece);
  const heightOf = (chain: readonly HeadedPiece[]): number => {
    const [first] = chain;
    const isTop = y === column.topMm;
    const heads = isTop && first !== undefined ? total(headsOf(first)) : 0;
    return chain.reduce(
      (sum, { piece }, i) => sum + piece.heightMm + (isTop && i === 0 ? 0 : piece.beforeMm),
      heads,
    );
  };
  for (const chain of chains) {
    if (y > column.topMm && y + heightOf(chain) > column.bottomMm + EPSILON_MM) next();
    // A column too short for anything, below a high band, is passed by.
    for (
      let tries = 0;
      tries < 2 &&
      heightOf(chain) > column.bottomMm - column.topMm + EPSILON_MM &&
      column.bottomMm - column.topMm < columns(index + 2).bottomMm - columns(index + 2).topMm;
      tries++
    )
      next();
    for (const [i, headed] of chain.entries()) {
      const { piece } = headed;
      const isTop = y === column.topMm;
      const heads = (isTop && i === 0 ? headsOf(headed) : []).map((head) => {
        const at = { piece: head, yMm: y };
        y += head.heightMm;
        return at;
      });
      const yMm = isTop ? y : y + piece.beforeMm;
      placed.push({ piece, page: column.page, xMm: column.xMm, yMm, heads });
      y = yMm + piece.heightMm;
      for (const head of headed.heads) begun.add(head);
    }
  }
  return placed;
}

export function pageCount(placed: readonly PlacedPiece[]): number {
  return (placed.at(-1)?.page ?? 0) + 1;
}

function total(pieces: readonly Piece[]): number {
  return pieces.reduce((sum, { heightMm }) => sum + heightMm, 0);
}
