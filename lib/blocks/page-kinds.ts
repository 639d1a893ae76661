import type { ReplyView } from "../present/answer-views.ts";
import type { CardsPageView } from "../present/card-views.ts";
import type { ComparePairView } from "../present/comparison-types.ts";
import type { HazardView } from "../present/handling-views.ts";
import type { LabelTextView } from "../present/paint-views.ts";
import type {
  CatalogueGridView,
  CatalogueTableView,
  DownloadView,
  FactView,
  HomeView,
  InlineView,
  LinkView,
  ListView,
  Markup,
  PageView,
  PictureView,
  PigmentPageView,
  TableView,
  TileView,
} from "../present/views.ts";
import type { ScreenColour } from "../plots/screen-colour.ts";
import type { Words } from "../words/words.ts";
import type { Block, SectionBlock, SwatchCell, SwatchesBlock } from "./block.ts";

/** A colour's page for a painter: the first screen has a frame of its own, the rest is blocks. */
export interface SheetView extends PageView {
  readonly kind: "sheet";
  readonly name: string;
  /** "Bone black (PBk 9), milled in linseed oil", the pigments linked. */
  readonly madeOf: InlineView;
  /** The colour as it comes from the tube, and its caption; which paper prints too where the layer is thicker than any coat. */
  readonly masstone: SwatchCell & { readonly caption: string; readonly isThickLayer?: boolean };
  readonly tints?: SwatchesBlock;
  /** The one sentence, without figures. */
  readonly sentence: string;
  readonly offer: readonly OfferView[];
  readonly actions: readonly LinkView[];
  /** Only where there is a hazard; and what of it nobody knows. */
  readonly hazard?: HazardView;
  readonly unknownHazard?: string;
  /** Rags, where the vehicle is a drying oil or nobody knows which: on paper, since every page has it at its foot. */
  readonly ragLine?: string;
  readonly facts: readonly FactView[];
  readonly asOf?: string;
  readonly changes?: ListView;
  readonly contents: readonly LinkView[];
  readonly sections: readonly SectionBlock[];
  readonly standingsFold: string;
}

/** A size on sale, or why there is no price. */
export interface OfferView {
  /** "40 ml £8.00 (£200.00/l)" */
  readonly text: string;
  readonly size?: string;
  readonly price?: string;
  /** What one unit of measurement costs: "£200.00/l". */
  readonly unitPrice?: string;
}

/** A page of sections, with a list of them at its head. */
interface SectionedPageView extends PageView {
  readonly contents: readonly LinkView[];
  readonly sections: readonly SectionBlock[];
}

/** Everything else of a colour, for whoever makes such paint. */
export interface BenchView extends SectionedPageView {
  readonly kind: "bench";
  readonly back: LinkView;
  readonly downloads: readonly DownloadView[];
  readonly revision: string;
}

/** A page to read through: it is told by its blocks, and needs no frame of its own. */
export interface TextPageView extends SectionedPageView {
  readonly kind: "text";
  readonly lead: readonly string[];
  readonly back?: LinkView;
  readonly revision?: string;
  /** Before the contents. */
  readonly opening: readonly Block[];
  /** After the sections. */
  readonly close: readonly Block[];
}

/** A page of the workshop's own, which is never published. */
export interface WorkshopPageView extends SectionedPageView {
  readonly kind: "workshop";
  readonly back?: LinkView;
  readonly lead: readonly string[];
  /** The text of a label, to copy. */
  readonly label?: LabelTextView;
  readonly reply?: ReplyView;
  readonly revision?: string;
}

/** A batch to print on one page: what to weigh, blanks, order of work, cautions. */
export interface BatchSheetView extends PageView {
  readonly kind: "batch-sheet";
  readonly back: LinkView;
  /** Why nothing can be weighed out, in place of the rest. */
  readonly withheld?: string;
  readonly sheet?: {
    /** What another amount is reckoned by; absent where the amounts are a lot's own. */
    readonly reckoner?: {
      /** JSON for assets/scripts/batch-sheet.ts. */
      readonly plan: string;
      readonly amountValue: string;
      readonly units: readonly { readonly value: string; readonly text: string }[];
    };
    readonly words: Words["pages"]["lots"]["batchSheet"];
    readonly rows: readonly {
      readonly name: string;
      /** What the script fills anew for another amount. */
      readonly figure?: string;
      readonly planned: string;
    }[];
    readonly comesOut: string;
    readonly remarks: readonly string[];
    readonly order: readonly string[];
    readonly cautionsHeading: string;
    readonly cautions: readonly string[];
    /** Blanks to write in, filled in where it is known already. */
    readonly fields: readonly { readonly name: string; readonly value?: string }[];
  };
}

