import type { Words } from "../words/words.ts";
import type { TableView } from "./views.ts";

/** What to weigh for a batch, with a reckoner for any size of it. */
export interface BatchView {
  readonly table: TableView;
  readonly remarks: readonly string[];
  readonly reckoner: BatchReckonerView;
}

/** Any size, worked out in the browser; hidden where there is no script. */
export interface BatchReckonerView {
  readonly words: Words["pages"]["paint"]["batch"]["any"];
  /** The recipe as JSON, for assets/scripts/batch.ts. */
  readonly recipe: string;
  readonly sizes: readonly { readonly value: string; readonly text: string }[];
  readonly tubeMl: string;
  /** Each with the key of its figure in the script. */
  readonly rows: readonly { readonly name: string; readonly figure: string }[];
}

/** The text of a colour's label, to copy. */
export interface LabelTextView {
  readonly id: string;
  readonly heading: string;
  readonly lead: string;
  readonly text: string;
  /** What the label of a small package may leave out. */
  readonly remark?: string;
}
