import type { StandingKind } from "../quantities/figure.ts";
import type { OwnTexts } from "../records/own-texts.ts";
import type { Words } from "../words/words.ts";

/**
 * What a page template is given: finished text only. Rounding, units, language
 * and the choice of words are settled before a view is filled; a template lays
 * out and never computes, joins or translates. A template's data are
 * `site: SiteView` and `view: <Kind>View` (not `page`, a name that Eleventy
 * reserves). An optional field that is absent renders nothing; an absent
 * required one stops the build.
 *
 * Every `href` is finished too: relative to the page it stands on, or whole.
 */

declare const isMarkup: unique symbol;

/** HTML or SVG made by this project, safe to print unescaped. Never a record's text. */
export type Markup = string & { readonly [isMarkup]: true };

/** Vouches for a string by whoever made and escaped it: lib/plots, the Markdown renderer. */
export function asMarkup(made: string): Markup {
  return made as Markup;
}

// ---------------------------------------------------------------- small parts

export interface LinkView {
  readonly text: string;
  readonly href: string;
  /** The page that the reader is on: marked, and not a way anywhere. */
  readonly current?: boolean;
  /** Of its text, where that is not the page's. */
  readonly language?: string;
}

/** A piece of a sentence, so that a sentence can hold a link. `index` is a Colour Index name or other code, kept on one line. */
export interface RunView {
  readonly text: string;
  readonly href?: string;
  readonly index?: boolean;
}
export type InlineView = readonly RunView[];

/** A term with its gloss; given once a page, where the term is first met. */
export interface TermView {
  readonly term: string;
  readonly gloss: string;
}

/** How a figure is known: `word` in the page's language; `restsOn` such as "rests on an estimate", of a derived figure only. */
export interface StandingView {
  readonly kind: StandingKind;
  readonly word: string;
  readonly restsOn?: string;
}

/** One line of the key to standings. */
export interface StandingKeyView extends StandingView {
  readonly gloss: string;
}

/** A drawing. The SVG carries its own title and description (role="img"). */
export interface PictureView {
  readonly svg: Markup;
  /** Another drawing of the same for narrow columns (about 288 px), where `svg` would be too small to read. */
  readonly narrow?: Markup;
  /** States the finding. Absent when the text beside it does. */
  readonly caption?: string;
}

// ----------------------------------------------------------- figures in tables

/** A property with a value: name, value and unit, standing, method, source. */
export interface KnownPropertyView {
  readonly name: string;
  /** Set where the name is first met on the page. */
  readonly gloss?: string;
  readonly value: string;
  /** A text in a record's own words, however short. */
  readonly isProse?: true;
  readonly unit?: string;
  readonly standing: StandingView;
  /** Further small print under the value: uncertainty, conditions. */
  readonly note?: string;
  readonly method?: string;
  readonly source?: LinkView;
}

/** A property that nobody has stated: a dash, with why, and what would be needed. */
export interface AbsentPropertyView {
  readonly name: string;
  readonly gloss?: string;
  readonly standing: StandingView & { readonly kind: "not stated" };
  readonly reason: string;
}

export type PropertyView = KnownPropertyView | AbsentPropertyView;

export interface PropertyTableView {
  readonly caption: string;
  readonly rows: readonly PropertyView[];
}

export interface ColumnView {
  readonly head: string;
  readonly unit?: string;
  /** Numbers are set right-aligned in tabular figures. */
  readonly numeric?: boolean;
}

export interface CellView {
  /** "–" for nothing known, with `reason`. */
  readonly text: string;
  readonly href?: string;
  /** Small swatch before the text. */
  readonly swatch?: Markup;
  readonly standing?: StandingView;
  /** Small print under the text. */
  readonly note?: string;
  /** Why there is a dash. */
  readonly reason?: string;
}

/** Plain table; the first cell of a row is its head. */
export interface TableView {
  readonly caption: string;
  readonly columns: readonly ColumnView[];
  readonly rows: readonly (readonly CellView[])[];
  /** Small print under the table. */
  readonly note?: string;
  /** Every cell is short (a ladder's figures): it stays a table on a phone, with standings as marks. Others of more than four columns, or of three without numbers, fold there. */
  readonly compact?: boolean;
}

/** A headed list of sentences: reasons, rules of layering, sensitivities, film health. */
export interface ListView {
  readonly heading: string;
  readonly items: readonly ReasonView[];
}

export interface ReasonView {
  readonly text: string;
  readonly standing?: StandingView;
  readonly source?: LinkView;
}

// ------------------------------------------------------------------- the site