/** One answer: in short, what to do, why; and at its side the colours that it speaks of. */
export interface AnswerPageView extends PageView {
  readonly kind: "answer";
  /** The short answer, in reading size; its figures with their marks. */
  readonly summary: { readonly body: Markup };
  readonly blocks: readonly Block[];
  readonly coloursHeading: string;
  readonly colours: readonly TileView[];
  /** What the swatches below each masstone are. */
  readonly coloursNote?: string;
  /** What the answer rests on, with the figures as they stand now. */
  readonly claims?: { readonly heading: string; readonly table: TableView };
  readonly revision: string;
  readonly all: LinkView;
}

/** All blacks and greys of the range, white by white. */
export interface WhitesPageView extends PageView {
  readonly kind: "in-the-whites";
  readonly lead: readonly string[];
  /** The catalogue's orders and this page, which is marked. */
  readonly orders: readonly LinkView[];
  /** Of a range on several pages. */
  readonly parts: readonly LinkView[];
  readonly sections: readonly SectionBlock[];
}

/** Any two to four colours, chosen by pressing swatches; without script the pairs that the workshop chose. */
export interface CompareView extends PageView {
  readonly kind: "compare";
  readonly lead: readonly string[];
  readonly picker: {
    readonly words: Words["pages"]["compare"]["form"];
    /** Of a large range not every colour can be pressed. */
    readonly some?: string;
    readonly colours: readonly {
      readonly slug: string;
      readonly name: string;
      readonly colours: readonly ScreenColour[];
      readonly missing?: string;
    }[];
  };
  readonly sections: readonly SectionBlock[];
}

/** A paint to choose on a page that mixes. */
export interface PaintChoice {
  readonly slug: string;
  readonly name: string;
}

/** A page that mixes: a part that a script makes, and what stands there without one. */
interface MixingPageView extends PageView {
  readonly lead: readonly string[];
  /** This page and the others that mix; the one shown is marked. */
  readonly ways: readonly LinkView[];
  readonly words: Words["pages"]["mixing"];
  readonly sections: readonly SectionBlock[];
}

/** Colours and a white mixed under the reader's hand; without script what was worked out beforehand. */
export interface TintBenchView extends MixingPageView {
  readonly kind: "tint-bench";
  readonly colours: readonly PaintChoice[];
  readonly whites: readonly PaintChoice[];
  readonly mediums: readonly PaintChoice[];
}

/** Mixtures of the range that come near a colour; without script those that were looked up beforehand. */
export interface RecipesView extends MixingPageView {
  readonly kind: "recipes";
  readonly colours: readonly PaintChoice[];
  readonly whites: readonly PaintChoice[];
  /** Metals that a paint of the range holds. */
  readonly metals: readonly { readonly metal: string; readonly name: string }[];
}

/** The range in a*, b*, with what can be mixed of it; alive with script. */
export interface RangeMapView extends MixingPageView {
  readonly kind: "range-map";
  /** Slug of the white that it is drawn in, and the same map in each. */
  readonly white: string;
  readonly whites: readonly LinkView[];
  readonly colours: readonly PaintChoice[];
  readonly picture: PictureView;
  /** Where a* and b* lie in the wide picture and in the narrow one. */
  readonly scales: { readonly wide: string; readonly narrow: string };
}

/** A chosen set of tubes, kept in the address; without script the order of layering of them all. */
export interface PaletteView extends MixingPageView {
  readonly kind: "palette";
  /** That colours mix in. */
  readonly whites: readonly PaintChoice[];
  /** L* at which its reach can be drawn, and is before another is asked for. */
  readonly levels: readonly number[];
  readonly level: number;
  /** `missing` says that a tube was not read. */
  readonly tubes: readonly (PaintChoice & {
    readonly colours: readonly ScreenColour[];
    readonly missing?: string;
  })[];
}

/** Any page. The template of a kind is templates/pages/<kind>.njk. */
export type AnyPageView =
  | TextPageView
  | SheetView
  | BenchView
  | WorkshopPageView
  | BatchSheetView
  | CatalogueGridView
  | CatalogueTableView
  | HomeView
  | PigmentPageView
  | AnswerPageView
  | WhitesPageView
  | CompareView
  | TintBenchView
  | RecipesView
  | RangeMapView
  | PaletteView
  | ComparePairView
  | CardsPageView;
