import type { ReplyView } from "../present/answer-views.ts";
import type { HazardView } from "../present/handling-views.ts";
import type { LabelTextView } from "../present/paint-views.ts";
import type {
  DownloadView,
  FactView,
  InlineView,
  LinkView,
  ListView,
  PageView,
} from "../present/views.ts";
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
