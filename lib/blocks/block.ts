import type { Lab } from "../colorimetry/viewing.ts";
import type { ScreenColour } from "../plots/screen-colour.ts";
import type { CautionView, LabelView } from "../present/handling-views.ts";
import type { BatchReckonerView } from "../present/paint-views.ts";
import type {
  ColourCardView,
  LinkView,
  ListView,
  Markup,
  PhotographView,
  PictureView,
  PropertyTableView,
  SourceEntryView,
  StandingKeyView,
  StandingView,
  TableView,
  TermView,
  TileView,
} from "../present/views.ts";

/**
 * What pages and papers are made of: finished text and numbers, filled once by the page
 * modules and laid out by the HTML macros of templates/macros/blocks.njk or on paper.
 * A block says what is to be read, never how wide it is drawn.
 */
export type Block =
  | HeadingBlock
  | StatementBlock
  | FiguresBlock
  | TableBlock
  | SwatchesBlock
  | LadderBlock
  | PlotsBlock
  | ListBlock
  | LinesBlock
  | FoldBlock
  | LabelBlock
  | CautionsBlock
  | LinksBlock
  | CardsBlock
  | TermsBlock
  | KeyBlock
  | ProseBlock
  | SourcesBlock
  | ReckonerBlock
  | WallBlock
  | EntriesBlock
  | BoardBlock
  | PhotographsBlock
  | GroupBlock;

/** A stretch of a page with a heading of its own: the unit that contents, links and print go by. */
export interface SectionBlock {
  readonly kind: "section";
  /** Anchor. */
  readonly id: string;
  readonly heading: string;
  readonly blocks: readonly Block[];
}

export interface HeadingBlock {
  readonly kind: "heading";
  readonly level: 3 | 4;
  readonly text: string;
  /** Colour Index name beside it. */
  readonly index?: string;
  readonly href?: string;
}

/** A sentence: the finding of a section first, in larger type; a note in small; a way on to another page, which paper leaves out. */
export interface StatementBlock {
  readonly kind: "statement";
  readonly role: "lead" | "body" | "note" | "way";
  readonly text: string;
  /** Only where how it is known is news. */
  readonly standing?: StandingView;
  readonly link?: LinkView;
  /** Another's words, after the text. */
  readonly quote?: string;
  /** What to type or to look for in a file, after the text: no full stop of the sentence may be copied with it. */
  readonly code?: string;
}

/** Figures by name, each with value, standing, method and source. */
export interface FiguresBlock {
  readonly kind: "figures";
  readonly table: PropertyTableView;
}

export interface TableBlock {
  readonly kind: "table";
  readonly table: TableView;
}

/** A paint as a screen shows it, and by its Lab, D50/2, for paper, which prints device-independent colour. */
export interface PaintColour extends ScreenColour {
  readonly lab?: Lab;
  /** Adapted from a reading under another light. */
  readonly isAdapted?: true;
}

/** One paint; without a colour `missing` says why. */
export interface SwatchCell {
  readonly colour?: PaintColour;
  readonly missing?: string;
}

/** Tints to be compared, abutting: a column a white, a row a lightness. */
export interface SwatchesBlock {
  readonly kind: "swatches";
  /** Text alternative. */
  readonly description: string;
  readonly columns: readonly { readonly head: string; readonly cells: readonly SwatchCell[] }[];
  readonly rows: readonly string[];
}

/** Let-downs in one white from strong to pale, abutting; a measured step carries its mark. */
export interface LadderBlock {
  readonly kind: "ladder";
  readonly id: string;
  /** "Titanium White" */
  readonly name: string;
  /** "Clearly blue in titanium white." */
  readonly sentence: string;
  readonly description: string;
  readonly steps: readonly (SwatchCell & {
    /** "1:20" */
    readonly label: string;
    readonly measured: boolean;
  })[];
  readonly remarks: readonly string[];
}

/** Drawings side by side where there is room. */
export interface PlotsBlock {
  readonly kind: "plots";
  readonly plots: readonly PictureView[];
  /** Small multiples: side by side as soon as two find room. */
  readonly isSmall?: boolean;
}

