import type { FoldedTableView, ListView, PictureView, SectionView, StandingView } from "./views.ts";

/** A colour of several pigments: what it is mixed from, and in each white what follows. */
export interface MixtureSectionView extends SectionView {
  readonly whites: readonly MixtureWhiteView[];
}

export interface MixtureWhiteView {
  /** Anchor. */
  readonly id: string;
  readonly heading: string;
  /** How well its components predict it, and where its pair is nearest to neutral. */
  readonly sentences: readonly { readonly text: string; readonly standing: StandingView }[];
  readonly pictures: readonly PictureView[];
  readonly drift: ListView;
  /** Folded: predicted steps, drift in figures, blacks of one pigment beside it. */
  readonly tables: readonly FoldedTableView[];
}
