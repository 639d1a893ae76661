import type { Words } from "../words/words.ts";

/** What a composer in the browser is given; lib/answers/reply-text.ts makes the same text of it. */
export interface ReplyView {
  readonly heading: string;
  readonly words: Words["pages"]["answers"]["reply"];
  /** The stock reply: plain text. */
  readonly text: string;
  /** Rows of the field that shows it whole. */
  readonly rows: number;
  readonly question: string;
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
