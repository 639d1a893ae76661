import type { RangeFigure, FigureIndex } from "../claims/figure-index.ts";
import type { PageContext, PagePlace } from "../pages/page-context.ts";
import type { Block } from "../blocks/block.ts";
import type { StandingView } from "../present/views.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { EqualLightness } from "../sheet/tints/tint-figures.ts";

/** What the value of an argument must be. `figures` are paths without the colour: `oil.oilIndexGPer100g`. */
export type ArgKind =
  "figure" | "figures" | "colour" | "colours" | "white" | "level" | "answer" | "text";

export interface ArgRule {
  /** "" for the value without a name. */
  readonly name: string;
  readonly kind: ArgKind;
  readonly optional?: true;
}

/** Checked arguments, by name. Asking for one that the shortcode does not declare is a fault of ours. */
export interface Args {
  readonly figure: (name: string) => RangeFigure;
  readonly figures: (name: string) => readonly string[];
  readonly colours: (name: string) => readonly SheetTexts[];
  readonly level: (name: string) => EqualLightness;
  readonly text: (name: string) => string | undefined;
}

/** Where a shortcode stands: what it can ask, how it complains. */
export interface ShortcodeRoom {
  readonly context: PageContext;
  readonly place: PagePlace;
  readonly index: FigureIndex;
  /** For the identifiers of a drawing: one a shortcode of a page. */
  readonly id: string;
  /** Whether it stands at the start of a sentence. */
  readonly begins: boolean;
  readonly fault: (fault: ShortcodeFault) => undefined;
}

export interface ShortcodeFault {
  readonly rule?: `answers/${string}`;
  /** One sentence, as a diagnostic has it. */
  readonly message: string;
  readonly actual?: string;
  readonly expected?: string;
  readonly hint?: string | undefined;
}

/** What stands in a sentence: finished text, how it is known, where it leads. */
export interface InlinePiece {
  readonly text: string;
  readonly standing?: StandingView;
  readonly href?: string;
}

/** What stands between paragraphs, or where a fold of them begins or ends. */
export type BlockPiece = { readonly blocks: readonly Block[] } | FoldMark;

type FoldMark = { readonly fold: string } | { readonly endsFold: true };

/** One shortcode: another is another row of lib/answers/shortcode-table.ts. `does` stands in the README. */
export type Shortcode = {
  readonly name: string;
  readonly does: string;
  readonly args: readonly ArgRule[];
} & (
  | {
      readonly place: "in a sentence";
      readonly render: (args: Args, room: ShortcodeRoom) => InlinePiece | undefined;
    }
  | {
      readonly place: "on a line of its own";
      readonly render: (args: Args, room: ShortcodeRoom) => BlockPiece | undefined;
    }
);