/** The frame of a page. Made for each page, because its links are relative to it. */
export interface SiteView {
  readonly workshop: string;
  /** BCP 47, such as "en". */
  readonly language: string;
  /** Texts in another language than the page's, each with its own. */
  readonly ownTexts: OwnTexts;
  /** Of what changed, in the page's language; absent where no earlier state is known. */
  readonly feed?: string;
  /** Path from the page to the folder of its language: "", "../" or "../../"; "/" on the 404 page. */
  readonly root: string;
  /** Path to the folder of the whole site, where styles, scripts and pictures lie for every language. */
  readonly top: string;
  readonly home: LinkView;
  readonly nav: readonly LinkView[];
  /** A way to the list of colours, which assets/scripts/search.ts makes a field of. */
  readonly search?: LinkView & {
    readonly nothing: string;
    /** With `{count}` for a number. */
    readonly count: string;
    readonly kinds: Readonly<Record<"pigment" | "answer" | "comparison", string>>;
  };
  /** Ways to what is seldom asked, in the foot. */
  readonly more: readonly LinkView[];
  /** Fixed words of the frame and the tables' heads. */
  readonly words: Words["pages"]["frame"];
  /** Said on each page when workshop and readings are invented. */
  readonly demonstration?: string;
  /** The line about oily rags, in the foot of each page. */
  readonly ragLine: string;
  /** The line that defers to the maker's label, safety data sheet and local rules. */
  readonly cautionLine: string;
  /** "Built from records of 3 November 2026, revision 3f2a91c0" */
  readonly build: string;
  readonly contact?: string;
  /** A page that is kept from the public and from whoever searches it; `notice` says so. */
  readonly isWorkshop?: true;
  readonly notice?: string;
  readonly standings: readonly StandingKeyView[];
  /** The same page in the other languages. */
  readonly translations: readonly (LinkView & {
    readonly language: string;
    /** Its whole address, where the site has one. */
    readonly alternate: string;
  })[];
}

/** What every page says of itself. */
export interface PageView {
  /** Title element, the workshop's name included. */
  readonly title: string;
  /** Meta description, one sentence. */
  readonly description: string;
  readonly heading: string;
  /** Of title, description and what the page is about, where that is not the site's. */
  readonly language?: string;
  /** Whole address, when the site's address is known. */
  readonly canonical?: string;
  /** JSON-LD with `<` escaped. */
  readonly jsonLd?: Markup;
  /** Whole address of a picture of it, for whoever passes the page on. */
  readonly image?: {
    readonly href: string;
    readonly width: number;
    readonly height: number;
    /** Said in place of it. */
    readonly alt: string;
  };
}

// ---------------------------------------------------------- a colour's sheet

/** One fact of the first screen: a word, a little more, and how it is known. */
export interface FactView {
  readonly name: string;
  /** "excellent", "opaque", "slow"; not printed when not stated: the dash, its word and `detail` stand there. */
  readonly word: string;
  /** "category I", "6-12 days"; when not stated the short reason. */
  readonly detail?: string;
  /** The same in a word or two, where there is room for no more: "10 days", "stated, not tested". */
  readonly brief?: string;
  readonly standing: StandingView;
  /** To the section that says more. */
  readonly href?: string;
}

export interface FoldedTableView {
  /** What is under the fold, on its handle. */
  readonly summary: string;
  readonly table: TableView;
}

export interface DownloadView extends LinkView {
  /** "sheet.json, 38 kB: every figure with its evidence" */
  readonly note: string;
}

// ------------------------------------------------------------------ catalogue

/** One colour in a grid. */
export interface ColourCardView {
  readonly name: string;
  readonly href: string;
  /** "PBk 9", "PY 42, PBk 9". */
  readonly pigments: string;
  /** Swatch on N 6; absent when no colour is known, and then `noSwatch` says so. */
  readonly swatch?: Markup;
  readonly noSwatch?: string;
  /** One line: Munsell, or what sets it apart. */
  readonly line?: string;
  /** Signal word, when there is one. */
  readonly signalWord?: string;
  /** What filters go by: words of a closed set, by a space; and all that a search may find it by. */
  readonly tags?: string;
  readonly search?: string;
}

// ---------------------------------------------------------------- other pages

/** A colour on the wall: masstone above its tint, the name below. */
export interface TileView {
  readonly name: string;
  readonly href: string;
  readonly colours: readonly { readonly hex: string; readonly displayP3?: string | undefined }[];
  /** Said in place of a swatch. */
  readonly missing?: string;
  /** Said below the name. */
  readonly note?: string;
  /** For filters: words of a closed set, by a space. */
  readonly tags?: string;
}

/** A headed list of links, and one to all of them. */
export interface WaysView {
  readonly heading: string;
  readonly links: readonly LinkView[];
  readonly more?: LinkView;
}

export interface SourceEntryView {
  /** Anchor: `source-` and the key. */
  readonly id: string;
  readonly citation: string;
  /** "read", "quoted from memory", "common practice": how far the citation goes. */
  readonly standing: string;
  readonly note?: string;
  /** Where it is used. */
  readonly usedBy: readonly LinkView[];
}

/** A photograph in the sizes that screens choose from, and for paper. */
export interface PhotographView {
  readonly alt: string;
  /** Of the text alternative and of what is shown, where that is not the page's. */
  readonly language?: string;
  /** Widest gamut and newest format first; a screen takes the first that it can show. */
  readonly sources: readonly {
    readonly type: string;
    readonly srcset: string;
    /** Only for screens of this gamut. */
    readonly media?: string;
  }[];
  readonly src: string;
  readonly srcset: string;
  /** How wide it is shown, in the terms of the HTML attribute. */
  readonly sizes: string;
  readonly widthPx: number;
  readonly heightPx: number;
  /** Sentences under it. */
  readonly caption: readonly { readonly text: string; readonly language?: string }[];
  /** What is to be known of its colours. */
  readonly remarks: readonly string[];
  /** Asked for once the page has been scrolled near it. */
  readonly isLazy: boolean;
  readonly paper: PaperPhotographView;
}

/** A JPEG for paper: `hash` stands for its bytes, which a view does not carry. */
export interface PaperPhotographView {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly hash: string;
}
