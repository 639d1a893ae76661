import type { ComparedColour } from "../collection/compared-colour.ts";
import type { EqualLightness } from "../sheet/tints/tint-figures.ts";
import type { LinkView, StandingView } from "./views.ts";

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
  /** "PBk 9" */
  readonly index?: string;
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

/** One row of abutting swatches: the colours alone, or with one white at one lightness. */
export interface SwatchRowView {
  /** "alone", "in titanium white" */
  readonly head: string;
  readonly isAlone: boolean;
  /** One a colour: its paint, or why there is none; `text` says it in figures. */
  readonly swatches: readonly {
    readonly paint?: ShownPaint;
    readonly text: string;
  }[];
  readonly saying?: string;
}

/** Two to four colours, differences first: a column a colour, from the swatch to the last row. */
export interface ComparisonView {
  readonly columns: readonly (LinkView & { readonly index?: string })[];
  /** What the swatches show, for who does not see them. */
  readonly caption: string;
  readonly swatches: readonly SwatchRowView[];
  /** "They differ in strength, oil and drying." */
  readonly summary: string;
  readonly parts: readonly ComparisonPartView[];
  /** What none of them states. */
  readonly unstated?: string;
}
