import type { LinkView, Markup } from "./views.ts";

export interface PictogramView {
  readonly code: string;
  /** "Health hazard": the drawing's text alternative. */
  readonly name: string;
  /** The drawing, hidden from readers of the name. */
  readonly svg: Markup;
}

/** A statement of a label, or a line without a code. */
export interface StatementView {
  readonly code?: string;
  readonly text: string;
  /** BCP 47, where the text is in another language than what is around it. */
  readonly language?: string;
  /** "translation to be reviewed", of a text that stands in English for want of its translation. */
  readonly remark?: string;
}

/** Signal word, pictograms, hazard and supplemental statements: in full, never fewer. */
export interface HazardView {
  /** "Danger", "Warning" in the page's language. */
  readonly signalWord?: string;
  readonly pictograms: readonly PictogramView[];
  readonly statements: readonly StatementView[];
  /** "Worked out from the pigment's data, EU CLP; the maker's label prevails." */
  readonly basis: string;
  readonly handlingHref?: string;
}

/** One label in one further language. */
export interface LabelLanguageView {
  /** BCP 47. */
  readonly language: string;
  /** Its own name: "Deutsch". */
  readonly name: string;
  readonly signalWord?: string;
  readonly statements: readonly StatementView[];
}

export interface TraceView {
  readonly statement: string;
  readonly text: string;
  readonly sources: readonly LinkView[];
}

/** A whole label with what belongs to it: precautions, other languages, reasons. */
export interface LabelView {
  readonly heading: string;
  /** Said of it first: that nothing is classified, that nothing is known. */
  readonly remarks: readonly string[];
  readonly hazard?: HazardView;
  /** "Classified as Acute Tox. 4, Repr. 1A." */
  readonly classification?: string;
  readonly precautionaryHeading: string;
  readonly precautionary: readonly StatementView[];
  /** Folded; `note` says what the wordings rest on. */
  readonly languages?: {
    readonly summary: string;
    readonly list: readonly LabelLanguageView[];
    readonly note: string;
  };
  readonly dataSheet?: LinkView;
  /** Why each statement stands there, and why others do not, folded. */
  readonly traces?: {
    readonly summary: string;
    readonly list: readonly TraceView[];
    readonly leftOutHeading: string;
    readonly leftOut: readonly TraceView[];
  };
}

/** What to do or leave, a sentence each, and the one reason for all of them. */
export interface CautionView {
  readonly sentences: readonly string[];
  /** Left out where an operation above has given it. */
  readonly reason?: string;
  /** Of a gas or a poison: told on paper too. */
  readonly isGrave?: true;
}