/** Headed sentences. */
export interface ListBlock {
  readonly kind: "list";
  readonly list: ListView;
}

/** A word at the left, what to know of it at the right. */
export interface LinesBlock {
  readonly kind: "lines";
  readonly lines: readonly LineView[];
  /** One paragraph with a line for each, where a page has hundreds of them: a name brings its colon, and a line without one is a remark. */
  readonly isDense?: true;
}

export interface LineView {
  readonly name: string;
  readonly sentences: readonly { readonly text: string; readonly standing?: StandingView }[];
}

/** What a reader opens who wants to know more. */
export interface FoldBlock {
  readonly kind: "fold";
  readonly summary: string;
  /** On paper as well, where nothing can be opened: cautions. */
  readonly isPrinted?: true;
  readonly blocks: readonly Block[];
}

/** Label elements, in full. */
export interface LabelBlock {
  readonly kind: "label";
  /** Of something that goes into the paint: no page may let its warnings be taken for the paint's. */
  readonly isOfPart?: true;
  readonly label: LabelView;
}

/** Cautions by operation, each with its reason. */
export interface CautionsBlock {
  readonly kind: "cautions";
  readonly operations: readonly {
    readonly operation: string;
    readonly cautions: readonly CautionView[];
  }[];
}

export interface LinksBlock {
  readonly kind: "links";
  readonly links: readonly LinkView[];
}

/** Colours of the range as linked swatches. */
export interface CardsBlock {
  readonly kind: "cards";
  readonly cards: readonly ColourCardView[];
}

export interface TermsBlock {
  readonly kind: "terms";
  readonly terms: readonly TermView[];
}

/** The key to standings: how each figure is known. */
export interface KeyBlock {
  readonly kind: "key";
  readonly heading: string;
  readonly standings: readonly StandingKeyView[];
}

/** Rendered Markdown. */
export interface ProseBlock {
  readonly kind: "prose";
  readonly body: Markup;
  /** Of its text, where that is not the page's. */
  readonly language?: string;
}

export interface SourcesBlock {
  readonly kind: "sources";
  readonly entries: readonly SourceEntryView[];
}

/** A batch of any size, worked out in the browser. */
export interface ReckonerBlock {
  readonly kind: "reckoner";
  readonly reckoner: BatchReckonerView;
}

/** Colours as linked tiles: masstone over tint, the name below. */
export interface WallBlock {
  readonly kind: "wall";
  /** "tints" where tiles have `tints`: a place for each lightness below the masstone, the same across the wall. */
  readonly form?: "tints";
  readonly tiles: readonly (TileView & { readonly tints?: readonly SwatchCell[] })[];
}

/** Colours one below the other, each across the same swatches, abutting both ways. */
export interface BoardBlock {
  readonly kind: "board";
  readonly caption: string;
  /** Of the column of names, of each column of swatches, and of the findings. */
  readonly heads: readonly string[];
  readonly rows: readonly {
    readonly name: string;
    readonly href: string;
    /** `text` says a swatch in figures. */
    readonly cells: readonly (SwatchCell & { readonly text?: string })[];
    readonly said: string;
  }[];
}

/** Ways on, each with the colours that it is about as a strip of abutting swatches. */
export interface EntriesBlock {
  readonly kind: "entries";
  readonly entries: readonly EntryView[];
}

export interface EntryView {
  readonly heading: string;
  readonly href: string;
  readonly text?: string;
  /** Of heading and text, where that is not the page's. */
  readonly language?: string;
  readonly colours: readonly ScreenColour[];
}

/** Photographs of paint, the first across the text, the others side by side below it. */
export interface PhotographsBlock {
  readonly kind: "photographs";
  readonly photographs: readonly PhotographView[];
}

/** Blocks that belong together; lists in one stand side by side where there is room. */
export interface GroupBlock {
  readonly kind: "group";
  readonly id?: string;
  readonly flow: "stack" | "columns";
  readonly blocks: readonly Block[];
}
