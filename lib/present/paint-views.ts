import type {
  LinkView,
  PageView,
  ProseSectionView,
  SectionView,
  StandingKeyView,
  TableView,
} from "./views.ts";

/** Oil and finish, with the batch and a reckoner for any size of it. */
export interface OilSectionView extends SectionView {
  /** Said in place of a batch table. */
  readonly noBatch?: string;
  readonly batch?: {
    readonly heading: string;
    readonly table: TableView;
    readonly remarks: readonly string[];
    readonly reckoner: BatchReckonerView;
  };
  readonly fill?: TableView;
  readonly fillRemarks?: readonly string[];
}

/** Any size, worked out in the browser; hidden where there is no script. */
export interface BatchReckonerView {
  readonly heading: string;
  /** The recipe as JSON, for assets/scripts/batch.ts. */
  readonly recipe: string;
  readonly amount: string;
  readonly by: string;
  readonly sizes: readonly { readonly value: string; readonly text: string }[];
  readonly tube: string;
  readonly tubeMl: string;
  readonly caption: string;
  readonly columns: readonly [string, string];
  /** Each with the key of its figure in the script. */
  readonly rows: readonly { readonly name: string; readonly figure: string }[];
  readonly fault: string;
}

/** The text of a colour's label, to copy. */
export interface LabelTextView {
  readonly id: string;
  readonly heading: string;
  readonly lead: string;
  readonly text: string;
  /** What the label of a small package may leave out. */
  readonly remark?: string;
  readonly link: LinkView;
}

/** How to read a label and a sheet. */
export interface LabelPageView extends PageView {
  readonly kind: "label";
  readonly lead: readonly string[];
  readonly contents: readonly LinkView[];
  readonly sections: readonly ProseSectionView[];
  readonly standingsHeading: string;
  readonly standings: readonly StandingKeyView[];
}
