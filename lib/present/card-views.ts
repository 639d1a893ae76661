import type { DownloadView, LinkView, Markup, PageView } from "./views.ts";

/** Every shelf card of one size, as it will print. */
export interface CardsPageView extends PageView {
  readonly kind: "cards";
  readonly lead: readonly string[];
  readonly sizesLabel: string;
  /** The same in the other sizes, this one marked. */
  readonly sizes: readonly LinkView[];
  /** Of cards on several pages. */
  readonly parts: readonly LinkView[];
  readonly cards: readonly {
    readonly id: string;
    readonly name: string;
    readonly href: string;
    readonly faces: readonly Markup[];
  }[];
  readonly withoutHeading: string;
  /** Between such a colour and why. */
  readonly colon: string;
  /** Colours that get none, and why. */
  readonly without: readonly {
    readonly name: string;
    readonly href: string;
    readonly reason: string;
  }[];
  readonly downloads: readonly DownloadView[];
}
