import type { ComparedColour } from "../collection/compared-colour.ts";
import type { EqualLightness } from "../sheet/sheet.ts";
import type { Markup, PageView, LinkView, PictureView, StandingView } from "./views.ts";

/** A paint as screens can show it. */
export interface ShownPaint {
  readonly hex: string;
  readonly displayP3?: string | undefined;
}

/** What a comparison says of one colour in one row: finished text. */
export interface ShownCell {
  /** A sentence that stands above the figure. */
  readonly lead?: string;
  readonly text?: string;
  /** Of a tint, the figure at each lightness. */
  readonly atL?: Readonly<Partial<Record<EqualLightness, string>>>;
  readonly standing?: StandingView;
  /** Small print under the figure. */
  readonly note?: string;
  readonly items?: readonly string[];
  /** Where `text` leads, from the site's root. */
  readonly address?: string;
}

/** A colour as the page Compare carries it: what is compared, and its finished texts. Written as compare/SLUG.json. */
export interface ShownColour extends ComparedColour {
  /** Its sheet, from the site's root. */
  readonly address: string;
  readonly masstone?: ShownPaint;
  readonly whites: readonly {
    readonly slug: string;
    readonly name: string;
    readonly tints: Readonly<Partial<Record<EqualLightness, ShownPaint>>>;
  }[];
  readonly cells: Readonly<Record<string, ShownCell>>;
}

export interface ComparisonCellView {
  readonly lead?: string;
  readonly text?: string;
  readonly standing?: StandingView;
  readonly note?: string;
  readonly items: readonly string[];
  readonly href?: string;
}

export interface ComparisonRowView {
  readonly head: string;
  /** "at L* 50", "g/100 g". */
  readonly unit?: string;
  /** By how much, or why it is not told. */
  readonly saying?: string;
  /** One a colour; a standing alone where it is not stated. */
  readonly cells: readonly ComparisonCellView[];
}

export interface ComparisonPartView {
  /** Anchor of its heading. */
  readonly id: string;
  readonly heading: string;
  readonly caption: string;
  readonly rows: readonly ComparisonRowView[];
  /** Shut until the reader opens it; says what is in it. */
  readonly folded?: string;
}

/** Two to four colours, differences first. */
export interface ComparisonView {
  readonly columns: readonly LinkView[];
  /** "8 differ, 3 cannot be told apart, 4 are the same." */
  readonly summary: string;
  readonly parts: readonly ComparisonPartView[];
  /** What none of them states. */
  readonly unstated?: string;
}

export interface PairEntryView {
  readonly heading: string;
  readonly href: string;
  readonly why?: string;
  /** One swatch a colour, side by side on N 6. */
  readonly strip?: Markup;
}

/** A pair (or three, or four) that the workshop chose: a page without script. */
export interface ComparePairView extends PageView {
  readonly kind: "compare-pair";
  readonly lead: readonly string[];
  readonly panel?: PictureView;
  readonly comparison: Markup;
  /** To choose others. */
  readonly more: LinkView;
}

/** Any two to four colours, by a form; without script the chosen pairs. */
export interface CompareView extends PageView {
  readonly kind: "compare";
  readonly lead: readonly string[];
  readonly form: {
    readonly heading: string;
    /** Labels, one a field. */
    readonly fields: readonly string[];
    /** For no colour in a field. */
    readonly empty: string;
    readonly submit: string;
    readonly families: readonly {
      readonly name: string;
      readonly colours: readonly { readonly slug: string; readonly name: string }[];
    }[];
    readonly without: string;
  };
  readonly pairsHeading: string;
  readonly pairs: readonly PairEntryView[];
}
