import type { ListView, Markup, PictureView, TableView } from "./views.ts";

/** An answer as other pages list it. */
export interface AnswerEntryView {
  readonly question: string;
  readonly href: string;
  readonly summary: string;
  readonly date?: string;
  /** Of question and summary, where that is not the page's. */
  readonly language?: string;
}

/** A stretch of an answer: prose, or what a shortcode on a line of its own stands for. */
export type AnswerPartView =
  | { readonly kind: "prose"; readonly body: Markup }
  | { readonly kind: "table"; readonly table: TableView }
  | { readonly kind: "picture"; readonly picture: PictureView }
  | { readonly kind: "list"; readonly list: ListView; readonly note: string }
  | { readonly kind: "pictures"; readonly pictures: readonly PictureView[] }
  | AnswerFoldView;

/** Parts that a reader opens who wants to know more. */
export interface AnswerFoldView {
  readonly kind: "fold";
  /** Its handle. */
  readonly summary: string;
  readonly parts: readonly AnswerPartView[];
}

/** What a composer in the browser is given; lib/answers/reply-text.ts makes the same text of it. */
export interface ReplyView {
  readonly heading: string;
  readonly lead: string;
  /** The stock reply: plain text. */
  readonly text: string;
  readonly textLabel: string;
  /** Rows of the field that shows it whole. */
  readonly rows: number;
  readonly copy: string;
  readonly copied: string;
  readonly notCopied: string;
  readonly question: string;
  readonly questionLabel: string;
  readonly coloursLabel: string;
  readonly figuresLabel: string;
  /** JSON: a `ReplyMaterial`. */
  readonly material: string;
  readonly colours: readonly ReplyChoiceView[];
  readonly figures: readonly ReplyChoiceView[];
}

export interface ReplyChoiceView {
  readonly value: string;
  readonly text: string;
  readonly chosen: boolean;
}
