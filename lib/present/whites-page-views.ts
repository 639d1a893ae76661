import type { LinkView, PageView, PictureView, TableView } from "./views.ts";

/** All near-neutrals of the range, white by white. */
export interface WhitesPageView extends PageView {
  readonly kind: "in-the-whites";
  readonly lead: readonly string[];
  /** The catalogue's orders and this page, which is marked. */
  readonly orders: readonly LinkView[];
  readonly groups: readonly WhiteGroupView[];
}

export interface WhiteGroupView {
  readonly id: string;
  readonly heading: string;
  /** Their trails through a* and b*, one over the other. */
  readonly picture?: PictureView;
  /** How to read the marks. */
  readonly key?: string;
  readonly table: TableView;
}
