import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { Block } from "../blocks/block.ts";
import type { BlockPiece, ShortcodeFault } from "./shortcode.ts";

/** Blocks of an answer as they come, gathered into folds; one fold holds no other. */
interface FoldedBlocks {
  /** @returns what is wrong with a mark where it stands. */
  readonly add: (piece: BlockPiece, at?: Diagnostic["place"]) => ShortcodeFault | undefined;
  /** A fold whose beginning is at fault: its end is none. */
  readonly spoilt: () => void;
  /** All of them, and where a fold began that has no end. */
  readonly all: () => {
    readonly blocks: readonly Block[];
    readonly open: Diagnostic["place"] | undefined;
  };
}

export function foldedBlocks(): FoldedBlocks {
  const blocks: Block[] = [];
  let open:
    | {
        readonly summary: string;
        readonly at: Diagnostic["place"] | undefined;
        readonly inside: Block[];
      }
    | undefined;
  let spoilt = 0;
  const end = (): void => {
    if (open !== undefined)
      blocks.push({ kind: "fold", summary: open.summary, blocks: open.inside });
    open = undefined;
  };
  return {
    add: (piece, at) => {
      if ("blocks" in piece) (open?.inside ?? blocks).push(...piece.blocks);
      else if ("fold" in piece) {
        if (open !== undefined)
          return {
            message: `The fold "${piece.fold}" begins inside another: the fold before it has no endfold yet`,
            actual: piece.fold,
            expected: "the end of the fold before",
          };
        open = { summary: piece.fold, at, inside: [] };
      } else {
        if (open === undefined && spoilt > 0) {
          spoilt--;
          return undefined;
        }
        if (open === undefined)
          return {
            message: "This endfold closes nothing: no fold is open before it",
            actual: "endfold",
            expected: "a fold before it",
          };
        end();
      }
      return undefined;
    },
    spoilt: () => {
      spoilt++;
    },
    all: () => {
      const at = open?.at;
      end();
      return { blocks, open: at };
    },
  };
}
