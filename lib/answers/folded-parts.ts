import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { AnswerPartView } from "../present/answer-views.ts";
import type { ShortcodeFault } from "./shortcode.ts";

export type FoldMark = { readonly fold: string } | { readonly endsFold: true };

/** Parts of an answer as they come, gathered into folds; one fold holds no other. */
export interface FoldedParts {
  /** @returns what is wrong with a mark where it stands. */
  readonly add: (
    part: AnswerPartView | FoldMark,
    at?: Diagnostic["place"],
  ) => ShortcodeFault | undefined;
  /** All of them, and where a fold began that has no end. */
  readonly all: () => {
    readonly parts: readonly AnswerPartView[];
    readonly open: Diagnostic["place"] | undefined;
  };
}

export function foldedParts(): FoldedParts {
  const parts: AnswerPartView[] = [];
  let open:
    | {
        readonly summary: string;
        readonly at: Diagnostic["place"] | undefined;
        readonly inside: AnswerPartView[];
      }
    | undefined;
  const end = (): void => {
    if (open !== undefined) parts.push({ kind: "fold", summary: open.summary, parts: open.inside });
    open = undefined;
  };
  return {
    add: (part, at) => {
      if ("kind" in part) (open?.inside ?? parts).push(part);
      else if ("fold" in part) {
        if (open !== undefined)
          return {
            message: `The fold "${part.fold}" begins inside another: the fold before it has no endfold yet`,
            actual: part.fold,
            expected: "the end of the fold before",
          };
        open = { summary: part.fold, at, inside: [] };
      } else {
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
    all: () => {
      const at = open?.at;
      end();
      return { parts, open: at };
    },
  };
}
