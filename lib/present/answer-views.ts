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
